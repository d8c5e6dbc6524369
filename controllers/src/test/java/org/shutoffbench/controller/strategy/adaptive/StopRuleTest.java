package org.shutoffbench.controller.strategy.adaptive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class StopRuleTest {

    private static final float SPEED = 130;
    private static final float TARGET_NM = 84;

    private final StruckJoint joint = StruckJoint.hard();

    /** Angle at which the joint has a clamping torque, rad. */
    private float angleAt(float clampingNm) {
        float angle = 0;
        while (joint.law.clampingNm(angle) < clampingNm) {
            angle += 1e-4f;
        }
        return angle;
    }

    private float afterFullBlow(float angleRad) {
        return joint.law.clampingNm(angleRad + joint.advanceRad(angleRad, StruckJoint.ENERGY_J));
    }

    @Test
    void theLookAheadIsTheEnergyBalanceSolvedByBisection() {
        StopRule rule = new StopRule(joint.tool, false);
        for (float now = 40; now < 100; now += 7) {
            float angle = angleAt(now);
            rule.nextLevel(joint.law, angle, StruckJoint.ENERGY_J, SPEED, TARGET_NM);
            assertThat(rule.nowNm).isCloseTo(now, within(0.1f));
            assertThat(rule.nextNm).isCloseTo(afterFullBlow(angle), Percentage.withPercentage(1));
        }
    }

    @Test
    void withoutTrimItStopsWhereStoppingIsCloserThanOneMoreBlow() {
        StopRule rule = new StopRule(joint.tool, false);
        for (float now = 50; now < 100; now += 1.7f) {
            float angle = angleAt(now);
            float stopped = Math.abs(joint.law.clampingNm(angle) - TARGET_NM);
            float struck = Math.abs(afterFullBlow(angle) - TARGET_NM);
            if (Math.abs(stopped - struck) > 1) {
                float level = rule.nextLevel(joint.law, angle, StruckJoint.ENERGY_J, SPEED, TARGET_NM);
                assertThat(level).as("at " + now).isEqualTo(stopped < struck ? StopRule.STOP : 1);
            }
        }
    }

    @Test
    void withTrimTheChosenShareOfAFullBlowEndsCloserThanAnyOtherChoice() {
        StopRule rule = new StopRule(joint.tool, true);
        for (float now = 60; now < 95; now += 1.3f) {
            float angle = angleAt(now);
            float full = joint.advanceRad(angle, StruckJoint.ENERGY_J);
            float level = rule.nextLevel(joint.law, angle, StruckJoint.ENERGY_J, SPEED, TARGET_NM);
            float best = Math.abs(joint.law.clampingNm(angle) - TARGET_NM);
            for (float share = joint.tool.leastTrim(SPEED); share <= 1; share += 0.01f) {
                best = Math.min(best, Math.abs(joint.law.clampingNm(angle + share * full) - TARGET_NM));
            }
            float chosen = level == StopRule.STOP ? 0 : rule.lastBlowJ / StruckJoint.ENERGY_J * full;
            if (level < 1) {
                assertThat(Math.abs(joint.law.clampingNm(angle + chosen) - TARGET_NM))
                        .isLessThan(best + 1.5f);
            } else {
                assertThat(afterFullBlow(angle)).isLessThan(TARGET_NM + 1.5f);
            }
        }
    }

    @Test
    void levelsAndSharesOfALastBlowAreInverse() {
        ToolCalibration tool = joint.tool;
        float last = 0;
        for (float share = 0.3f; share < 1; share += 0.05f) {
            float level = tool.levelForShare(share, SPEED);
            assertThat(level).isBetween(0.5f, 1f).isGreaterThanOrEqualTo(last);
            last = level;
        }
        assertThat(tool.levelForShare(0, SPEED)).isEqualTo(0.5f);
    }

    @Test
    void aWeakBatteryMakesWeakerBlowsAndALongerLook() {
        ToolCalibration tool = joint.tool;
        float fresh = tool.blowEnergyJ(140);
        float tired = tool.blowEnergyJ(120);
        assertThat(tired).isLessThan(0.97f * fresh).isGreaterThan(0.8f * fresh);
        StopRule rule = new StopRule(tool, false);
        float angle = angleAt(70);
        rule.nextLevel(joint.law, angle, fresh, 140, TARGET_NM);
        float strong = rule.nextNm;
        rule.nextLevel(joint.law, angle, tired, 120, TARGET_NM);
        assertThat(rule.nextNm).isLessThan(strong);
    }

    @Test
    void theTransmissionsSlopeIsItsDifference() {
        ToolCalibration tool = joint.tool;
        float perNm = tool.tauPerNm(StruckJoint.ENERGY_J);
        for (float torque = 3.3f; torque < 120; torque += 9.1f) {
            tool.lookUp(torque * 1.001f, perNm);
            float above = tool.share;
            tool.lookUp(torque * 0.999f, perNm);
            float below = tool.share;
            tool.lookUp(torque, perNm);
            float difference = (above - below) / (0.002f * torque);
            assertThat(tool.sharePerNm).isCloseTo(difference, within(1e-3f + 0.15f * Math.abs(difference)));
        }
    }

    @Test
    void aPulseOutsideWhatWasCalibratedSaysNothing() {
        ToolCalibration tool = joint.tool;
        float reference = tool.pulseTorqueNm(ToolSettings.REFERENCE_AREA);
        assertThat(reference).isBetween(ToolSettings.LEAST_PULSE_NM, ToolSettings.GREATEST_PULSE_NM);
        assertThat(tool.pulseTorqueNm(0)).isZero();
        assertThat(tool.pulseTorqueNm(0.001f)).isZero();
        assertThat(tool.pulseTorqueNm(1)).isZero();
        float exponent = StruckJoint.settings(Map.of()).get(ToolSettings.PULSE_EXPONENT);
        assertThat(tool.pulseTorqueNm(1.1f * ToolSettings.REFERENCE_AREA))
                .isCloseTo(reference * (float) Math.pow(1.1, exponent), Percentage.withPercentage(0.01));
    }
}
