package org.shutoffbench.controller.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class AlphaBetaFilterTest {

    private static final float PERIOD_S = 0.001f;

    @Test
    void followsARampWithoutLag() {
        AlphaBetaFilter filter = AlphaBetaFilter.forTrackingIndex(0.1f, PERIOD_S);
        for (int i = 0; i < 500; i++) {
            filter.update(2 + 30 * i * PERIOD_S);
        }
        assertThat(filter.level()).isCloseTo(2 + 30 * 0.499f, within(1e-3f));
        assertThat(filter.ratePerS()).isCloseTo(30, within(0.05f));
    }

    @Test
    void predictsOverGaps() {
        AlphaBetaFilter filter = AlphaBetaFilter.forTrackingIndex(0.1f, PERIOD_S);
        for (int i = 0; i < 500; i++) {
            filter.update(30 * i * PERIOD_S);
        }
        float before = filter.level();
        filter.update(Float.NaN);
        filter.update(Float.POSITIVE_INFINITY);
        assertThat(filter.level()).isCloseTo(before + 2 * 30 * PERIOD_S, within(1e-3f));
    }

    @Test
    void startsAtTheFirstFiniteSample() {
        AlphaBetaFilter filter = new AlphaBetaFilter(0.5f, 0.2f, PERIOD_S);
        filter.update(Float.NaN);
        assertThat(filter.level()).isNaN();
        filter.update(7);
        assertThat(filter.level()).isEqualTo(7);
        assertThat(filter.ratePerS()).isZero();
        filter.update(8);
        filter.reset();
        assertThat(filter.level()).isNaN();
        assertThat(filter.ratePerS()).isZero();
    }

    @Test
    void refusesUnstableGains() {
        assertThatIllegalArgumentException().isThrownBy(() -> new AlphaBetaFilter(1, 2, PERIOD_S));
        assertThatIllegalArgumentException().isThrownBy(() -> new AlphaBetaFilter(0, 0.1f, PERIOD_S));
        assertThatIllegalArgumentException().isThrownBy(() -> AlphaBetaFilter.forTrackingIndex(0, PERIOD_S));
    }
}
