package org.shutoffbench.harness.visits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** The threshold is where the expected costs of auditing every joint and of auditing none cross. */
class ThresholdAnalyticTest {

    private static double withoutAudit(Threshold costs, double rate) {
        return rate * costs.escapeCost();
    }

    /** Every joint audited; rejected ones put right, whether low or not; what is low and accepted escapes. */
    private static double withAudit(Threshold costs, double rate, double detection, double falseRejection) {
        return costs.auditCost()
                + (1 - rate) * falseRejection * costs.reworkCost()
                + rate * (detection * costs.reworkCost() + (1 - detection) * costs.escapeCost());
    }

    @Property
    void atTheThresholdBothCostTheSame(
            @ForAll @DoubleRange(min = 0.1, max = 5) double audit,
            @ForAll @DoubleRange(min = 0, max = 50) double rework,
            @ForAll @DoubleRange(min = 60, max = 5000) double escape,
            @ForAll @DoubleRange(min = 0.05, max = 1) double detection,
            @ForAll @DoubleRange(min = 0, max = 0.5) double falseRejection) {
        Threshold costs = new Threshold(audit, rework, escape);
        double rate = costs.at(detection, falseRejection);
        assertThat(withAudit(costs, rate, detection, falseRejection))
                .isCloseTo(withoutAudit(costs, rate), within(1e-9 * (1 + rate * escape)));
        assertThat(withAudit(costs, rate + 0.01, detection, falseRejection))
                .isLessThan(withoutAudit(costs, rate + 0.01));
    }

    @Property
    void theBoundsHoldWhereverDetectionAndFalseRejectionLie(
            @ForAll @DoubleRange(min = 0, max = 1) double u,
            @ForAll @DoubleRange(min = 0, max = 1) double v,
            @ForAll @DoubleRange(min = 0, max = 3) double audit,
            @ForAll @DoubleRange(min = 2, max = 8) double escape) {
        Threshold costs = new Threshold(audit, 1, escape);
        Bounded bounds = costs.of(new Bounded(0.5, 0.2, 0.9), new Bounded(0.1, 0.01, 0.4));
        double inside = costs.at(0.2 + 0.7 * u, 0.01 + 0.39 * v);
        assertThat(inside).isBetween(bounds.low() * (1 - 1e-12), bounds.high() * (1 + 1e-12));
    }

    /** Worked by hand: (0.5 + 0.02 x 4) / (0.9 x (600 - 4) + 0.02 x 4) = 0.58 / 536.48. */
    @Test
    void aWorkedExample() {
        assertThat(new Threshold(0.5, 4, 600).at(0.9, 0.02)).isCloseTo(0.58 / 536.48, within(1e-15));
    }

    @Test
    void anAuditThatFindsNothingNeverPays() {
        assertThat(new Threshold(0.5, 4, 600).at(0, 0)).isInfinite();
        assertThat(new Threshold(0.5, 4, 600).at(Double.NaN, 0)).isNaN();
    }

    @Test
    void anEscapeThatCostsNoMoreThanAReworkIsRefused() {
        assertThatThrownBy(() -> new Threshold(0.5, 4, 4)).isInstanceOf(IllegalArgumentException.class);
    }
}
