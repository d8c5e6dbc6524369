package org.shutoffbench.harness.study.failure;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.population.ScatterSource;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.statistics.BinomialInterval;
import org.shutoffbench.harness.statistics.DesignPointSearch;
import org.shutoffbench.harness.statistics.ImportanceSampling;
import org.shutoffbench.harness.statistics.Interval;
import org.shutoffbench.harness.statistics.LimitState;
import org.shutoffbench.harness.statistics.NormalPoint;
import org.shutoffbench.harness.statistics.SubsetSimulation;

/**
 * How rarely a strategy fails on a family: subset simulation, importance sampling round the design point, and plain sampling
 * as a check.
 *
 * @param samplesPerLevel of subset simulation
 * @param importanceSamples draws round the design point
 * @param plainJoints joints of plain sampling, 0 for none
 * @param confidence of every interval
 * @param seed of the search's own draws
 */
public record RareStudy(int samplesPerLevel, int importanceSamples, int plainJoints, double confidence, long seed) {

    private static final double DEFENSIVE = 0.2;
    private static final int PLAIN_BATCH = 1000;

    /**
     * What was found.
     *
     * @param estimates one a method, in the order of the methods
     * @param agreement in words
     */
    public record Result(
            String scenario,
            String family,
            String strategy,
            String event,
            double confidence,
            List<RareEstimate> estimates,
            String agreement) {

        public Result {
            estimates = List.copyOf(estimates);
        }
    }

    /** Runs all methods. */
    public Result run(Bench bench, int family, int strategy, FailureEvent event, int threads) {
        try (DrawnJoints joints =
                new DrawnJoints(bench, family, strategy, EnumSet.allOf(ScatterSource.Group.class), threads)) {
            LimitState limitState = new BenchLimitState(joints, event);
            int dimension = joints.sources().size();
            List<RareEstimate> estimates = new ArrayList<>();
            SubsetSimulation.Result subset = new SubsetSimulation(
                            limitState, dimension, samplesPerLevel, new SplittableRandom(seed))
                    .run(confidence);
            estimates.add(new RareEstimate(
                    "subset simulation",
                    subset.estimate(),
                    subset.interval(),
                    subset.estimate() > 0 ? subset.effectiveSamples() : null,
                    subset.evaluations()));
            RareEstimate importance = importance(limitState, dimension, subset.failures());
            if (importance != null) {
                estimates.add(importance);
            }
            if (plainJoints > 0) {
                estimates.add(plain(joints, event));
            }
            return new Result(
                    bench.scenario().name(),
                    bench.scenario().families().get(family).name(),
                    bench.scenario().strategies().get(strategy).label(),
                    event.title(),
                    confidence,
                    estimates,
                    agreement(estimates));
        }
    }

    /** Round the nearest failure that subset simulation found, its noise held while it is moved nearer. */
    private @Nullable RareEstimate importance(LimitState limitState, int dimension, List<NormalPoint> failures) {
        if (failures.isEmpty() || importanceSamples == 0) {
            return null;
        }
        NormalPoint start = failures.get(0);
        DesignPointSearch.Result nearest = new DesignPointSearch(
                        limitState, dimension, start.noiseKey(), new SplittableRandom(seed + 1))
                .nearerFrom(start);
        ImportanceSampling.Result found = new ImportanceSampling(limitState, nearest.point(), DEFENSIVE)
                .run(importanceSamples, confidence, new SplittableRandom(seed + 2));
        return new RareEstimate(
                "importance sampling",
                found.estimate(),
                found.interval(),
                found.estimate() > 0 ? found.effectiveSamples() : null,
                nearest.evaluations() + found.evaluations());
    }

    private RareEstimate plain(DrawnJoints joints, FailureEvent event) {
        long count = 0;
        for (int from = 0; from < plainJoints; from += PLAIN_BATCH) {
            count += joints.tightenNumbered(from, Math.min(plainJoints, from + PLAIN_BATCH)).stream()
                    .filter(Objects::nonNull)
                    .filter(event::happened)
                    .count();
        }
        Interval interval = BinomialInterval.CLOPPER_PEARSON.of(count, plainJoints, confidence);
        return new RareEstimate(
                "plain sampling",
                (double) count / plainJoints,
                interval,
                count > 0 ? (double) plainJoints : null,
                plainJoints);
    }

    private static String agreement(List<RareEstimate> estimates) {
        List<String> apart = new ArrayList<>();
        for (int i = 0; i < estimates.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (!estimates.get(i).agreesWith(estimates.get(j))) {
                    apart.add(estimates.get(j).method() + " and "
                            + estimates.get(i).method());
                }
            }
        }
        if (estimates.size() == 1) {
            return "one method only: nothing to check it against";
        }
        return apart.isEmpty()
                ? "the intervals of all methods meet"
                : "the intervals of " + String.join("; of ", apart)
                        + " do not meet: trust plain sampling where it saw failures, else spend more samples";
    }
}
