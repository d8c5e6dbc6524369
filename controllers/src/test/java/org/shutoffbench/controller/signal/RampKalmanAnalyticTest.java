package org.shutoffbench.controller.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** A level that rises along an abscissa, against weighted least squares and against one step worked out by hand. */
class RampKalmanAnalyticTest {

    private static final float[] X = {0, 0.4f, 0.5f, 1.1f, 1.9f, 2.0f, 3.2f};
    private static final float[] Y = {5.1f, 6.3f, 5.9f, 8.4f, 10.2f, 11.5f, 14.1f};
    private static final float[] VARIANCE = {1, 0.25f, 4, 0.5f, 1, 2, 0.25f};

    /** Without wander and from next to no knowledge the filter is the weighted straight-line fit (Gauss 1809). */
    @Test
    void aStraightLineIsFittedAsByWeightedLeastSquares() {
        RampKalman filter = new RampKalman();
        filter.reset(0, 1e5f, 0, 1e5f);
        for (int i = 0; i < X.length; i++) {
            filter.predict(i == 0 ? 0 : X[i] - X[i - 1], 0, 0);
            filter.update(Y[i], VARIANCE[i]);
        }
        double weight = 0;
        double x = 0;
        double y = 0;
        double xx = 0;
        double xy = 0;
        for (int i = 0; i < X.length; i++) {
            double w = 1 / VARIANCE[i];
            double at = X[i] - X[X.length - 1]; // the level is the line's at the last abscissa
            weight += w;
            x += w * at;
            y += w * Y[i];
            xx += w * at * at;
            xy += w * at * Y[i];
        }
        double determinant = weight * xx - x * x;
        assertThat(filter.level()).isCloseTo((float) ((xx * y - x * xy) / determinant), within(2e-3f));
        assertThat(filter.slope()).isCloseTo((float) ((weight * xy - x * y) / determinant), within(2e-3f));
        assertThat(filter.varianceOfLevel()).isCloseTo((float) (xx / determinant), Percentage.withPercentage(0.1));
    }

    /** All numbers are exact in binary. */
    @Test
    void oneStepIsTheTextbooks() {
        RampKalman filter = new RampKalman();
        filter.reset(10, 2, 3, 1);
        filter.predict(2, 0.25f, 0.5f);
        assertThat(filter.level()).isEqualTo(16);
        assertThat(filter.varianceOfLevel()).isEqualTo(6.25f); // 2 + 2^2 + 0.25; covariance 2, slope 1.5
        filter.update(20, 1.75f); // gains 6.25/8 and 2/8
        assertThat(filter.level()).isEqualTo(19.125f);
        assertThat(filter.slope()).isEqualTo(4);
        assertThat(filter.varianceOfLevel()).isEqualTo(1.3671875f);
        filter.predict(1, 0, 0);
        assertThat(filter.level()).isEqualTo(23.125f);
        assertThat(filter.varianceOfLevel()).isEqualTo(3.2421875f); // + 2 x 0.4375 + 1
    }

    @Test
    void whatSaysNothingIsSkipped() {
        RampKalman filter = new RampKalman();
        filter.reset(10, 2, 3, 1);
        filter.update(Float.NaN, 1);
        filter.update(12, Float.POSITIVE_INFINITY);
        assertThat(filter.level()).isEqualTo(10);
        assertThat(filter.varianceOfLevel()).isEqualTo(2);
        filter.reset(10, 0, 3, 1);
        filter.update(12, 0);
        assertThat(filter.level()).isEqualTo(10);
        assertThat(filter.slope()).isEqualTo(3);
    }
}
