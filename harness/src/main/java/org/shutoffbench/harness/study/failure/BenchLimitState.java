package org.shutoffbench.harness.study.failure;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.scenario.Judgement;
import org.shutoffbench.harness.statistics.LimitState;
import org.shutoffbench.harness.statistics.NormalPoint;

/** The margin of a failure on drawn joints; a joint that cannot be tightened cannot fail. */
final class BenchLimitState implements LimitState {

    private final DrawnJoints joints;
    private final FailureEvent event;
    private final Judgement judgement;

    BenchLimitState(DrawnJoints joints, FailureEvent event) {
        this.joints = joints;
        this.event = event;
        this.judgement = joints.bench().scenario().judgement();
    }

    @Override
    public double[] margins(List<NormalPoint> points) {
        List<@Nullable TighteningRecord> records = joints.tightenAt(points);
        double[] margins = new double[records.size()];
        for (int i = 0; i < margins.length; i++) {
            TighteningRecord record = records.get(i);
            margins[i] = record == null ? Double.POSITIVE_INFINITY : event.margin(record, judgement);
        }
        return margins;
    }
}
