package org.shutoffbench.controller.signal;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class PulseAreaAnalyticTest {

    private static final float PERIOD_S = 1e-4f;

    /** A half sine of a height and a length in samples has the area height length 2 / pi. */
    private static void halfSine(PulseArea area, float heightNm, int samples) {
        for (int i = 0; i < samples; i++) {
            area.update(heightNm * (float) Math.sin(Math.PI * (i + 0.5) / samples));
        }
    }

    private static void quiet(PulseArea area, int samples) {
        for (int i = 0; i < samples; i++) {
            area.update(i % 2 == 0 ? 3 : -3);
        }
    }

    @Test
    void theAreaOfAHalfSineIsFound() {
        PulseArea area = new PulseArea(PERIOD_S);
        quiet(area, 200);
        halfSine(area, 100, 40);
        quiet(area, 20);
        assertThat(area.take()).isCloseTo((float) (100 * 40 * PERIOD_S * 2 / Math.PI), Percentage.withPercentage(3));
        assertThat(area.take()).isZero();
    }

    @Test
    void aReboundsPulseIsPassedOver() {
        PulseArea once = new PulseArea(PERIOD_S);
        halfSine(once, 100, 10);
        quiet(once, 60);
        PulseArea twice = new PulseArea(PERIOD_S);
        halfSine(twice, 100, 10);
        halfSine(twice, 60, 10);
        quiet(twice, 50);
        assertThat(twice.take()).isEqualTo(once.take());
    }

    @Test
    void noiseAndMissingSamplesAreNoPulse() {
        PulseArea area = new PulseArea(PERIOD_S);
        quiet(area, 500);
        for (int i = 0; i < 500; i++) {
            area.update(Float.NaN);
        }
        assertThat(area.take()).isZero();
    }
}
