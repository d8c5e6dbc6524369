package org.shutoffbench.harness.claim;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.claim.ClaimPage.Grid;
import org.shutoffbench.harness.claim.ClaimPage.Part;
import org.shutoffbench.harness.claim.Measurements.MeasuredJoint;
import org.shutoffbench.harness.statistics.ClusterInterval;
import org.shutoffbench.harness.statistics.NormalIntervals;
import org.shutoffbench.harness.statistics.RateBound;
import org.shutoffbench.harness.statistics.StandardNormal;

/**
 * Measured joints held against a claim.
 *
 * <p>A joint counts against the claim unless its reading proves it inside, and for a refutation only where its reading
 * proves it outside; without a gauge the reading is taken as the truth, and the page says so. Simulated joints enter the
 * bound with the weight given, 0 unless somebody chose one.
 */
final class ClaimJudgement {

    /** Repeatability over total spread from which a gauge is called unsound: common practice, from memory. */
    static final double UNSOUND_GAUGE = 0.3;

    private static final double INTERVALS = 0.95;

    /**
     * Simulated joints beside the measured ones.
     *
     * @param weight of one simulated joint against one measured, 0 for none
     */
    record Simulated(String what, long failing, long n, double weight) {}

    private final Claim claim;
    private final ClaimWords words;
    private final List<MeasuredJoint> joints;
    private final @Nullable GuardBand guard;
    private final @Nullable Simulated simulated;
    private final long outside;
    private final long undecided;

    ClaimJudgement(Claim claim, Measurements measured, @Nullable Simulated simulated) {
        this.claim = claim;
        this.words = new ClaimWords(claim);
        this.joints = measured.joints();
        this.guard = claim.gauge() == null ? null : GuardBand.of(claim, claim.gauge());
        this.simulated = simulated;
        this.outside = joints.stream()
                .filter(j -> result(j) == GuardBand.Result.OUTSIDE)
                .count();
        this.undecided = joints.stream()
                .filter(j -> result(j) == GuardBand.Result.UNDECIDED)
                .count();
    }

    private GuardBand.Result result(MeasuredJoint joint) {
        if (claim.failure() == FailureRule.SILENT && !joint.calledDone()) {
            return GuardBand.Result.INSIDE;
        }
        if (guard != null) {
            return guard.of(joint.mean(), claim.failure());
        }
        return claim.fails(joint.mean(), joint.calledDone()) ? GuardBand.Result.OUTSIDE : GuardBand.Result.INSIDE;
    }

    ClaimTrial.Answer answer() {
        if (unsoundGauge()) {
            return ClaimTrial.Answer.UNDECIDED;
        }
        if (lower() > claim.allowed() || !families(GuardBand.Result.OUTSIDE).isEmpty()) {
            return ClaimTrial.Answer.REFUTED;
        }
        return upper() <= claim.allowed()
                        && (weighted() || families(GuardBand.Result.UNDECIDED).isEmpty())
                ? ClaimTrial.Answer.SUPPORTED
                : ClaimTrial.Answer.UNDECIDED;
    }

    private boolean weighted() {
        return simulated != null && simulated.weight() > 0;
    }

    /**
     * Families that the claim names, or that the file does, which the measured joints show to fail (outside), or do not show
     * to hold (undecided): many good joints of one family do not speak for another. None where the file names no family.
     */
    private List<String> families(GuardBand.Result wanted) {
        List<String> seen = joints.stream()
                .map(MeasuredJoint::family)
                .filter(java.util.Objects::nonNull)
                .distinct()
                .toList();
        if (seen.isEmpty()) {
            return List.of();
        }
        List<String> asked =
                claim.population().anyFamily() ? seen : claim.population().families();
        double shared = 1 - (1 - claim.confidence()) / asked.size();
        return asked.stream().filter(family -> of(family, shared) == wanted).toList();
    }

    /** What the joints of one family say: outside where it fails, inside where it holds. */
    private GuardBand.Result of(String family, double shared) {
        List<GuardBand.Result> results = joints.stream()
                .filter(joint -> family.equals(joint.family()))
                .map(this::result)
                .toList();
        if (results.isEmpty()) {
            return GuardBand.Result.UNDECIDED;
        }
        double n = results.size();
        double bad = results.stream().filter(r -> r == GuardBand.Result.OUTSIDE).count();
        double doubtful =
                results.stream().filter(r -> r != GuardBand.Result.INSIDE).count();
        if (!clustered() && RateBound.lower(bad, n, shared) > claim.allowed()) {
            return GuardBand.Result.OUTSIDE;
        }
        return RateBound.upper(doubtful, n, claim.confidence()) <= claim.allowed()
                ? GuardBand.Result.INSIDE
                : GuardBand.Result.UNDECIDED;
    }

