package org.shutoffbench.harness.study.training;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.shutoffbench.controller.strategy.BlowFeatures;

/**
 * Limits of ridge regression (Hoerl and Kennard, Technometrics 12(1), 1970): without penalty it is least squares, which
 * reproduces a quadratic exactly; with a penalty that grows beyond bounds all that is left is the mean.
 */
class RidgeFitAnalyticTest {

    private static double quadratic(float[] x) {
        return 3 + 2.0 * x[0] - (double) x[4] * x[5] + 0.5 * x[8] * x[8];
    }

    private static List<Blow> blows(int seed) {
        Random random = new Random(seed);
        List<Blow> blows = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            float[] x = new float[BlowFeatures.COUNT];
            for (int f = 0; f < x.length; f++) {
                x[f] = 2 * random.nextFloat() - 1;
            }
            double balance = 10 * random.nextGaussian();
            blows.add(new Blow(x, balance, balance + quadratic(x)));
        }
        return blows;
    }

    @Test
    void withoutPenaltyAQuadraticIsFoundExactly() {
        RidgeFit fit = RidgeFit.of(blows(1), 0);
        // Normal equations in double: condition number below 1e4 for these features.
        assertThat(fit.errorNm(blows(2))).isLessThan(1e-9);
        assertThat(fit.explained(blows(2))).isCloseTo(1, within(1e-12));
    }

    @Test
    void withAPenaltyBeyondBoundsOnlyTheMeanIsLeft() {
        List<Blow> blows = blows(1);
        RidgeFit fit = RidgeFit.of(blows, 1e12);
        double mean = blows.stream()
                .mapToDouble(b -> b.middleNm() - b.balanceNm())
                .average()
                .orElseThrow();
        assertThat(fit.coefficients()[0]).isCloseTo(mean, within(1e-9));
        for (int t = 1; t < fit.coefficients().length; t++) {
            assertThat(fit.coefficients()[t]).isCloseTo(0, within(1e-9));
        }
    }

    @Test
    void featuresAreStandardisedOverTheTrainingBlows() {
        RidgeFit fit = RidgeFit.of(blows(1), 1e-3);
        // Uniform on [-1, 1]: mean 0, standard deviation 1/sqrt(3); 400 samples.
        assertThat(fit.means()[3]).isCloseTo(0, within(0.12));
        assertThat(fit.scales()[3]).isCloseTo(1 / Math.sqrt(3), within(0.06));
    }
}
