package org.shutoffbench.harness.study.calibrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.strategy.adaptive.ToolSettings;
import org.shutoffbench.tool.ImpactTool;
import org.shutoffbench.tool.ReferenceTools;

/** The bars of 2 % and 3 % are the project's own; every figure is a blow of the plant itself. */
class CalibrationTest {

    private static final int JOINTS = 240;
    private static final int FRESH = 60;
    /** Points of the sequence that no calibration comes near. */
    private static final int FAR = 5000;

    private static ImpactTool tool(String name) {
        return name.equals("light") ? ReferenceTools.LIGHT : ReferenceTools.HEAVY;
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "heavy"})
    void onFreshJointsEnergyIsWithinTwoAndTransmissionWithinThreePercent(String name) {
        ImpactTool tool = tool(name);
        CalibrationCheck check = CalibrationCheck.of(tool, Calibration.of(tool, JOINTS), FRESH, FAR);
        assertThat(check.blows()).isGreaterThan(500);
        assertThat(check.blowEnergyError()).isBetween(1e-4, 0.02);
        assertThat(check.transmissionError()).isBetween(1e-4, 0.03);
    }

    @Test
    void equalToolsGiveEqualBytes() {
        assertThat(text("light", Calibration.of(ReferenceTools.LIGHT, 30)))
                .isEqualTo(text("light", Calibration.of(ReferenceTools.LIGHT, 30)));
    }

    @Test
    void aWeakerCamSpringIsNoticed() {
        Calibration nominal = Calibration.of(ReferenceTools.LIGHT, 30);
        Calibration heavy = Calibration.of(ReferenceTools.HEAVY, 30);
        assertThat(heavy.value(ToolSettings.FIRST_BLOW)).isGreaterThan(2 * nominal.value(ToolSettings.FIRST_BLOW));
        assertThat(heavy.value(ToolSettings.SOCKET_STIFFNESS)).isEqualTo(14000);
    }

    @Test
    void everyLearnedSettingIsMeasuredAndNothingElse() {
        Calibration calibration = Calibration.of(ReferenceTools.LIGHT, 30);
        Set<String> learned = CalibrationFile.strategies().stream()
                .flatMap(strategy -> strategy.settings().stream())
                .filter(setting -> setting.role() == Setting.Role.LEARNED)
                .map(Setting::name)
                .collect(Collectors.toSet());
        assertThat(calibration.settings().keySet()).containsExactlyInAnyOrderElementsOf(learned);
    }

    @Test
    void aStrongerLastBlowNeverAdvancesLess() {
        Calibration calibration = Calibration.of(ReferenceTools.LIGHT, 60);
        for (boolean fast : new boolean[] {false, true}) {
            for (int knot = 1; knot < ToolSettings.TRIMS; knot++) {
                assertThat(calibration.value(ToolSettings.trimAt(knot, fast)))
                        .isGreaterThanOrEqualTo(calibration.value(ToolSettings.trimAt(knot - 1, fast)));
            }
        }
    }

    @Test
    void setsOfJointsThatSkipTheFirstShareNone() {
        List<Double> first = stiffnesses(PlainJoint.set(20, 0));
        List<Double> second = stiffnesses(PlainJoint.set(20, 20));
        assertThat(first).doesNotContainAnyElementsOf(second);
        assertThat(first).allSatisfy(k -> assertThat(k).isBetween(60e6, 400e6));
    }

    private static List<Double> stiffnesses(List<PlainJoint> joints) {
        return joints.stream()
                .map(joint -> joint.law().clamp().forcePerAngleNPerRad() * 2 * Math.PI / 1.75e-3)
                .toList();
    }

    @Test
    void theBenchsWorkIsTheIntegralOfItsTorque() {
        PlainJoint joint = PlainJoint.set(1, 3).get(0);
        double snug = joint.law().clamp().snugAngleRad();
        double seating = joint.law().clamp().seatingWidthRad();
        // beyond seating torque is a straight line, and Simpson's rule exact
        double from = snug + 1.5 * seating;
        double mean = 0.5 * (joint.torqueNm(from) + joint.torqueNm(from + 0.2));
        assertThat(joint.workJ(from, from + 0.2)).isCloseTo(0.2 * mean, within(1e-12));
    }

    @Test
    void aValueOutsideItsRangeIsNotWritten() {
        Map<String, Double> wrong = new LinkedHashMap<>();
        wrong.put(ToolSettings.RUNDOWN_SPREAD, 7.0);
        assertThatThrownBy(() -> text("odd", new Calibration(wrong)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(ToolSettings.RUNDOWN_SPREAD);
    }

    private static String text(String name, Calibration calibration) {
        return CalibrationFile.text(name, 30, calibration, new CalibrationCheck(1, 1, 0, 0, 0));
    }
}
