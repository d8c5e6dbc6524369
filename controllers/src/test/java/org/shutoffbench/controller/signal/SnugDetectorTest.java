package org.shutoffbench.controller.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Blows of 2 J on a nut whose torque is told by its steps. */
class SnugDetectorTest {

    private static final float WORK_J = 2;

    private final SnugDetector detector = new SnugDetector(10);
    private float rest;

    private boolean strike(float torqueNm) {
        float before = rest;
        rest += WORK_J / torqueNm;
        return detector.update(before, rest, WORK_J);
    }

    @Test
    void anEvenNutIsNotSnugAndASteepRiseIs() {
        for (int i = 0; i < 10; i++) {
            assertThat(strike(10)).isFalse();
        }
        assertThat(detector.runningTorqueNm()).isCloseTo(10, within(0.1f));
        float lastEven = rest;
        assertThat(strike(25) || strike(40)).isTrue();
        assertThat(detector.snugAngleRad()).isEqualTo(lastEven);
        assertThat(detector.runningTorqueNm()).isCloseTo(10, within(0.1f));
        float snug = detector.lastTorqueNm();
        assertThat(strike(60)).isTrue();
        assertThat(detector.lastTorqueNm()).as("nothing is taken after snug").isEqualTo(snug);
    }

    @Test
    void prevailingTorqueThatGrowsWithAngleIsNotSnug() {
        float torque = 4;
        for (int i = 0; i < 30; i++) {
            assertThat(strike(torque)).as("blow " + i).isFalse();
            torque += 2 * WORK_J / torque; // 2 N m per rad, slowest seating is 10
        }
    }

    @Test
    void aNutThatSpinsBetweenBlowsRunsFree() {
        for (int i = 0; i < 5; i++) {
            strike(10);
        }
        assertThat(strike(2)).isFalse(); // one radian
        assertThat(detector.runningTorqueNm()).isZero();
        assertThat(detector.lastTorqueNm()).isEqualTo(2);
        assertThat(detector.snugAngleRad()).isEqualTo(rest);
        boolean snug = false;
        for (int i = 0; i < 3 && !snug; i++) {
            snug = strike(20 + 20 * i);
        }
        assertThat(snug).isTrue();
        assertThat(detector.runningTorqueNm()).isZero();
    }

    @Test
    void aNutThatTravelsHalfATurnWithoutABlowRanFreelyIntoTheJoint() {
        rest = 9;
        boolean snug = false;
        for (int i = 0; i < 3 && !snug; i++) {
            snug = strike(25 + 20 * i);
        }
        assertThat(snug).isTrue();
        assertThat(detector.snugAngleRad()).isEqualTo(9);
        assertThat(detector.runningTorqueNm()).isZero();
    }

    @Test
    void aMissingAngleIsSkippedAndResetForgets() {
        strike(10);
        assertThat(detector.update(Float.NaN, rest, WORK_J)).isFalse();
        assertThat(detector.lastTorqueNm()).isCloseTo(10, within(1e-4f));
        strike(100);
        strike(100);
        assertThat(detector.isSnug()).isTrue();
        detector.reset();
        rest = 0;
        assertThat(detector.isSnug()).isFalse();
        assertThat(detector.lastTorqueNm()).isNaN();
        assertThat(strike(100)).as("the first torque is the running torque").isFalse();
        assertThat(detector.runningTorqueNm()).isCloseTo(100, within(0.1f));
    }
}
