package org.shutoffbench.harness.claim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.claim.Measurements.MeasuredJoint;
import org.shutoffbench.harness.statistics.ClusterInterval;
import org.shutoffbench.harness.statistics.RateBound;

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

    /**
     * Simulated joints beside the measured ones.
     *
     * @param weight of one simulated joint against one measured, 0 for none
     */
    record Simulated(String what, long failing, long n, double weight) {}

    private final Claim claim;
    private final String file;
    private final boolean byVariables;
    private final List<MeasuredJoint> joints;
    private final @Nullable GuardBand guard;
    private final @Nullable Simulated simulated;
    private final List<MeasuredSpread> spreads;
    private final long outside;
    private final long undecided;

    /**
     * @param file name of the measured joints
     * @param byVariables whether mean and spread may support the claim where values look normal
     */
    ClaimJudgement(
            Claim claim, String file, Measurements measured, @Nullable Simulated simulated, boolean byVariables) {
        this.claim = claim;
        this.file = file;
        this.byVariables = byVariables;
        this.joints = measured.joints();
        this.guard = claim.gauge() == null ? null : GuardBand.of(claim, claim.gauge());
        this.simulated = simulated;
        this.spreads = spreadsByFamily();
        this.outside = joints.stream()
                .filter(j -> result(j) == GuardBand.Result.OUTSIDE)
                .count();
        this.undecided = joints.stream()
                .filter(j -> result(j) == GuardBand.Result.UNDECIDED)
                .count();
    }

    Claim claim() {
        return claim;
    }

    String file() {
        return file;
    }

    List<MeasuredJoint> joints() {
        return joints;
    }

    @Nullable
    GuardBand guard() {
        return guard;
    }

    @Nullable
    Simulated simulated() {
        return simulated;
    }

    /** Joints that are proved to fail. */
    long outside() {
        return outside;
    }

    /** Joints of which the gauge is too uncertain to say. */
    long undecided() {
        return undecided;
    }

    boolean byVariables() {
        return byVariables;
    }

    GuardBand.Result result(MeasuredJoint joint) {
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
        boolean counted = upper() <= claim.allowed()
                && (weighted() || families(GuardBand.Result.UNDECIDED).isEmpty());
        return (byVariables ? supportedByVariables() : counted)
                ? ClaimTrial.Answer.SUPPORTED
                : ClaimTrial.Answer.UNDECIDED;
    }

    /** Whether mean and spread of every group of joints keep their distance from the limits. */
    private boolean supportedByVariables() {
        return !spreads.isEmpty()
                && spreads.stream().allMatch(MeasuredSpread::supports)
                && families(GuardBand.Result.OUTSIDE).isEmpty()
                && (claim.population().anyFamily()
                        || spreads.stream()
                                .map(MeasuredSpread::family)
                                .toList()
                                .containsAll(claim.population().families()));
    }

    /** Mean and spread by family, or of all joints where the file names none; none where values are not what fails. */
    List<MeasuredSpread> spreads() {
        return spreads;
    }

    private List<MeasuredSpread> spreadsByFamily() {
        if (claim.failure() == FailureRule.SILENT) {
            return List.of();
        }
        Map<String, List<MeasuredJoint>> groups = new LinkedHashMap<>();
        for (MeasuredJoint joint : joints) {
            groups.computeIfAbsent(joint.family() == null ? "all joints" : joint.family(), f -> new ArrayList<>())
                    .add(joint);
        }
        List<MeasuredSpread> found = new ArrayList<>();
        groups.forEach((family, own) -> found.add(MeasuredSpread.of(
                claim,
                guard,
                family,
                own.stream().mapToDouble(MeasuredJoint::mean).toArray(),
                clustered(own))));
        return List.copyOf(found);
    }

    private boolean weighted() {
        return simulated != null && simulated.weight() > 0;
    }

    /**
     * Families that the claim names, or that the file does, which the measured joints show to fail (outside), or do not show
     * to hold (undecided): many good joints of one family do not speak for another. None where the file names no family.
     */
    List<String> families(GuardBand.Result wanted) {
        List<String> seen = joints.stream()
                .map(MeasuredJoint::family)
                .filter(Objects::nonNull)
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
        List<MeasuredJoint> own = ofFamily(family);
        if (own.isEmpty()) {
            return GuardBand.Result.UNDECIDED;
        }
        if (lower(own, shared, 0, 0) > claim.allowed()) {
            return GuardBand.Result.OUTSIDE;
        }
        return upper(own) <= claim.allowed() ? GuardBand.Result.INSIDE : GuardBand.Result.UNDECIDED;
    }

    List<MeasuredJoint> ofFamily(String family) {
        return joints.stream().filter(joint -> family.equals(joint.family())).toList();
    }

    /** The failing share of some joints is below this, by lot where several of them share one. */
    double upper(List<MeasuredJoint> own) {
        return upper(own, 0, 0);
    }

    /** The failing share is below this: undecided joints count as failing, joints of one lot as far as they are independent. */
    double upper() {
        return upper(joints, weightedFailing(), weightedJoints());
    }

    /** The failing share is above this: only joints that are proved outside count. */
    double lower() {
        return lower(joints, claim.confidence(), weightedFailing(), weightedJoints());
    }

    private double upper(List<MeasuredJoint> own, double moreFailing, double more) {
        double doubtful = count(own, true) + moreFailing;
        double exact = RateBound.upper(doubtful, own.size() + more, claim.confidence());
        return clustered(own)
                ? Math.max(
                        exact, byLot(own, true, claim.confidence()).interval().high())
                : exact;
    }

    private double lower(List<MeasuredJoint> own, double confidence, double moreFailing, double more) {
        double exact = RateBound.lower(count(own, false) + moreFailing, own.size() + more, confidence);
        return clustered(own)
                ? Math.min(exact, byLot(own, false, confidence).interval().low())
                : exact;
    }

    private long count(List<MeasuredJoint> own, boolean withUndecided) {
        return own.stream()
                .map(this::result)
                .filter(r -> r == GuardBand.Result.OUTSIDE || (withUndecided && r == GuardBand.Result.UNDECIDED))
                .count();
    }

    private double weightedFailing() {
        return simulated == null ? 0 : simulated.weight() * simulated.failing();
    }

    private double weightedJoints() {
        return simulated == null ? 0 : simulated.weight() * simulated.n();
    }

    boolean clustered() {
        return clustered(joints);
    }

    private static boolean clustered(List<MeasuredJoint> own) {
        long lots = lots(own);
        return lots > 0 && lots < own.size();
    }

    /** Lots that some joints come from; 0 where the file names none. */
    static long lots(List<MeasuredJoint> own) {
        return own.stream()
                .map(MeasuredJoint::lot)
                .filter(Objects::nonNull)
                .distinct()
                .count();
    }

    private ClusterInterval byLot(List<MeasuredJoint> own, boolean withUndecided, double confidence) {
        Map<String, long[]> lots = new LinkedHashMap<>();
        for (MeasuredJoint joint : own) {
            long[] lot = lots.computeIfAbsent(String.valueOf(joint.lot()), name -> new long[2]);
            lot[0] += count(List.of(joint), withUndecided);
            lot[1]++;
        }
        return ClusterInterval.ofRate(
                lots.values().stream().mapToLong(l -> l[0]).toArray(),
                lots.values().stream().mapToLong(l -> l[1]).toArray(),
                Math.max(1e-6, 2 * confidence - 1));
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
    double total() {
        Map<String, List<Double>> byFamily = new LinkedHashMap<>();
        for (MeasuredJoint joint : joints) {
            byFamily.computeIfAbsent(String.valueOf(joint.family()), f -> new ArrayList<>())
                    .addAll(joint.readings());
        }
        double squares = 0;
        int freedom = 0;
        for (List<Double> readings : byFamily.values()) {
            int own = readings.size() - 1;
            double sd = sd(readings.stream().mapToDouble(Double::doubleValue).toArray());
            squares += own * sd * sd;
            freedom += own;
        }
        return freedom == 0 ? 0 : Math.sqrt(squares / freedom);
    }

    static double sd(double[] values) {
        double mean = Arrays.stream(values).average().orElse(0);
        double squares = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum();
        return values.length < 2 ? 0 : Math.sqrt(squares / (values.length - 1));
    }
}