    /** The failing share is below this: undecided joints count as failing, joints of one lot as far as they are independent. */
    double upper() {
        double exact = RateBound.upper(
                outside + undecided + weightedFailing(), joints.size() + weightedJoints(), claim.confidence());
        return clustered() ? Math.max(exact, byLot(true).interval().high()) : exact;
    }

    /** The failing share is above this: only joints that are proved outside count. */
    double lower() {
        double exact =
                RateBound.lower(outside + weightedFailing(), joints.size() + weightedJoints(), claim.confidence());
        return clustered() ? Math.min(exact, byLot(false).interval().low()) : exact;
    }

    private double weightedFailing() {
        return simulated == null ? 0 : simulated.weight() * simulated.failing();
    }

    private double weightedJoints() {
        return simulated == null ? 0 : simulated.weight() * simulated.n();
    }

    private boolean clustered() {
        Map<String, Long> lots = lotSizes();
        return lots.size() > 0 && lots.size() < joints.size();
    }

    private Map<String, Long> lotSizes() {
        Map<String, Long> sizes = new LinkedHashMap<>();
        for (MeasuredJoint joint : joints) {
            if (joint.lot() != null) {
                sizes.merge(joint.lot(), 1L, Long::sum);
            }
        }
        return sizes;
    }

    private ClusterInterval byLot(boolean withUndecided) {
        Map<String, long[]> lots = new LinkedHashMap<>();
        for (MeasuredJoint joint : joints) {
            long[] lot = lots.computeIfAbsent(String.valueOf(joint.lot()), name -> new long[2]);
            GuardBand.Result result = result(joint);
            boolean counts =
                    result == GuardBand.Result.OUTSIDE || (withUndecided && result == GuardBand.Result.UNDECIDED);
            lot[0] += counts ? 1 : 0;
            lot[1]++;
        }
        return ClusterInterval.ofRate(
                lots.values().stream().mapToLong(l -> l[0]).toArray(),
                lots.values().stream().mapToLong(l -> l[1]).toArray(),
                Math.max(1e-6, 2 * claim.confidence() - 1));
    }

    /** Standard deviation of repeated readings of one joint: stated, or pooled from the file; null where neither is there. */
    @Nullable
    Double repeatability() {
        double squares = 0;
        long freedom = 0;
        for (MeasuredJoint joint : joints) {
            double mean = joint.mean();
            for (double reading : joint.readings()) {
                squares += (reading - mean) * (reading - mean);
            }
            freedom += joint.readings().size() - 1;
        }
        if (freedom > 0) {
            return Math.sqrt(squares / freedom);
        }
        return claim.gauge() == null ? null : claim.gauge().repeatability();
    }

    boolean unsoundGauge() {
        Double repeat = repeatability();
        return repeat != null && joints.size() > 1 && repeat > UNSOUND_GAUGE * total();
    }

    /** Standard deviation of single readings within families: a mean shift between them would flatter the gauge. */
    private double total() {
        Map<String, List<Double>> byFamily = new LinkedHashMap<>();
        for (MeasuredJoint joint : joints) {
            byFamily.computeIfAbsent(String.valueOf(joint.family()), f -> new ArrayList<>())
                    .addAll(joint.readings());
        }
        double squares = 0;
        int freedom = 0;
        for (List<Double> readings : byFamily.values()) {
            int own = readings.size() - 1;
            squares += own * sd(readings) * sd(readings);
            freedom += own;
        }
        return freedom == 0 ? 0 : Math.sqrt(squares / freedom);
    }

    private static double sd(List<Double> values) {
        double mean = values.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        double squares =
                values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
        return values.size() < 2 ? 0 : Math.sqrt(squares / (values.size() - 1));
    }

    ClaimPage page() {
        List<Part> parts = new ArrayList<>();
        parts.add(Part.of("The claim", words.claim()));
        parts.add(evidence());
        Part families = families();
        if (families != null) {
            parts.add(families);
        }
        Part gauge = gauge();
        if (gauge != null) {
            parts.add(gauge);
        }
        if (simulated != null) {
            parts.add(beside(simulated));
        }
        parts.add(Part.of("What was not tested", untested()));
        return new ClaimPage("Judgement on measured joints", title(), parts);
    }

