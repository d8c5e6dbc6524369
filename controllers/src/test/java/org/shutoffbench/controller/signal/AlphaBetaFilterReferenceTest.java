package org.shutoffbench.controller.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Gains against the tracking index: P. R. Kalata, "The tracking index: a generalized parameter for alpha-beta and
 * alpha-beta-gamma target trackers", IEEE Trans. Aerospace and Electronic Systems AES-20(2), 1984. Index 0.1 and 1 have
 * square roots that come out even: sqrt(0.81) and sqrt(9).
 */
class AlphaBetaFilterReferenceTest {

    @ParameterizedTest
    @CsvSource({"0.1, 0.36, 0.08", "1, 0.75, 0.5"})
    void gainsFollowTheTrackingIndex(float index, float alpha, float beta) {
        AlphaBetaFilter filter = AlphaBetaFilter.forTrackingIndex(index, 1);
        assertThat(filter.alpha()).isCloseTo(alpha, within(2e-7f));
        assertThat(filter.beta()).isCloseTo(beta, within(2e-7f));
    }

    @Test
    void theIndexComesBackFromTheGains() {
        // beta^2/(1 - alpha) = index^2, the same source.
        for (float index = 0.02f; index < 5; index *= 1.7f) {
            AlphaBetaFilter filter = AlphaBetaFilter.forTrackingIndex(index, 1);
            double back = filter.beta() / Math.sqrt(1 - filter.alpha());
            // Single precision: 1 - alpha loses digits where the index is large, beta where it is small.
            assertThat(back).isCloseTo(index, within(2e-3 * index));
        }
    }
}
