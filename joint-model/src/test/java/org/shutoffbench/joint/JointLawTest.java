package org.shutoffbench.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shutoffbench.joint.FreeTorque.Piece;

class JointLawTest {

    private static final TorqueTension LEVERS = new TorqueTension(0.3e-3, 0.8e-3, 0.9e-3);
    private static final FreeTorque RUNNING = FreeTorque.of(0.2, List.of());

    @Test
    void leversAddOnTheWayOnAndTheHelixHelpsOnTheWayOff() {
        assertThat(LEVERS.kappaOnM()).isCloseTo(2.0e-3, within(1e-15));
        assertThat(LEVERS.kappaOffM()).isCloseTo(1.4e-3, within(1e-15));
        assertThat(LEVERS.isSelfLocking()).isTrue();
        assertThat(new TorqueTension(1e-3, 0.5e-3, 0.5e-3).isSelfLocking()).isFalse();
        assertThat(LEVERS.withThreadFrictionTimes(2)).isEqualTo(new TorqueTension(0.3e-3, 1.6e-3, 0.9e-3));
    }

    @Test
    void clampForceFollowsSeatingThenTheStraightLine() {
        ClampLaw clamp = new ClampLaw(1000, 5, 0.4);
        assertThat(clamp.forceN(-0.1)).isEqualTo(0);
        assertThat(clamp.forceN(0.2)).isCloseTo(50, within(1e-12));
        assertThat(clamp.forceN(0.4)).isCloseTo(200, within(1e-12));
        assertThat(clamp.forceN(1.2)).isCloseTo(1000, within(1e-12));
        assertThat(clamp.angleForForceRad(-1)).isEqualTo(0);
        assertThat(clamp.angleForForceRad(50)).isCloseTo(0.2, within(1e-12));
        assertThat(clamp.angleForForceRad(200)).isCloseTo(0.4, within(1e-12));
        assertThat(clamp.angleForForceRad(1000)).isCloseTo(1.2, within(1e-12));
        ClampLaw sharp = new ClampLaw(1000, 5, 0);
        assertThat(sharp.forceN(0.3)).isCloseTo(300, within(1e-12));
    }

    @Test
    void gallingTurnsThreadFrictionUpFromItsAngleOn() {
        JointLaw law = law(LEVERS, Yielding.OFF, new Galling(3, 2), 1);
        assertThat(law.torqueTensionAt(2.999)).isEqualTo(LEVERS);
        assertThat(law.torqueTensionAt(3)).isEqualTo(LEVERS.withThreadFrictionTimes(2));
    }

    @Test
    void zonesOfFreeTorqueCoverTheWholeLine() {
        FreeTorque torque = FreeTorque.of(1, List.of(new Piece(2, 4, 0, 3, -0.5), Piece.constantFrom(3, 5)));
        assertThat(torque.zoneCount()).isEqualTo(4);
        assertThat(torque.startRad(0)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(torque.endRad(0)).isEqualTo(2);
        assertThat(torque.endRad(3)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(torque.originRad(0)).isEqualTo(0);
        assertThat(torque.originRad(2)).isEqualTo(3);
        assertThat(torque.zoneAt(2)).isEqualTo(1);
        assertThat(torque.zoneAt(2.5)).isEqualTo(1);
        assertThat(torque.zoneAt(-9)).isEqualTo(0);
        assertThat(torque.torqueNm(1)).isEqualTo(1);
        assertThat(torque.torqueNm(2.5)).isCloseTo(1 + 1.5 - 0.125, within(1e-12));
        assertThat(torque.torqueNm(3.5)).isCloseTo(1 + 4.5 - 1.125 + 5, within(1e-12));
        assertThat(torque.torqueNm(9)).isEqualTo(6);
        assertThat(torque.coefficient(2, 0)).isCloseTo(1 + 3 - 0.5 + 5, within(1e-12));
        assertThat(torque.coefficient(2, 1)).isCloseTo(2, within(1e-12));
        assertThat(torque.coefficient(2, 2)).isEqualTo(-0.5);
    }

    @Test
    void aPieceWithoutBeginningCountsFromZero() {
        FreeTorque torque =
                FreeTorque.of(0, List.of(new Piece(Double.NEGATIVE_INFINITY, 4, 2, 0, 0), Piece.constantFrom(1, 1)));
        assertThat(torque.torqueNm(-5)).isEqualTo(2);
        assertThat(torque.torqueNm(2)).isEqualTo(3);
        assertThat(torque.torqueNm(5)).isEqualTo(1);
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> law(new TorqueTension(1e-3, 0.5e-3, 0.4e-3), Yielding.OFF, Galling.NONE, 1))
                .hasMessageContaining("not self-locking");
        assertThatThrownBy(() -> law(LEVERS, Yielding.OFF, Galling.NONE, 0.99)).hasMessageContaining("static ratio");
        assertThatThrownBy(() -> law(LEVERS, Yielding.at(200), Galling.NONE, 1)).hasMessageContaining("seating zone");
        assertThat(law(LEVERS, Yielding.at(201), Galling.NONE, 1).yielding().yieldForceN())
                .isEqualTo(201);
        assertThatThrownBy(() -> new TorqueTension(0, 1, 1)).hasMessageContaining("levers");
        assertThatThrownBy(() -> new TorqueTension(1, -1, 1)).hasMessageContaining("levers");
        assertThatThrownBy(() -> new TorqueTension(1, 1, -1)).hasMessageContaining("levers");
        assertThatThrownBy(() -> new ClampLaw(0, 1, 1)).hasMessageContaining("clamp force per angle");
        assertThatThrownBy(() -> new ClampLaw(1, Double.NaN, 1)).hasMessageContaining("snug angle");
        assertThatThrownBy(() -> new ClampLaw(1, 1, -1)).hasMessageContaining("seating width");
        assertThatThrownBy(() -> new Yielding(0, 0.1, 1)).hasMessageContaining("yield force");
        assertThatThrownBy(() -> new Yielding(1, 1, 1)).hasMessageContaining("slope ratio");
        assertThatThrownBy(() -> new Yielding(1, 0, 1)).hasMessageContaining("slope ratio");
        assertThatThrownBy(() -> new Yielding(1, 0.1, 0)).hasMessageContaining("fracture angle");
        assertThatThrownBy(() -> new Galling(Double.NaN, 2)).hasMessageContaining("galling");
        assertThatThrownBy(() -> new Galling(1, 0.9)).hasMessageContaining("galling");
        assertThatThrownBy(() -> new Piece(2, 2, 1, 0, 0)).hasMessageContaining("end after it starts");
        assertThatThrownBy(() -> FreeTorque.of(-1, List.of())).hasMessageContaining("running torque");
    }

    private static JointLaw law(TorqueTension levers, Yielding yielding, Galling galling, double staticRatio) {
        return new JointLaw(levers, new ClampLaw(1000, 5, 0.4), RUNNING, staticRatio, yielding, galling);
    }
}
