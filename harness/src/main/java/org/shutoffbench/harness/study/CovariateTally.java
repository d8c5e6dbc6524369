package org.shutoffbench.harness.study;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.run.TighteningRecord;

/** Joints of one cell counted by class of a drawn parameter. */
final class CovariateTally {

    private final Covariate covariate;
    private final long[] joints;
    private final long[] inWindow;
    private final long[] silentMisses;

    CovariateTally(Covariate covariate) {
        this.covariate = covariate;
        this.joints = new long[covariate.classes()];
        this.inWindow = new long[covariate.classes()];
        this.silentMisses = new long[covariate.classes()];
    }

    void add(double value, TighteningRecord tightening) {
        if (Double.isNaN(value)) {
            throw new IllegalArgumentException(
                    "joint " + tightening.joint() + " comes without its " + covariate.name());
        }
        int place = covariate.classOf(value);
        joints[place]++;
        inWindow[place] += Event.IN_WINDOW.holds(tightening.outcome(), tightening.verdict()) ? 1 : 0;
        silentMisses[place] += Event.SILENT_MISS.holds(tightening.outcome(), tightening.verdict()) ? 1 : 0;
    }

    void merge(CovariateTally other) {
        for (int i = 0; i < joints.length; i++) {
            joints[i] += other.joints[i];
            inWindow[i] += other.inWindow[i];
            silentMisses[i] += other.silentMisses[i];
        }
    }

    CovariateCurve summarise(int family, int strategy, Methods methods) {
        List<CovariateCurve.Bin> bins = new ArrayList<>();
        for (int i = 0; i < joints.length; i++) {
            bins.add(new CovariateCurve.Bin(
                    covariate.edges().get(i),
                    covariate.edges().get(i + 1),
                    rate(inWindow[i], joints[i], methods),
                    rate(silentMisses[i], joints[i], methods)));
        }
        return new CovariateCurve(family, strategy, covariate.name(), covariate.unit(), bins);
    }

    private static @Nullable Rate rate(long count, long n, Methods methods) {
        return n == 0 ? null : Rate.ofIndependent(count, n, methods);
    }
}
