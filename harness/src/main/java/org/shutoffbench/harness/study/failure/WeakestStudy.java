package org.shutoffbench.harness.study.failure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.population.DrawnCase;
import org.shutoffbench.harness.population.ScatterSource;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.statistics.BinomialInterval;
import org.shutoffbench.harness.statistics.DesignPointSearch;
import org.shutoffbench.harness.statistics.Interval;
import org.shutoffbench.harness.statistics.NormalPoint;
import org.shutoffbench.harness.statistics.SubsetSimulation;

/**
 * The most likely joint on which a strategy fails: nearest to the mild joint in standard-normal space of joint, tool, supply
 * and operator; sensors without gain and offset errors, noise that of the family's first joints.
 *
 * @param probes random probes inside the distance that must all hold
 * @param noises fixed noises, an odd number: a joint fails where it fails under most of them
 * @param noiseRuns runs at the point with other noise
 * @param samplesPerLevel of the subset simulation whose failures the search starts from
 * @param confidence of the failure probability over noise
 * @param seed of the search's own draws
 */
public record WeakestStudy(int probes, int noises, int noiseRuns, int samplesPerLevel, double confidence, long seed) {

    private static final Set<ScatterSource.Group> VARIED =
            EnumSet.complementOf(EnumSet.of(ScatterSource.Group.SENSORS));
    private static final int MOST_STARTS = 40;

    /**
     * One draw that differs from the mild joint.
     *
     * @param source its title
     * @param sigma standard-normal coordinate
     */
    public record Change(String source, double sigma) {}

    /**
     * What was found.
     *
     * @param beta distance from the mild joint; null where nothing failed within 8 standard deviations
     * @param probability Phi(-beta)
     * @param changes what differs from the mild joint, farthest first
     * @param outcome what the joint ended as
     * @param verdict what the strategy said
     * @param clampingTorqueNm truth at judgement
     * @param clampForceN truth at judgement
     * @param failsOverNoise share of runs with other noise that fail at this point; 0 where there is no point
     * @param failsOverNoiseInterval of that share
     * @param probes random probes inside the distance of which none failed
     * @param tightenings spent
     * @param words the finding for people
     */
    public record Result(
            String scenario,
            String family,
            String strategy,
            String event,
            @Nullable Double beta,
            @Nullable Double probability,
            List<Change> changes,
            @Nullable String outcome,
            @Nullable String verdict,
            @Nullable Double clampingTorqueNm,
            @Nullable Double clampForceN,
            double failsOverNoise,
            @Nullable Interval failsOverNoiseInterval,
            int probes,
            long tightenings,
            String words) {

        public Result {
            changes = List.copyOf(changes);
        }
    }

    /**
     * A finding and the joint as a scenario of its own.
     *
     * @param joint null where nothing failed
     */
    public record Found(Result result, @Nullable Scenario joint) {}

    /**
     * Searches.
     *
     * @param rootSeed of the bench, pinned in the joint's scenario
     */
    public Found run(Bench bench, long rootSeed, int family, int strategy, FailureEvent event, int threads) {
        try (DrawnJoints joints = new DrawnJoints(bench, family, strategy, VARIED, threads)) {
            NoisePanel panel = new NoisePanel(new BenchLimitState(joints, event), bench.population(), family, noises);
            int dimension = joints.sources().size();
            SubsetSimulation.Result starts =
                    new SubsetSimulation(panel, dimension, samplesPerLevel, new SplittableRandom(seed)).run(confidence);
            List<NormalPoint> nearest = starts.failures()
                    .subList(0, Math.min(MOST_STARTS, starts.failures().size()));
            DesignPointSearch.Result point = new DesignPointSearch(
                            panel, dimension, panel.key(0), new SplittableRandom(seed + 1))
                    .search(nearest, probes);
            return new Report(bench, rootSeed, family, strategy, event)
                    .found(joints, panel, point, starts.evaluations());
        }
    }

    /** Puts a finding together. */
    private final class Report {
        private final Bench bench;
        private final long rootSeed;
        private final int family;
        private final int strategy;
        private final FailureEvent event;

        Report(Bench bench, long rootSeed, int family, int strategy, FailureEvent event) {
            this.bench = bench;
            this.rootSeed = rootSeed;
            this.family = family;
            this.strategy = strategy;
            this.event = event;
        }

        Found found(
                DrawnJoints joints, NoisePanel panel, DesignPointSearch.@Nullable Result point, long startEvaluations) {
            String who = bench.scenario().strategies().get(strategy).label();
            String where = bench.scenario().families().get(family).name();
            if (point == null) {
                String words = who + ": no " + event.title() + " was found on " + where
                        + " within 8 standard deviations of the mild joint.";
                return new Found(
                        new Result(
                                bench.scenario().name(),
                                where,
                                who,
                                event.title(),
                                null,
                                null,
                                List.of(),
                                null,
                                null,
                                null,
                                null,
                                0,
                                null,
                                0,
                                startEvaluations * panel.noises(),
                                words),
                        null);
            }
            int joint = panel.failingJoint(point.point());
            NormalPoint failing = point.point().withNoise(panel.key(joint));
            TighteningRecord record =
                    Objects.requireNonNull(joints.tightenAt(List.of(failing)).get(0));
            DrawnCase drawn = joints.at(failing);
            List<Change> changes = changes(joints.sources(), point.point());
            long failures = failuresOverNoise(joints, point.point());
            return new Found(
                    new Result(
                            bench.scenario().name(),
                            where,
                            who,
                            event.title(),
                            point.beta(),
                            point.probability(),
                            changes,
                            record.outcome().title(),
                            record.verdict().name(),
                            record.clampingTorqueNm(),
                            record.clampForceN(),
                            (double) failures / noiseRuns,
                            BinomialInterval.CLOPPER_PEARSON.of(failures, noiseRuns, confidence),
                            point.probes(),
                            (startEvaluations + point.evaluations()) * panel.noises() + noiseRuns,
                            new WeakestWords(who, record, point.beta(), changes, drawn, (double) failures / noiseRuns)
                                    .toString()),
                    SingleJoint.of(bench, family, strategy, rootSeed, joint, drawn));
        }

        private List<Change> changes(List<ScatterSource> sources, NormalPoint point) {
            List<Change> changes = new ArrayList<>();
            for (int i = 0; i < sources.size(); i++) {
                if (point.coordinate(i) != 0) {
                    changes.add(new Change(sources.get(i).title(), point.coordinate(i)));
                }
            }
            changes.sort(Comparator.comparingDouble(change -> -Math.abs(change.sigma())));
            return changes;
        }

        private long failuresOverNoise(DrawnJoints joints, NormalPoint point) {
            SplittableRandom keys = new SplittableRandom(seed + 2);
            List<NormalPoint> points = new ArrayList<>();
            for (int i = 0; i < noiseRuns; i++) {
                points.add(point.withNoise(keys.nextLong()));
            }
            return joints.tightenAt(points).stream()
                    .filter(Objects::nonNull)
                    .filter(event::happened)
                    .count();
        }
    }
}
