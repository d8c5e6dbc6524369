package org.shutoffbench.harness.visits;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class AnswerTest {

    private static final Bounded THRESHOLD = new Bounded(0.02, 0.01, 0.03);

    @Test
    void aRateThatSurelyLiesBelowTheThresholdIsDefensible() {
        assertThat(Answer.of(new Bounded(0, 0, 0.009), THRESHOLD, THRESHOLD)).isEqualTo(Answer.DEFENSIBLE);
    }

    @Test
    void aRateThatSurelyLiesAboveTheThresholdIsNot() {
        assertThat(Answer.of(new Bounded(0.05, 0.031, 0.08), THRESHOLD, THRESHOLD))
                .isEqualTo(Answer.NO);
    }

    @Test
    void boundsThatTouchSettleNothing() {
        assertThat(Answer.of(new Bounded(0, 0, 0.01), THRESHOLD, THRESHOLD)).isEqualTo(Answer.NOT_YET);
        assertThat(Answer.of(new Bounded(0.05, 0.03, 0.08), THRESHOLD, THRESHOLD))
                .isEqualTo(Answer.NOT_YET);
        assertThat(Answer.of(new Bounded(0, 0, 1), new Bounded(Double.NaN, 0, Double.POSITIVE_INFINITY), THRESHOLD))
                .isEqualTo(Answer.NOT_YET);
    }

    /** A blind audit never pays: its threshold lies beyond every rate. The misses stay misses. */
    @Test
    void anAuditThatFindsNothingMakesNoToolDefensible() {
        Bounded blind = new Bounded(5, 2, Double.POSITIVE_INFINITY);
        assertThat(Answer.of(new Bounded(0.4, 0.3, 0.5), blind, THRESHOLD)).isEqualTo(Answer.NO);
        assertThat(Answer.of(new Bounded(0, 0, 0.005), blind, THRESHOLD)).isEqualTo(Answer.DEFENSIBLE);
    }
}
