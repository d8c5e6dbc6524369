package org.shutoffbench.harness.study.failure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.run.EndReason;
import org.shutoffbench.harness.run.Outcome;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.scenario.JudgedQuantity;
import org.shutoffbench.harness.scenario.Judgement;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.harness.scenario.unit.Quantity;

class FailureEventTest {

    /** 84 N m +- 15 %: 71.4 to 96.6. */
    private static final Judgement JUDGE = new Judgement(
            JudgedQuantity.CLAMPING_TORQUE,
            Quantity.ofSi(84, Dimension.TORQUE),
            Quantity.ofSi(0.15, Dimension.PURE),
            false);

    @Test
    void aSilentMissIsMeasuredFromTheLowerEdge() {
        assertThat(margin(FailureEvent.SILENT_MISS, 79.8, Verdict.REACHED, Outcome.IN_WINDOW))
                .isCloseTo(0.1, within(1e-12));
        assertThat(margin(FailureEvent.SILENT_MISS, 63, Verdict.REACHED, Outcome.LOW))
                .isCloseTo(-0.1, within(1e-12));
        assertThat(margin(FailureEvent.SILENT_MISS, 105, Verdict.REACHED, Outcome.HIGH))
                .isCloseTo(0.4, within(1e-12));
    }

    @Test
    void theVerdictAloneCanRuleItOut() {
        assertThat(margin(FailureEvent.SILENT_MISS, 63, Verdict.NOT_REACHED, Outcome.LOW))
                .isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(margin(FailureEvent.SILENT_MISS, 79.8, Verdict.UNSURE, Outcome.IN_WINDOW))
                .isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(margin(FailureEvent.FALSE_STOP, 105, Verdict.NOT_REACHED, Outcome.HIGH))
                .isEqualTo(Double.POSITIVE_INFINITY);
    }

    @Test
    void anUnseatedJointFailsWhateverItsTorque() {
        assertThat(margin(FailureEvent.SILENT_MISS, 80, Verdict.REACHED, Outcome.UNSEATED))
                .isZero();
    }

    /** Low but fractured: not a silent miss, though its torque is below the edge. */
    @Test
    void lowForAnotherReasonIsNoSilentMiss() {
        assertThat(margin(FailureEvent.SILENT_MISS, 10, Verdict.REACHED, Outcome.FRACTURED))
                .isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(margin(FailureEvent.FALSE_STOP, 10, Verdict.REACHED, Outcome.FRACTURED))
                .isLessThanOrEqualTo(0);
    }

    @Test
    void outOfWindowIsMeasuredFromTheNearerEdge() {
        assertThat(margin(FailureEvent.OUT_OF_WINDOW, 75.6, Verdict.NOT_REACHED, Outcome.IN_WINDOW))
                .isCloseTo(0.05, within(1e-12));
        assertThat(margin(FailureEvent.OUT_OF_WINDOW, 92.4, Verdict.REACHED, Outcome.IN_WINDOW))
                .isCloseTo(0.05, within(1e-12));
        assertThat(margin(FailureEvent.OUT_OF_WINDOW, 100.8, Verdict.UNSURE, Outcome.HIGH))
                .isCloseTo(-0.05, within(1e-12));
    }

    @Test
    void theMarginIsNotAboveZeroExactlyWhereItHappened() {
        for (FailureEvent event : FailureEvent.values()) {
            for (Outcome outcome : Outcome.values()) {
                for (Verdict verdict : Verdict.values()) {
                    for (double torque : new double[] {0, 60, 71.4, 84, 96.6, 110}) {
                        TighteningRecord record = record(torque, verdict, outcome);
                        assertThat(event.margin(record, JUDGE) <= 0)
                                .as("%s %s", event, record)
                                .isEqualTo(event.happened(record));
                    }
                }
            }
        }
    }

    private static double margin(FailureEvent event, double torqueNm, Verdict verdict, Outcome outcome) {
        return event.margin(record(torqueNm, verdict, outcome), JUDGE);
    }

    private static TighteningRecord record(double torqueNm, Verdict verdict, Outcome outcome) {
        return new TighteningRecord(
                0,
                0,
                0,
                0,
                0,
                0,
                0,
                EndReason.SHUTOFF,
                verdict,
                outcome,
                torqueNm * 600,
                torqueNm,
                0.2,
                30,
                8,
                0.3,
                1,
                0);
    }
}
