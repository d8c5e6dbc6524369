package org.shutoffbench.harness.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shutoffbench.harness.audit.FirstMovement.Rest;
import org.shutoffbench.harness.audit.FirstMovement.Tightened;
import org.shutoffbench.joint.ClampLaw;
import org.shutoffbench.joint.FreeTorque;
import org.shutoffbench.joint.Galling;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.joint.Resistance;
import org.shutoffbench.joint.TorqueTension;
import org.shutoffbench.joint.Yielding;

/** Closed forms of the residual torque of a joint whose numbers are invented and round. */
class FirstMovementAnalyticTest {

    private static final double PITCH_M = 1.75e-3;
    private static final double STIFFNESS_N_PER_M = 300e6;
    private static final double FORCE_PER_ANGLE = STIFFNESS_N_PER_M * PITCH_M / (2 * Math.PI);
    private static final TorqueTension LEVERS = new TorqueTension(PITCH_M / (2 * Math.PI), 0.8e-3, 0.9e-3);
    private static final double SNUG_RAD = 10;
    private static final double SEATING_RAD = 0.14;
    private static final Rest NO_REST = new Rest(0, 0, 0);
    private static final double TINY = 1e-9;

    private static JointLaw law(double prevailingNm, double staticRatio, double yieldN) {
        Resistance nut = new Resistance.LockingElement(prevailingNm, Resistance.Begin.fromStart(3), 1);
        return new JointLaw(
                LEVERS,
                new ClampLaw(FORCE_PER_ANGLE, SNUG_RAD, SEATING_RAD),
                FreeTorque.of(0.2, prevailingNm == 0 ? List.of() : nut.pieces(SNUG_RAD)),
                staticRatio,
                Yielding.at(yieldN),
                Galling.NONE);
    }

    private static Tightened tightened(JointLaw law, double forceN) {
        return new Tightened(
                law, LEVERS.kappaOnM(), forceN, SNUG_RAD + law.clamp().angleForForceRad(forceN));
    }

    @Test
    void withoutRestAndOvershootTheNutBreaksAwayAtStaticRatioTimesTighteningTorque() {
        FirstMovement moved = FirstMovement.of(tightened(law(0, 1.1, 1e9), 40e3), NO_REST, 1.05, 0);
        double tighteningNm = 0.2 + LEVERS.kappaOnM() * 40e3;
        assertThat(moved.breakawayNm()).isCloseTo(1.1 * 1.05 * tighteningNm, within(TINY));
        assertThat(moved.stoppingNm()).isCloseTo(tighteningNm, within(TINY));
        assertThat(moved.peakNm()).isEqualTo(moved.breakawayNm());
    }

    /** F_Z = f_Z k_J (source: VDI-2230): 11 um on 300 kN/mm cost 3.3 kN. */
    @Test
    void embeddingTakesSettlingTimesStiffness() {
        FirstMovement moved = FirstMovement.of(tightened(law(0, 1, 1e9), 40e3), new Rest(11e-6, 0, 0), 1, 0);
        assertThat(moved.restingForceN()).isCloseTo(40e3 - 3300, within(1e-6));
    }

    @Test
    void relaxationTakesItsShareForEveryTenfoldOfTimeAfterTheFirstMinute() {
        Tightened joint = tightened(law(0, 1, 1e9), 40e3);
        assertThat(FirstMovement.of(joint, new Rest(0, 0.01, 60), 1, 0).restingForceN())
                .isEqualTo(40e3);
        assertThat(FirstMovement.of(joint, new Rest(0, 0.01, 6000), 1, 0).restingForceN())
                .isCloseTo(40e3 * 0.98, within(1e-6));
    }

    @Test
    void embeddingNeverPullsAJointBelowNoForce() {
        assertThat(FirstMovement.of(tightened(law(0, 1, 1e9), 1000), new Rest(11e-6, 0, 0), 1, 0)
                        .restingForceN())
                .isZero();
    }

    @Test
    void prevailingTorqueCountsInTheReadingAndClampsNothing() {
        double withoutNm =
                FirstMovement.of(tightened(law(0, 1, 1e9), 40e3), NO_REST, 1, 0).peakNm();
        double withNm = FirstMovement.of(tightened(law(12, 1, 1e9), 40e3), NO_REST, 1, 0)
                .peakNm();
        assertThat(withNm - withoutNm).isCloseTo(12, within(TINY));
    }

    @Test
    void overshootReadsTheTorqueWhereTheHandStops() {
        double turnedRad = Math.toRadians(5);
        FirstMovement moved = FirstMovement.of(tightened(law(0, 1, 1e9), 40e3), NO_REST, 1, turnedRad);
        assertThat(moved.peakNm())
                .isCloseTo(0.2 + LEVERS.kappaOnM() * (40e3 + FORCE_PER_ANGLE * turnedRad), within(1e-6));
    }

    @Test
    void aYieldingBoltGainsLittleFromOvershoot() {
        double turnedRad = Math.toRadians(5);
        FirstMovement moved = FirstMovement.of(tightened(law(0, 1, 40e3), 40e3), NO_REST, 1, turnedRad);
        double gainedN = Yielding.ASSUMED_SLOPE_RATIO * FORCE_PER_ANGLE * turnedRad;
        assertThat(moved.peakNm()).isCloseTo(0.2 + LEVERS.kappaOnM() * (40e3 + gainedN), within(1e-6));
    }

    @Test
    void aNutThatNeverMetItsPartsShowsItsPrevailingTorqueAlone() {
        Tightened unseated = new Tightened(law(12, 1.1, 1e9), LEVERS.kappaOnM(), 0, SNUG_RAD - 2);
        assertThat(FirstMovement.of(unseated, new Rest(11e-6, 0.01, 3600), 1, 0.02)
                        .peakNm())
                .isCloseTo(1.1 * 12.2, within(TINY));
    }

    @Test
    void theHandToolShowsItsErrorsAndItsScale() {
        assertThat(new HandTool(0.04, -0.01, 0).readingNm(100)).isCloseTo(103, within(TINY));
        assertThat(new HandTool(0.04, -0.01, 2).readingNm(100)).isCloseTo(104, within(TINY));
        assertThat(new HandTool(-2, 0, 1).readingNm(100)).isZero();
    }
}
