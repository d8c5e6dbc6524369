package org.shutoffbench.harness.study.calibrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class HatFitAnalyticTest {

    @Test
    void aStraightLineIsFoundExactlyAndCarriedOnOverKnotsWithoutPoints() {
        HatFit fit = new HatFit(10, 2, 6);
        for (double x = 10; x < 15; x += 0.5) {
            fit.add(x, 3 + 0.7 * x);
        }
        double[] values = fit.values();
        for (int knot = 0; knot < 6; knot++) {
            assertThat(values[knot]).isCloseTo(3 + 0.7 * (10 + 2 * knot), within(1e-9));
        }
    }

    @Test
    void manyPointsOfABrokenLineOutweighTheFaintPullTowardsEqualSlopes() {
        HatFit fit = new HatFit(0, 1, 4);
        for (int i = 0; i < 30_000; i++) {
            double x = i * 1e-4;
            fit.add(x, Math.abs(x - 1));
        }
        assertThat(fit.values()).containsExactly(new double[] {1, 0, 1, 2}, within(1e-3));
    }

    @Test
    void betweenItsKnotsAndBeyondAFunctionIsStraight() {
        double[] values = {1, 3, 2};
        assertThat(HatFit.at(values, 0, 1, 0.25)).isEqualTo(1.5);
        assertThat(HatFit.at(values, 0, 1, 2.5)).isEqualTo(1.5);
        assertThat(HatFit.at(values, 0, 1, -1)).isEqualTo(-1);
    }
}
