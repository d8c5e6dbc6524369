package org.shutoffbench.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class NormalTableAnalyticTest {

    private static final double KNOT_ROUNDING = 0x1p-41 + 1e-14;

    /** Chord of a convex function: error between 0 and w^2/8 times the greatest second derivative, z/phi(z)^2. */
    @Test
    void everySegmentKeepsTheStatedBound() {
        double worst = 0;
        for (int octave = 0; octave < NormalTable.OCTAVES; octave++) {
            for (int knot = 0; knot < NormalTable.SEGMENTS; knot++) {
                double lower = NormalTable.knotProbability(octave, knot);
                double width = NormalTable.knotProbability(octave, knot + 1) - lower;
                double z = -NormalQuantile.at(lower);
                double density = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
                worst = Math.max(worst, width * width / 8 * z / (density * density));
            }
        }
        assertThat(worst + KNOT_ROUNDING).isLessThan(NormalTable.ERROR_BOUND);
        assertThat(worst).as("the bound is not far from what is reached").isGreaterThan(0.9 * NormalTable.ERROR_BOUND);
    }

    @Test
    void errorIsSeenToLieWithinTheBound() {
        double least = 0;
        double greatest = 0;
        for (long n = 0; n < 2_000_000; n++) {
            long bits = n * 0x9E3779B97F4A7C15L;
            double error = Math.abs(NormalTable.at(bits)) + NormalQuantile.at(tailProbability(bits));
            least = Math.min(least, error);
            greatest = Math.max(greatest, error);
        }
        assertThat(least).isGreaterThan(-KNOT_ROUNDING);
        assertThat(greatest).isLessThan(NormalTable.ERROR_BOUND).isGreaterThan(0.8 * NormalTable.ERROR_BOUND);
    }

    @Test
    void errorLiesWithinTheBoundInEveryOctave() {
        for (int octave = 0; octave < NormalTable.OCTAVES; octave++) {
            long tail = 1L << (62 - octave);
            for (int part = 0; part < 1000; part++) {
                long bits = (tail + (long) (part / 1000.0 * tail)) << 1;
                assertThat(NormalTable.at(bits))
                        .isCloseTo(-NormalQuantile.at(tailProbability(bits)), within(NormalTable.ERROR_BOUND));
            }
        }
    }

    @Test
    void lowestBitIsTheSign() {
        for (long n = 1; n < 1000; n++) {
            long bits = (n * 0x9E3779B97F4A7C15L) & ~1L;
            assertThat(NormalTable.at(bits)).isPositive();
            assertThat(NormalTable.at(bits | 1)).isEqualTo(-NormalTable.at(bits));
        }
    }

    @Test
    void sizeFallsMonotonicallyAcrossKnotsAndOctaves() {
        for (int octave = 0; octave < NormalTable.OCTAVES - 8; octave++) {
            for (int knot = 0; knot < NormalTable.SEGMENTS; knot++) {
                long at = (long) (NormalTable.knotProbability(octave, knot) * 0x1p64);
                long step = Math.max(1, at >>> 40);
                double last = Double.POSITIVE_INFINITY;
                for (long tail = at - 8 * step; tail <= at + 8 * step; tail += step) {
                    double size = NormalTable.at(tail << 1);
                    assertThat(size).isLessThanOrEqualTo(last);
                    last = size;
                }
            }
        }
    }

    @Test
    void sizeIsFiniteAtBothEnds() {
        assertThat(NormalTable.at(0)).isCloseTo(8.29236, within(1e-5));
        assertThat(NormalTable.at(-2)).isCloseTo(0, within(1e-9)).isPositive();
    }

    private static double tailProbability(long bits) {
        return Math.max((bits >>> 1) * 0x1p-64, 0x1p-54);
    }
}