    private String title() {
        String name = "\"" + claim.name() + "\"";
        if (unsoundGauge()) {
            return name + " cannot be judged with this gauge: it repeats too badly";
        }
        return switch (answer()) {
            case SUPPORTED -> name + " is supported by " + joints.size() + " measured joints";
            case REFUTED -> {
                List<String> failing = families(GuardBand.Result.OUTSIDE);
                yield name + " is refuted: " + outside + " of " + joints.size() + " measured joints fail"
                        + (failing.isEmpty() ? "" : ", too many of " + String.join(", ", failing));
            }
            case UNDECIDED -> name + " is undecided: " + needed();
        };
    }

    private String needed() {
        if (upper() <= claim.allowed()) {
            return "all joints together hold it, but it is not shown of "
                    + String.join(", ", families(GuardBand.Result.UNDECIDED)) + "; measure more joints there";
        }
        if (clustered()) {
            return "joints of one lot are not independent; measure joints from more lots";
        }
        double allowed = claim.allowed() * joints.size();
        if (outside <= allowed && outside + undecided > allowed) {
            return "the gauge leaves " + undecided + " of " + joints.size()
                    + " joints undecided, too many to say; measure with a better gauge";
        }
        long counted = outside > allowed ? outside : outside + undecided;
        long more = RateBound.moreToSettle(counted, joints.size(), claim.allowed(), claim.confidence());
        return more < 0
                ? "the share that fails lies at the limit itself, no number of joints would settle it"
                : "need about " + ClaimWords.whole(more) + " more joints at the rate seen";
    }

    private Part evidence() {
        List<String> sentences = new ArrayList<>();
        sentences.add(joints.size() + " joints: " + outside + " fail"
                + (guard == null ? "" : ", " + undecided + " undecided within the gauge's uncertainty")
                + ". Failing share at most "
                + ClaimWords.percent(upper()) + " %, at least " + ClaimWords.percent(lower()) + " %, each with "
                + ClaimWords.percent(claim.confidence()) + " % confidence; allowed "
                + ClaimWords.percent(claim.allowed()) + " %.");
        if (clustered()) {
            sentences.add("The joints come from " + lotSizes().size()
                    + " lots; the bounds count joints of one lot only as" + " far as they are independent.");
        }
        if (guard == null) {
            sentences.add("The claim states no gauge, so readings are taken as the truth.");
        }
        double sd = sd(joints.stream().map(MeasuredJoint::mean).toList());
        double mean = joints.stream().mapToDouble(MeasuredJoint::mean).average().orElse(0);
        if (joints.size() > 1 && sd > 0) {
            double estimated = StandardNormal.cdf((claim.lowest() - mean) / sd)
                    + StandardNormal.survival((claim.highest() - mean) / sd);
            sentences.add("Mean " + words.value(mean) + ", standard deviation " + words.value(sd)
                    + ". If the values were normal, " + ClaimWords.percent(estimated)
                    + " % would lie outside the tolerance; rare joints of another kind do not show in these two numbers, so"
                    + " they decide nothing here.");
        }
        return Part.of("The evidence", sentences);
    }

    private @Nullable Part families() {
        Map<String, List<Double>> byFamily = new LinkedHashMap<>();
        for (MeasuredJoint joint : joints) {
            if (joint.family() != null) {
                byFamily.computeIfAbsent(joint.family(), name -> new ArrayList<>())
                        .add(joint.mean());
            }
        }
        if (byFamily.isEmpty()) {
            return null;
        }
        List<List<String>> rows = new ArrayList<>();
        byFamily.forEach((family, values) -> {
            double mean = mean(values);
            double sd = sd(values);
            long failing = joints.stream()
                    .filter(j -> family.equals(j.family()) && result(j) != GuardBand.Result.INSIDE)
                    .count();
            rows.add(List.of(
                    family,
                    Integer.toString(values.size()),
                    failing + "",
                    ClaimWords.percent(RateBound.upper((double) failing, values.size(), claim.confidence())) + " %",
                    values.size() < 2
                            ? words.value(mean)
                            : words.value(mean) + " (" + meanInterval(values, mean, sd) + ")",
                    values.size() < 2 ? "" : words.value(sd)));
        });
        List<String> sentences = new ArrayList<>();
        String shift = meanShift(byFamily);
        if (shift != null) {
            sentences.add(shift);
        }
        return Part.of("By family", sentences)
                .with(new Grid(List.of("family", "joints", "fail", "at most", "mean (95 %)", "s"), rows));
    }

