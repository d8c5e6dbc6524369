package org.shutoffbench.harness.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source: Newcombe1998, table II, method 10 (values from memory). */
class RateDifferenceReferenceTest {

    @ParameterizedTest
    @CsvSource({"56, 70, 48, 80, 0.0524, 0.3339", "9, 10, 3, 10, 0.1705, 0.8090"})
    void squareAndAddIntervalAgreesWithItsAuthorsExamples(
            long count1, long n1, long count2, long n2, double low, double high) {
        Interval interval = RateDifference.of(count1, n1, count2, n2, 0.95);
        assertThat(interval.low()).isCloseTo(low, within(5e-5));
        assertThat(interval.high()).isCloseTo(high, within(5e-5));
    }
}
