package org.shutoffbench.harness.study.failure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.population.ScatterSource;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.scenario.JudgedQuantity;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.statistics.Interval;
import org.shutoffbench.harness.statistics.NormalPoint;
import org.shutoffbench.harness.statistics.SobolIndices;
import org.shutoffbench.harness.statistics.StandardNormal;

/**
 * Which source of scatter matters: Sobol indices of the judged quantity, or of a failure, by named source. Draws of one
 * number at several levels are one group; the noise of a run is a group of its own.
 *
 * @param rows of each sample matrix
 * @param confidence of every interval
 * @param seed of the study's own draws
 */
public record SensitivityStudy(int rows, double confidence, long seed) {

    /** The group of everything that is no named source: sensor noise, arm motion, blow detection. */
    public static final String NOISE = "noise of the run";

    /**
     * One named group.
     *
     * @param name of the source
     * @param first share of the variance that it explains alone
     * @param firstInterval by bootstrap
     * @param total share that would vanish were it fixed
     * @param totalInterval by bootstrap
     */
    public record Share(String name, double first, Interval firstInterval, double total, Interval totalInterval) {}

    /**
     * What was found.
     *
     * @param of what varies: the judged quantity or an event
     * @param shares greatest total first
     * @param tightenings spent
     * @param impossible points that no joint can stand at, counted as 0
     */
    public record Result(
            String scenario,
            String family,
            String strategy,
            String of,
            double confidence,
            List<Share> shares,
            long tightenings,
            long impossible) {

        public Result {
            shares = List.copyOf(shares);
        }
    }

    /**
     * Estimates the indices.
     *
     * @param event the failure to explain; null for the judged quantity itself
     */
    public Result run(Bench bench, int family, int strategy, @Nullable FailureEvent event, int threads) {
        try (DrawnJoints joints =
                new DrawnJoints(bench, family, strategy, EnumSet.allOf(ScatterSource.Group.class), threads)) {
            Map<String, List<Integer>> groups = groups(joints.sources());
            int[][] indices = groups.values().stream()
                    .map(group -> group.stream().mapToInt(Integer::intValue).toArray())
                    .toArray(int[][]::new);
            Model model = new Model(joints, event);
            List<SobolIndices.Index> found =
                    new SobolIndices(indices).estimate(model, rows, confidence, new SplittableRandom(seed));
            Scenario scenario = bench.scenario();
            return new Result(
                    scenario.name(),
                    scenario.families().get(family).name(),
                    scenario.strategies().get(strategy).label(),
                    event == null ? scenario.judgement().quantity().title() : event.title(),
                    confidence,
                    shares(List.copyOf(groups.keySet()), found),
                    (long) rows * (indices.length + 2),
                    model.impossible);
        }
    }

    private static Map<String, List<Integer>> groups(List<ScatterSource> sources) {
        Map<String, List<Integer>> groups = new LinkedHashMap<>();
        for (int i = 0; i < sources.size(); i++) {
            groups.computeIfAbsent(sources.get(i).name(), name -> new ArrayList<>())
                    .add(i);
        }
        groups.put(NOISE, List.of(sources.size()));
        return groups;
    }

    private static List<Share> shares(List<String> names, List<SobolIndices.Index> indices) {
        List<Share> shares = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            SobolIndices.Index index = indices.get(i);
            shares.add(new Share(
                    names.get(i), index.first(), index.firstInterval(), index.total(), index.totalInterval()));
        }
        shares.sort(Comparator.comparingDouble((Share share) -> -share.total()).thenComparing(Share::name));
        return shares;
    }

    /** The bench as a function of uniforms, the last of which makes the noise key. */
    private static final class Model implements SobolIndices.Model {
        private final DrawnJoints joints;
        private final @Nullable FailureEvent event;
        private long impossible;

        Model(DrawnJoints joints, @Nullable FailureEvent event) {
            this.joints = joints;
            this.event = event;
        }

        @Override
        public double[] values(List<double[]> uniforms) {
            List<NormalPoint> points = uniforms.stream().map(this::point).toList();
            List<@Nullable TighteningRecord> records = joints.tightenAt(points);
            double[] values = new double[records.size()];
            for (int i = 0; i < values.length; i++) {
                TighteningRecord record = records.get(i);
                impossible += record == null ? 1 : 0;
                values[i] = record == null ? 0 : value(record);
            }
            return values;
        }

        private NormalPoint point(double[] uniforms) {
            int dimension = joints.sources().size();
            double[] coordinates = new double[dimension];
            for (int i = 0; i < dimension; i++) {
                coordinates[i] = StandardNormal.quantile(uniforms[i]);
            }
            long noise = new SplittableRandom(Double.doubleToLongBits(uniforms[dimension])).nextLong();
            return NormalPoint.of(coordinates, noise);
        }

        private double value(TighteningRecord record) {
            if (event != null) {
                return event.happened(record) ? 1 : 0;
            }
            return joints.bench().scenario().judgement().quantity() == JudgedQuantity.CLAMPING_TORQUE
                    ? record.clampingTorqueNm()
                    : record.clampForceN();
        }
    }
}
