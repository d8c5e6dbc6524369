package org.shutoffbench.harness.claim;

import java.util.ArrayList;
import java.util.List;
import org.shutoffbench.harness.claim.ClaimPage.Grid;
import org.shutoffbench.harness.claim.ClaimPage.Part;
import org.shutoffbench.harness.claim.ClaimTrial.Acceptance;
import org.shutoffbench.harness.claim.ClaimTrial.FamilyShare;
import org.shutoffbench.harness.statistics.BinomialInterval;

/** What trials on simulated joints say of one or more claims and strategies, all on the same joints. */
final class TrialPage {

    private static final double INTERVALS = 0.95;

    private TrialPage() {}

    /**
     * The page.
     *
     * @param trials of all claims and strategies, at least one
     * @param untested what the scenario leaves out of each claim's population, by trial
     */
    static ClaimPage of(List<ClaimTrial> trials, List<ClaimPlan> plans, List<List<String>> untested) {
        List<Part> parts = new ArrayList<>();
        if (trials.size() > 1) {
            parts.add(sideBySide(trials));
        }
        for (int i = 0; i < trials.size(); i++) {
            ClaimTrial trial = trials.get(i);
            ClaimWords words = new ClaimWords(trial.claim());
            String who = trials.size() == 1 ? "" : ": " + trial.claim().name() + ", " + trial.strategy();
            List<String> claimed = new ArrayList<>(words.claim());
            claimed.add("Tried on the strategy " + trial.strategy() + ".");
            parts.add(Part.of("The claim" + who, claimed));
            parts.add(joints(trial, who));
            parts.add(plans(trial, plans.get(i), who));
            parts.add(Part.of("What was not tested" + who, untested.get(i)));
        }
        return new ClaimPage("Trial on simulated joints", title(trials), parts);
    }

    private static String title(List<ClaimTrial> trials) {
        List<String> findings = new ArrayList<>();
        for (ClaimTrial trial : trials) {
            String name = "\"" + trial.claim().name() + "\" for " + trial.strategy();
            findings.add(
                    switch (trial.answer()) {
                        case SUPPORTED -> name + " is supported by these simulated joints";
                        case REFUTED ->
                            name + " is refuted: " + share(trial.worst()) + " of "
                                    + trial.worst().family() + " joints fail";
                        case UNDECIDED -> name + " is undecided: " + more(trial.more());
                    });
        }
        return String.join("; ", findings);
    }

    private static String more(long more) {
        return more < 0
                ? "the share that fails lies at the limit itself, no number of joints would settle it"
                : "need about " + ClaimWords.whole(more) + " more joints per family at the rates seen";
    }

    private static String share(FamilyShare share) {
        return ClaimWords.percent(share.share()) + " %";
    }

    private static Part sideBySide(List<ClaimTrial> trials) {
        List<List<String>> rows = new ArrayList<>();
        for (ClaimTrial trial : trials) {
            rows.add(List.of(
                    trial.claim().name() + ", " + trial.strategy(),
                    trial.answer().toString().toLowerCase(java.util.Locale.ROOT),
                    ClaimWords.percent((double) trial.failing() / trial.joints()) + " %",
                    ClaimWords.interval(
                            BinomialInterval.CLOPPER_PEARSON.of(trial.failing(), trial.joints(), INTERVALS)),
                    trial.worst().family() + ", " + share(trial.worst())));
        }
        return Part.of("Side by side", "All on the same joints.")
                .with(new Grid(List.of("claim and strategy", "answer", "fail", "95 % interval", "worst family"), rows));
    }

    private static Part joints(ClaimTrial trial, String who) {
        List<List<String>> rows = new ArrayList<>();
        for (FamilyShare share : trial.shares()) {
            rows.add(List.of(
                    share.family(),
                    ClaimWords.whole(share.failing()) + " of " + ClaimWords.whole(share.n()),
                    share(share),
                    ClaimWords.percent(share.upper(trial.claim().confidence())) + " %",
                    ClaimWords.percent(share.below()) + " %",
                    ClaimWords.percent(share.above()) + " %"));
        }
        return Part.of(
                        "What the joints do" + who,
                        "Allowed: " + ClaimWords.percent(trial.claim().allowed())
                                + " % failing. Supported where on every"
                                + " family the one-sided "
                                + ClaimWords.percent(trial.claim().confidence())
                                + " % bound lies within it; refuted where on some family the failing share surely lies"
                                + " above it. Simulated joints say what the model does, never what a shipped tool does.")
                .with(new Grid(List.of("family", "fail", "share", "at most", "below", "above"), rows));
    }

    private static Part plans(ClaimTrial trial, ClaimPlan plan, String who) {
        List<String> sentences = new ArrayList<>();
        List<List<String>> rows = new ArrayList<>();
        rows.add(row(
                plan.attributes() == null ? "without a failure" : "by attributes",
                plan.counting().n(),
                trial.counting()));
        if (trial.measuring() != null && plan.variables() != null) {
            rows.add(row("by variables", plan.variables().n(), trial.measuring()));
        }
        sentences.add("How often each plan would have accepted this population, in "
                + ClaimWords.whole(trial.counting().trials())
                + " trials that draw their joints lot by lot; nominal is what"
                + " its operating characteristic promises for the share that really fails.");
        if (trial.fooled() && trial.measuring() != null) {
            sentences.add("The plan by variables fails here: "
                    + ClaimWords.percent((double) trial.failing() / trial.joints())
                    + " % of joints fail, " + ClaimWords.percent(trial.claim().allowed())
                    + " % are allowed, and it accepts in "
                    + ClaimWords.percent(trial.measuring().realised())
                    + " % of trials instead of at most "
                    + ClaimWords.percent(1 - trial.claim().confidence())
                    + " %. It looks at mean and spread only; the failing joints are a kind of their own, too rare to"
                    + " show in either. Count failures instead.");
        }
        return Part.of("What the plans would have said" + who, sentences)
                .with(new Grid(List.of("plan", "n", "nominal", "realised", "95 % interval"), rows));
    }

    private static List<String> row(String name, int n, Acceptance acceptance) {
        return List.of(
                name,
                ClaimWords.whole(n),
                ClaimWords.percent(acceptance.nominal()) + " %",
                ClaimWords.percent(acceptance.realised()) + " %",
                ClaimWords.interval(acceptance.interval(INTERVALS)));
    }
}
