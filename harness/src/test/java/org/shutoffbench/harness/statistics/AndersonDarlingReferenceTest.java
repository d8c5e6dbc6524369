package org.shutoffbench.harness.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The statistic against SciPy (normality.csv states version, date and tolerance), its law by drawing normal samples. */
class AndersonDarlingReferenceTest {

    @Test
    void theStatisticIsThatOfAnotherProgram() {
        int rows = 0;
        for (String[] row : ReferenceRows.of("normality.csv")) {
            if (!row[0].equals("n")) {
                assertThat(AndersonDarling.statistic(values(Integer.parseInt(row[0]), Integer.parseInt(row[1]))))
                        .isCloseTo(Double.parseDouble(row[2]), within(1e-9));
                rows++;
            }
        }
        assertThat(rows).isEqualTo(5);
    }

    /** Stephens1986, table 4.7: corrected statistics 0.752 and 1.035 are exceeded by 5 and 1 % of normal samples; memory. */
    @Test
    void normalSamplesAreRefusedAsOftenAsTheProbabilitySays() {
        SplittableRandom random = new SplittableRandom(7);
        int samples = 4000;
        int[] refused = new int[2];
        for (int i = 0; i < samples; i++) {
            double[] sample = new double[40];
            for (int j = 0; j < sample.length; j++) {
                sample[j] = -StandardNormal.upperQuantile(random.nextDouble());
            }
            double p = AndersonDarling.p(sample);
            refused[0] += p < 0.05 ? 1 : 0;
            refused[1] += p < 0.01 ? 1 : 0;
        }
        Interval five = BinomialInterval.CLOPPER_PEARSON.of(refused[0], samples, 0.999);
        Interval one = BinomialInterval.CLOPPER_PEARSON.of(refused[1], samples, 0.999);
        assertThat(0.05).isBetween(five.low(), five.high());
        assertThat(0.01).isBetween(one.low(), one.high());
    }

    @Test
    void aRareKindFarOutIsNotNormal() {
        double[] mixture = values(200, 1);
        mixture[0] = -40;
        assertThat(AndersonDarling.p(mixture)).isLessThan(1e-6);
        assertThat(AndersonDarling.p(new double[] {1, 1, 1, 1, 1, 1, 1, 1})).isZero();
    }

    private static double[] values(int n, int power) {
        double[] values = new double[n];
        for (int i = 1; i <= n; i++) {
            values[i - 1] = StrictMath.pow(7919 * i % 10007 / 10007.0, power);
        }
        return values;
    }
}