    private String meanInterval(List<Double> values, double mean, double sd) {
        var interval = NormalIntervals.mean(mean, sd / Math.sqrt(values.size()), values.size() - 1.0, INTERVALS);
        return words.value(interval.low()) + " to " + words.value(interval.high());
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    }

    /** Families that each repeat well enough about their own mean, and together do not hold the tolerance. */
    private @Nullable String meanShift(Map<String, List<Double>> byFamily) {
        double half = (claim.highest() - claim.lowest()) / 2;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double together = 0;
        int n = 0;
        for (List<Double> values : byFamily.values()) {
            double sd = sd(values);
            if (values.size() < 2 || 2 * StandardNormal.survival(half / sd) > claim.allowed()) {
                return null;
            }
            double mean = mean(values);
            least = Math.min(least, mean);
            most = Math.max(most, mean);
            together += values.size()
                    * (StandardNormal.cdf((claim.lowest() - mean) / sd)
                            + StandardNormal.survival((claim.highest() - mean) / sd));
            n += values.size();
        }
        if (byFamily.size() < 2 || together / n <= claim.allowed()) {
            return null;
        }
        return "A mean shift between families: each repeats within the tolerance about its own mean, but the means lie "
                + words.value(most - least) + " apart (" + ClaimWords.percent((most - least) / claim.target())
                + " % of the target), and together they do not hold it. A figure given per joint type hides this.";
    }

    private @Nullable Part gauge() {
        List<String> sentences = new ArrayList<>();
        Double repeat = repeatability();
        if (repeat != null && joints.size() > 1) {
            double share = repeat / total();
            sentences.add("Repeated readings of one joint scatter by " + words.value(repeat) + ", "
                    + ClaimWords.percent(Math.min(1, share)) + " % of the total spread"
                    + (unsoundGauge()
                            ? ": the gauge is unsound (more than 30 %, common practice). What looks like scatter of the"
                                    + " joints may be the gauge's; no verdict is given. Repair the gauge, then measure again."
                            : "; up to 30 % is common practice."));
        }
        if (guard != null) {
            sentences.addAll(guard.part(words).sentences());
        }
        return sentences.isEmpty() ? null : Part.of("The gauge", sentences);
    }

    private Part beside(Simulated bank) {
        String what = bank.what() + ": " + bank.failing() + " of " + bank.n() + " simulated joints fail. ";
        return Part.of(
                "Simulated joints beside them",
                bank.weight() == 0
                        ? what + "They do not enter the verdict (weight 0)."
                        : what + "They enter the bounds with a weight of " + ClaimWords.digits(bank.weight())
                                + " of a measured joint each, because the command asked for it: the verdict is no longer one"
                                + " of measurements alone.");
    }

    private List<String> untested() {
        List<String> sentences = new ArrayList<>();
        Claim.Population p = claim.population();
        TreeSet<String> seen = new TreeSet<>();
        joints.stream()
                .map(MeasuredJoint::family)
                .filter(java.util.Objects::nonNull)
                .forEach(seen::add);
        if (p.anyFamily()) {
            sentences.add("The claim is of any joint; measured were "
                    + (seen.isEmpty() ? "joints whose family the file does not name" : String.join(", ", seen)) + ".");
        } else {
            List<String> missing =
                    p.families().stream().filter(f -> !seen.contains(f)).toList();
            if (!missing.isEmpty()) {
                sentences.add("No measured joint is named as one of " + String.join(", ", missing) + ".");
            }
        }
        int lots = lotSizes().size();
        if (p.lots() == 0 || lots < p.lots()) {
            sentences.add((lots == 0 ? "The file names no lots" : lots + " lots were measured") + "; the claim is of "
                    + ClaimWords.lots(p.lots()) + ".");
        }
        sentences.add("Tools and battery states are not in the file: the claim is of "
                + ClaimWords.tools(p.tools()) + ", battery "
                + ClaimWords.percent(p.batteryFrom()) + " to " + ClaimWords.percent(p.batteryTo()) + " %.");
        return sentences;
    }
}
