package org.shutoffbench.harness.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One-sided bounds are the ends of the two-sided exact interval at twice the error. */
class RateBoundTest {

    @ParameterizedTest
    @CsvSource({"0,30", "4,20", "50,500", "20,20", "1,2"})
    void boundsAreEndsOfClopperPearson(int count, int n) {
        Interval both = BinomialInterval.CLOPPER_PEARSON.of(count, n, 0.9);
        assertThat(RateBound.upper(count, n, 0.95)).isCloseTo(both.high(), within(1e-10));
        assertThat(RateBound.lower(count, n, 0.95)).isCloseTo(both.low(), within(1e-10));
    }

    @Test
    void zeroFailuresNeedTheSuccessRun() {
        assertThat(RateBound.moreToSettle(0, 100, 0.01, 0.95)).isEqualTo(199);
        assertThat(RateBound.moreToSettle(0, 299, 0.01, 0.95)).isZero();
        assertThat(RateBound.moreToSettle(1, 100, 0.01, 0.95)).isEqualTo(-1);
    }

    @Test
    void whatIsNeededSettlesIt() {
        long more = RateBound.moreToSettle(3, 200, 0.03, 0.95);
        double n = 200 + more;
        assertThat(RateBound.upper(Math.rint(3 * n / 200), n, 0.95)).isLessThanOrEqualTo(0.03);
    }
}
