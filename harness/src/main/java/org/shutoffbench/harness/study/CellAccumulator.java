package org.shutoffbench.harness.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.statistics.ExactMoments;
import org.shutoffbench.harness.statistics.ExactSample;
import org.shutoffbench.harness.statistics.FixedPoint;

/** All that is kept of one strategy on one family. */
final class CellAccumulator {

    private static final FixedPoint WHOLE = new FixedPoint(1);
    private static final FixedPoint MICRO = new FixedPoint(1e6);

    private final OutcomeTally outcomes = new OutcomeTally();
    private final Map<Quantity, ExactSample> quantities = new EnumMap<>(Quantity.class);
    private final ExactSample blows = new ExactSample(WHOLE);
    private final ExactSample times = new ExactSample(MICRO);
    private final ExactMoments runOn = new ExactMoments(MICRO);
    private final List<ClusterTally> clusters = new ArrayList<>();
    private final WorstJoints worst;
    private final @Nullable CovariateTally covariate;
    private long guarded;

    CellAccumulator(Judge judge, Family family) {
        for (Quantity quantity : Quantity.values()) {
            quantities.put(quantity, new ExactSample(quantity.counted()));
        }
        Clustering.of(family).forEach(clustering -> clusters.add(new ClusterTally(clustering)));
        worst = new WorstJoints(judge);
        Covariate parameter = family.covariate();
        covariate = parameter == null ? null : new CovariateTally(parameter);
    }

    void add(TighteningRecord tightening, double parameter) {
        int joint = tightening.joint();
        quantities.forEach((quantity, sample) -> sample.add(joint, quantity.of(tightening)));
        blows.add(joint, tightening.blows());
        times.add(joint, tightening.timeS());
        runOn.add(MICRO.steps(tightening.runOnAngleDeg()));
        guarded += tightening.guardSteps() > 0 ? 1 : 0;
        outcomes.add(tightening);
        clusters.forEach(tally -> tally.add(tightening));
        worst.add(tightening);
        if (covariate != null) {
            covariate.add(parameter, tightening);
        }
    }

    void merge(CellAccumulator other) {
        outcomes.merge(other.outcomes);
        quantities.forEach((quantity, sample) -> sample.merge(other.quantity(quantity)));
        blows.merge(other.blows);
        times.merge(other.times);
        runOn.merge(other.runOn);
        guarded += other.guarded;
        for (int i = 0; i < clusters.size(); i++) {
            clusters.get(i).merge(other.clusters.get(i));
        }
        worst.merge(other.worst);
        if (covariate != null && other.covariate != null) {
            covariate.merge(other.covariate);
        }
    }

    long run() {
        return blows.n();
    }

    long count(Event event) {
        return outcomes.count(event);
    }

    OutcomeTally outcomes() {
        return outcomes;
    }

    ExactSample quantity(Quantity quantity) {
        ExactSample sample = quantities.get(quantity);
        if (sample == null) {
            throw new IllegalStateException("no sample of " + quantity.title());
        }
        return sample;
    }

    ExactSample blows() {
        return blows;
    }

    ExactSample times() {
        return times;
    }

    ExactMoments runOn() {
        return runOn;
    }

    /** Joints on which the plant's guard stepped. */
    long guarded() {
        return guarded;
    }

    List<ClusterTally> clusters() {
        return clusters;
    }

    WorstJoints worst() {
        return worst;
    }

    @Nullable
    CovariateTally covariate() {
        return covariate;
    }
}
