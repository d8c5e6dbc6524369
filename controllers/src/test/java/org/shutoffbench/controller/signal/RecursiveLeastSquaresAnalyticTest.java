package org.shutoffbench.controller.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Recursive against batch: with forgetting factor f the recursion solves the normal equations in which sample i of m
 * weighs f^(m-i) and the starting variance enters as f^m/p0 on the diagonal (Ljung, System Identification, 1999; memory).
 */
class RecursiveLeastSquaresAnalyticTest {

    private static final int PARAMETERS = 3;
    private static final float START_VARIANCE = 100;

    @ParameterizedTest
    @ValueSource(floats = {1f, 0.95f})
    void recursiveEqualsBatch(float forgetting) {
        RecursiveLeastSquares recursive = new RecursiveLeastSquares(PARAMETERS, forgetting, START_VARIANCE);
        DMatrixRMaj normal = CommonOps_DDRM.diag(
                1 / (double) START_VARIANCE, 1 / (double) START_VARIANCE, 1 / (double) START_VARIANCE);
        DMatrixRMaj right = new DMatrixRMaj(PARAMETERS, 1);
        Random random = new Random(7);
        float[] x = new float[PARAMETERS];
        DMatrixRMaj batch = new DMatrixRMaj(PARAMETERS, 1);
        for (int sample = 0; sample < 200; sample++) {
            for (int i = 0; i < PARAMETERS; i++) {
                x[i] = (float) random.nextGaussian();
            }
            float y = 2 * x[0] - x[1] + 0.5f * x[2] + 0.1f * (float) random.nextGaussian();
            recursive.update(x, y);
            accumulate(normal, right, x, y, forgetting);
            CommonOps_DDRM.solve(normal, right, batch);
            for (int i = 0; i < PARAMETERS; i++) {
                // Single precision over 200 rank-one updates from a variance of 100.
                assertThat((double) recursive.parameter(i)).isCloseTo(batch.get(i), within(2e-4));
            }
        }
        assertThat(recursive.parameter(0)).isCloseTo(2, within(0.1f));
    }

    @Test
    void skipsSamplesThatAreNotFinite() {
        RecursiveLeastSquares fit = new RecursiveLeastSquares(1, 1, 100);
        fit.update(new float[] {1}, 3);
        float before = fit.parameter(0);
        fit.update(new float[] {Float.NaN}, 3);
        fit.update(new float[] {1}, Float.POSITIVE_INFINITY);
        assertThat(fit.parameter(0)).isEqualTo(before);
        fit.reset();
        assertThat(fit.parameter(0)).isZero();
    }

    @Test
    void refusesToForgetEverything() {
        assertThatIllegalArgumentException().isThrownBy(() -> new RecursiveLeastSquares(1, 0, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new RecursiveLeastSquares(1, 1.1f, 1));
    }

    private static void accumulate(DMatrixRMaj normal, DMatrixRMaj right, float[] x, float y, float forgetting) {
        for (int i = 0; i < PARAMETERS; i++) {
            for (int j = 0; j < PARAMETERS; j++) {
                normal.set(i, j, forgetting * normal.get(i, j) + (double) x[i] * x[j]);
            }
            right.set(i, forgetting * right.get(i) + (double) x[i] * y);
        }
    }
}
