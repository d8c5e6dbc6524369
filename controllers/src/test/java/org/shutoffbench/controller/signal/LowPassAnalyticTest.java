package org.shutoffbench.controller.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Low passes against their closed forms. */
class LowPassAnalyticTest {

    private static final float PERIOD_S = 1e-4f;

    @Test
    void firstOrderFollowsAStepAsOneMinusExp() {
        float cutoffHz = 80;
        FirstOrderLowPass filter = new FirstOrderLowPass(cutoffHz, PERIOD_S);
        filter.reset(0);
        for (int i = 1; i <= 100; i++) {
            double exact = 1 - Math.exp(-2 * Math.PI * cutoffHz * i * PERIOD_S);
            assertThat(filter.update(1)).isCloseTo((float) exact, within(3e-6f));
        }
    }

    /** |H|^2 = 1/(1 + (tan(pi f T)/tan(pi fc T))^4): Butterworth's magnitude under the bilinear transform. */
    @ParameterizedTest
    @ValueSource(floats = {50, 200, 500, 1000, 2000})
    void butterworthIsMaximallyFlat(float frequencyHz) {
        float cutoffHz = 500;
        double ratio = Math.tan(Math.PI * frequencyHz * PERIOD_S) / Math.tan(Math.PI * cutoffHz * PERIOD_S);
        double exact = 1 / Math.sqrt(1 + Math.pow(ratio, 4));
        assertThat(amplitude(new ButterworthLowPass(cutoffHz, PERIOD_S), frequencyHz))
                .isCloseTo(exact, within(1e-4));
    }

    /**
     * Indicated over true peak of a half-sine pulse: own computation by an independent program, midpoint rule at 20 ns on
     * the filters' differential equations. At 1 us the bilinear transform is that close to the analogue filter.
     */
    @ParameterizedTest
    @CsvSource({"500, 1e-3, 0.7562, 0.7279", "1000, 1e-3, 0.9014, 0.9453", "250, 5e-4, 0.3583, 0.2247"})
    void aHalfSinePulseLosesItsPeak(float cutoffHz, double pulseS, double first, double second) {
        float period = 1e-6f;
        FirstOrderLowPass one = new FirstOrderLowPass(cutoffHz, period);
        ButterworthLowPass two = new ButterworthLowPass(cutoffHz, period);
        one.reset(0);
        two.update(0);
        double peakOne = 0;
        double peakTwo = 0;
        for (int i = 0; i * (double) period < 6 * pulseS; i++) {
            double time = i * (double) period;
            float pulse = time < pulseS ? (float) Math.sin(Math.PI * time / pulseS) : 0;
            peakOne = Math.max(peakOne, one.update(pulse));
            peakTwo = Math.max(peakTwo, two.update(pulse));
        }
        assertThat(peakOne).isCloseTo(first, within(0.001));
        assertThat(peakTwo).isCloseTo(second, within(0.001));
    }

    @Test
    void bothStartSettledAndSkipWhatIsNotFinite() {
        FirstOrderLowPass one = new FirstOrderLowPass(100, PERIOD_S);
        ButterworthLowPass two = new ButterworthLowPass(100, PERIOD_S);
        assertThat(one.update(Float.NaN)).isNaN();
        assertThat(two.update(Float.NaN)).isNaN();
        assertThat(one.update(5)).isEqualTo(5);
        assertThat(two.update(5)).isCloseTo(5, within(1e-5f));
        for (int i = 0; i < 50; i++) {
            assertThat(two.update(5)).isCloseTo(5, within(1e-4f));
        }
        float held = two.output();
        assertThat(two.update(Float.POSITIVE_INFINITY)).isEqualTo(held);
        assertThat(one.update(Float.NEGATIVE_INFINITY)).isEqualTo(one.output()).isEqualTo(5);
        one.reset();
        two.reset();
        assertThat(one.output()).isNaN();
        assertThat(two.update(-3)).isCloseTo(-3, within(1e-5f));
    }

    @Test
    void refuseACutOffBeyondTheSamples() {
        assertThatIllegalArgumentException().isThrownBy(() -> new ButterworthLowPass(5000, PERIOD_S));
        assertThatIllegalArgumentException().isThrownBy(() -> new FirstOrderLowPass(0, PERIOD_S));
    }

    /** Amplitude of the steady response by projection on sine and cosine over whole periods. */
    private static double amplitude(ButterworthLowPass filter, float frequencyHz) {
        int settle = 20_000;
        int measure = 10_000;
        double sine = 0;
        double cosine = 0;
        for (int i = 0; i < settle + measure; i++) {
            double phase = 2 * Math.PI * frequencyHz * i * 1e-4;
            double out = filter.update((float) Math.sin(phase));
            if (i >= settle) {
                sine += out * Math.sin(phase);
                cosine += out * Math.cos(phase);
            }
        }
        return 2 * Math.hypot(sine, cosine) / measure;
    }
}
