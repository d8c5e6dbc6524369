package org.shutoffbench.controller.signal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A dip is a fall by a fifth within 0.8 ms: eight samples at 10 kHz; the next may come 8 ms later. */
class DipDetectorTest {

    private final DipDetector detector = new DipDetector(0.2f, 10_000);

    private boolean hears(float speedRadPerS, int samples) {
        boolean dip = false;
        for (int i = 0; i < samples; i++) {
            dip |= detector.update(speedRadPerS);
        }
        return dip;
    }

    @Test
    void aFallByMoreThanTheShareIsADipAndAFallByLessIsNot() {
        detector.reset();
        assertThat(hears(100, 50)).isFalse();
        assertThat(hears(80, 1)).isFalse();
        hears(100, 50);
        assertThat(hears(79, 1)).isTrue();
        assertThat(detector.speedBeforeRadPerS()).isEqualTo(100);
    }

    @Test
    void aFallThatTakesLongerIsNone() {
        detector.reset();
        hears(100, 50);
        boolean dip = false;
        for (int i = 1; i <= 12; i++) {
            dip |= detector.update(100 - 2 * i); // 16 within eight samples
        }
        assertThat(dip).isFalse();
    }

    @Test
    void oneDipIsToldOnceAndTheNextAfterEightMilliseconds() {
        detector.reset();
        hears(100, 50);
        assertThat(hears(75, 1)).isTrue();
        assertThat(hears(75, 40)).isFalse();
        assertThat(hears(100, 39)).isFalse();
        assertThat(hears(75, 1)).isFalse(); // the eightieth sample
        assertThat(hears(75, 1)).isTrue();
    }

    @Test
    void resetHearsAtOnceAndRemembersNoSpeed() {
        detector.reset();
        hears(100, 50);
        hears(75, 1);
        detector.reset();
        assertThat(hears(50, 20)).isFalse();
        assertThat(hears(39, 1)).isTrue();
    }
}
