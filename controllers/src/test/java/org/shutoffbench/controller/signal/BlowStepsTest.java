package org.shutoffbench.controller.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Which samples around a report make a step, seen on an angle that grows by one in every sample. */
class BlowStepsTest {

    private static final int RATE_HZ = 10_000;
    private static final int REPORT = 200;
    /** Sample at which a step is measured: 4 ms after its report. */
    private static final int MEASURED = REPORT + 40;

    private final BlowSteps steps = BlowSteps.fromContacts(RATE_HZ);

    private int measuredAt(int doubleReport) {
        steps.reset();
        int measured = -1;
        for (int tick = 0; tick < 400; tick++) {
            if (steps.update(tick, tick == REPORT || tick == doubleReport)) {
                assertThat(measured).as("a second step").isEqualTo(-1);
                measured = tick;
                // from 9 to 5.2 ms before, and over the last 2 ms
                assertThat(steps.beforeRad()).isCloseTo(tick - 70.5f, within(1e-3f));
                assertThat(steps.afterRad()).isCloseTo(tick - 9.5f, within(1e-3f));
                assertThat(steps.advanceRad()).isCloseTo(61, within(1e-3f));
            }
        }
        return measured;
    }

    @Test
    void aStepComparesTheRestBeforeWithTheRestAfter() {
        assertThat(measuredAt(-1)).isEqualTo(MEASURED);
    }

    @Test
    void aReportBeforeTheStepIsMeasuredIsItsDouble() {
        assertThat(measuredAt(REPORT + 35)).isEqualTo(MEASURED);
    }

    @Test
    void aMissingSampleIsLeftOut() {
        steps.reset();
        for (int tick = 0; tick <= MEASURED; tick++) {
            boolean lost = tick == MEASURED || tick == MEASURED - 5;
            steps.update(lost ? Float.NaN : tick, tick == REPORT);
        }
        // 18 of the last 20 samples: (20 x 9.5 - 0 - 5) / 18 samples ago
        assertThat(steps.afterRad()).isCloseTo(MEASURED - 185 / 18f, within(1e-3f));
    }

    @Test
    void resetForgetsWhatWasUnderWay() {
        measuredAt(-1);
        steps.update(0, true);
        steps.reset();
        assertThat(steps.afterRad()).isNaN();
        for (int tick = 0; tick < 100; tick++) {
            assertThat(steps.update(7, false)).isFalse();
        }
        steps.update(7, true);
        for (int tick = 0; tick < 39; tick++) {
            assertThat(steps.update(7, false)).isFalse();
        }
        assertThat(steps.update(7, false)).isTrue();
        assertThat(steps.advanceRad()).isZero();
    }
}
