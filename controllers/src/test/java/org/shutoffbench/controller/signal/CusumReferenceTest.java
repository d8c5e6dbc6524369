package org.shutoffbench.controller.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Average run lengths of the one-sided sum with k = 0.5, h = 5 on standard normal samples: 931 without a change, 10.4
 * with a shift of one standard deviation. D. C. Montgomery, Introduction to Statistical Quality Control, tabulates 465
 * and 10.4 for the two-sided scheme (memory); one side alone runs twice as long.
 */
class CusumReferenceTest {

    @ParameterizedTest
    @CsvSource({"0, 931, 20000", "1, 10.4, 20000"})
    void averageRunLengthIsTheTabulatedOne(double shift, double averageRunLength, int runs) {
        Random random = new Random(20_250_101);
        Cusum cusum = new Cusum(0.5f, 5);
        double sum = 0;
        double squares = 0;
        for (int run = 0; run < runs; run++) {
            int length = runLength(cusum, random, shift);
            sum += length;
            squares += (double) length * length;
        }
        double mean = sum / runs;
        double standardError = Math.sqrt((squares / runs - mean * mean) / runs);
        // Half a unit of the table's last digit and four standard errors of the simulation.
        double rounding = averageRunLength > 100 ? 0.5 : 0.05;
        assertThat(mean).isCloseTo(averageRunLength, within(rounding + 4 * standardError));
    }

    private static int runLength(Cusum cusum, Random random, double shift) {
        cusum.reset();
        int length = 1;
        while (!cusum.update((float) (shift + random.nextGaussian()))) {
            length++;
        }
        return length;
    }
}
