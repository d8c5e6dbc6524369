package org.shutoffbench.harness.claim;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.claim.ClaimPage.Grid;
import org.shutoffbench.harness.claim.ClaimPage.Part;
import org.shutoffbench.harness.statistics.AcceptancePlan;
import org.shutoffbench.harness.statistics.AttributePlan;
import org.shutoffbench.harness.statistics.VariablesPlan;

/**
 * What would have to be tried before a claim may be believed.
 *
 * @param claim the claim
 * @param zeroFailure the smallest sample without a failure that shows it
 * @param attributes counts failures and holds both risks; null where the seller's side is not stated, or no sane plan does
 * @param variables measures and holds both risks; null likewise, or where no law of measured values can show the claim
 * @param impossible why a plan that holds both risks does not exist; null where it does or was not asked for
 */
public record ClaimPlan(
        Claim claim,
        AttributePlan zeroFailure,
        @Nullable AttributePlan attributes,
        @Nullable VariablesPlan variables,
        @Nullable String impossible) {

    private static final double[] CURVE = {0, 0.1, 0.25, 0.5, 0.75, 1, 1.5, 2, 3, 5};

    /** The plans for a claim. */
    public static ClaimPlan of(Claim claim) {
        AttributePlan zero = AttributePlan.protecting(
                0, claim.buyer().failing(), claim.buyer().risk());
        if (claim.seller() == null) {
            return new ClaimPlan(claim, zero, null, null, null);
        }
        try {
            AttributePlan attributes = AttributePlan.holding(claim.buyer(), claim.seller());
            VariablesPlan variables = claim.failure() == FailureRule.SILENT
                    ? null
                    : VariablesPlan.holding(claim.failure().limits(), claim.buyer(), claim.seller());
            return new ClaimPlan(claim, zero, attributes, variables, null);
        } catch (IllegalArgumentException noPlan) {
            return new ClaimPlan(claim, zero, null, null, noPlan.getMessage());
        }
    }

    /** The plan that a trial uses: by attributes where both risks are stated, else without a failure. */
    public AttributePlan counting() {
        return attributes == null ? zeroFailure : attributes;
    }

    /** Everything about the plans in words. */
    public ClaimPage page() {
        List<Part> parts = new ArrayList<>();
        ClaimWords words = new ClaimWords(claim);
        parts.add(Part.of("The claim", words.claim()));
        parts.add(plans());
        parts.add(curve());
        parts.add(lots());
        parts.add(unseen());
        parts.add(cost());
        if (claim.gauge() != null) {
            parts.add(GuardBand.of(claim, claim.gauge()).part(words));
        }
        return new ClaimPage("Plan of a test", title(), parts);
    }

    private String title() {
        AttributePlan plan = counting();
        return "To believe \"" + claim.name() + "\", try " + ClaimWords.whole(plan.n()) + " joints and accept "
                + (plan.c() == 0 ? "no failure" : "at most " + failures(plan.c()));
    }

    private static String failures(int c) {
        return c == 1 ? "1 failure" : c + " failures";
    }

    private Part plans() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(row("without a failure", zeroFailure, "accept where none of n fails"));
        if (attributes != null) {
            rows.add(row("by attributes", attributes, "accept where at most " + attributes.c() + " of n fail"));
        }
        if (variables != null) {
            rows.add(row(
                    "by variables",
                    variables,
                    "accept where mean and s keep " + (variables.limits() == 2 ? "both limits" : "the limit") + " "
                            + ClaimWords.digits(variables.k()) + " s away"));
        }
        List<String> sentences = new ArrayList<>();
        sentences.add("The buyer's risk is the probability of accepting a population of which "
                + ClaimWords.percent(claim.allowed()) + " % fail; it must not exceed "
                + ClaimWords.percent(1 - claim.confidence()) + " %. Exact by the binomial law.");
        if (claim.seller() == null) {
            sentences.add("The seller's risk is not stated in the claim (seller: {failing: ..., risk: ...}), so no plan"
                    + " that allows failures is chosen. A plan without a failure rejects good populations easily: see"
                    + " the curve.");
        } else {
            sentences.add("The seller's risk is the probability of rejecting a population of which "
                    + ClaimWords.percent(claim.seller().failing()) + " % fail; it must not exceed "
                    + ClaimWords.percent(claim.seller().risk()) + " %.");
        }
        if (impossible != null) {
            sentences.add("No plan holds both: " + impossible + ".");
        }
        if (variables != null) {
            sentences.add(
                    "The plan by variables needs fewer joints because it believes that values are normal"
                            + (variables.limits() == 2
                                    ? "; both risks are held however the failures are split over the two limits"
                                    : "")
                            + ". Exact for a normal population (noncentral t, integrated over the sample's spread for two limits).");
        } else if (claim.failure() == FailureRule.SILENT) {
            sentences.add("No plan by variables: whether a tool calls a joint done is not a measured value.");
        }
        return Part.of("The plans", sentences)
                .with(new Grid(List.of("plan", "n", "buyer's risk", "seller's risk", "rule"), rows));
    }

    private List<String> row(String name, AcceptancePlan plan, String rule) {
        return List.of(
                name,
                ClaimWords.whole(plan.n()),
                ClaimWords.percent(buyersRisk(plan)) + " %",
                claim.seller() == null
                        ? "not stated"
                        : ClaimWords.percent(sellersRisk(plan, claim.seller().failing())) + " %",
                rule);
    }

    /** Greatest probability of accepting the allowed share, however it is split over the limits. */
    private double buyersRisk(AcceptancePlan plan) {
        return plan instanceof VariablesPlan measured
                ? measured.easiest(claim.allowed())
                : plan.acceptance(claim.allowed());
    }

    private static double sellersRisk(AcceptancePlan plan, double failing) {
        return 1 - (plan instanceof VariablesPlan measured ? measured.hardest(failing) : plan.acceptance(failing));
    }

    private Part curve() {
        List<List<String>> rows = new ArrayList<>();
        for (double times : CURVE) {
            double failing = times * claim.allowed();
            if (failing < 1) {
                List<String> row = new ArrayList<>(List.of(ClaimWords.percent(failing) + " %"));
                row.add(ClaimWords.percent(zeroFailure.acceptance(failing)) + " %");
                row.add(attributes == null ? "" : ClaimWords.percent(attributes.acceptance(failing)) + " %");
                row.add(variables == null ? "" : ClaimWords.percent(variables.acceptance(failing)) + " %");
                rows.add(row);
            }
        }
        return Part.of(
                        "Operating characteristic",
                        "How often each plan accepts, by the share of joints that really fail. By variables: normal"
                                + " values, the share split evenly over the limits.")
                .with(new Grid(List.of("really failing", "without a failure", "by attributes", "by variables"), rows))
                .with(CharacteristicPicture.svg(this));
    }

    private Part lots() {
        int lots = claim.population().lots();
        List<String> sentences = new ArrayList<>();
        if (lots == 0) {
            sentences.add(
                    "The claim holds for any lot. Lots differ, and joints of one lot are not independent: take each"
                            + " joint from another lot, or the sample is worth fewer joints than it counts.");
        } else {
            int each = (counting().n() + lots - 1) / lots;
            sentences.add("The claim names " + lots + " lots: take about " + each + " joints from each.");
        }
        List<List<String>> rows = new ArrayList<>();
        for (int m : new int[] {1, 3, 10, 30, 59, 100}) {
            rows.add(List.of(
                    Integer.toString(m), ClaimWords.percent(1 - Math.pow(1 - claim.confidence(), 1.0 / m)) + " %"));
        }
        sentences.add("If some lots are bad throughout, this share of them can stay unseen with a probability of "
                + ClaimWords.percent(1 - claim.confidence()) + " %, however many joints are tried in each lot:");
        return Part.of("How many lots", sentences)
                .with(new Grid(List.of("lots tried", "bad lots unseen, up to"), rows));
    }

    private Part unseen() {
        AttributePlan plan = counting();
        List<List<String>> rows = new ArrayList<>();
        for (double times : new double[] {0.1, 0.5, 1, 2, 5}) {
            double rare = times * claim.allowed();
            if (rare < 1) {
                rows.add(List.of(
                        ClaimWords.percent(rare) + " %",
                        ClaimWords.percent(Math.pow(1 - rare, plan.n())) + " %",
                        variables == null ? "" : ClaimWords.percent(Math.pow(1 - rare, variables.n())) + " %"));
            }
        }
        return Part.of(
                        "What the plan cannot see",
                        "A mixture: most joints perfect, a rare kind lost altogether (a lock nut in a bag of plain ones)."
                                + " A sample that happens to hold none of them says nothing of them, and a plan by"
                                + " variables then accepts for its small spread. Probability that a sample holds none:")
                .with(new Grid(List.of("rare kind", "plan that counts", "plan by variables"), rows));
    }

    private Part cost() {
        String counted = ClaimWords.whole(counting().n()) + " tightenings, each of them measured";
        if (claim.secondsPerJoint() == null) {
            return Part.of(
                    "Cost",
                    counted + ". Hours are not given: the claim does not say how long one joint takes"
                            + " (seconds_per_joint).");
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(counted + ": " + hours(counting().n()) + " at " + ClaimWords.digits(claim.secondsPerJoint())
                + " s a joint.");
        if (variables != null) {
            sentences.add("By variables " + ClaimWords.whole(variables.n()) + ": " + hours(variables.n()) + ".");
        }
        return Part.of("Cost", sentences);
    }

    private String hours(int n) {
        double seconds = claim.secondsPerJoint() == null ? 0 : claim.secondsPerJoint();
        return ClaimWords.digits(n * seconds / 3600) + " hours";
    }
}
