package org.shutoffbench.plant;

import java.util.List;
import org.shutoffbench.joint.ClampLaw;
import org.shutoffbench.joint.FreeTorque;
import org.shutoffbench.joint.Galling;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.joint.TorqueTension;
import org.shutoffbench.joint.Yielding;

/** The four test joints of plain numbers: M12, friction 0.12, snug after two turns, no yield, s = 1. */
final class ReferenceJoints {

    static final double SNUG_RAD = 4 * Math.PI;

    private static final double PITCH_M = 1.75e-3;
    private static final double DIAMETER_M = 12e-3;

    private ReferenceJoints() {}

    static JointLaw joint(String name) {
        return switch (name) {
            case "A" -> joint(312e6, 8, List.of());
            case "B" -> joint(147e6, 15, List.of());
            case "C" -> joint(60e6, 40, List.of());
            case "D" -> joint(312e6, 8, lockNut(Math.PI, 2 * Math.PI, 10));
            default -> throw new IllegalArgumentException(name);
        };
    }

    static List<FreeTorque.Piece> lockNut(double fromRad, double rampRad, double torqueNm) {
        return List.of(
                new FreeTorque.Piece(fromRad, fromRad + rampRad, 0, torqueNm / rampRad, 0),
                FreeTorque.Piece.constantFrom(fromRad + rampRad, torqueNm));
    }

    static JointLaw joint(double stiffnessNPerM, double seatingDeg, List<FreeTorque.Piece> pieces) {
        return joint(stiffnessNPerM, seatingDeg, pieces, 1, Yielding.OFF);
    }

    static JointLaw joint(
            double stiffnessNPerM, double seatingDeg, List<FreeTorque.Piece> pieces, double s, Yielding yielding) {
        TorqueTension tension =
                TorqueTension.of(PITCH_M, DIAMETER_M - 0.64952 * PITCH_M, 2 * 0.65 * DIAMETER_M, 0.12, 0.12);
        ClampLaw clamp = new ClampLaw(stiffnessNPerM * PITCH_M / (2 * Math.PI), SNUG_RAD, Math.toRadians(seatingDeg));
        return new JointLaw(tension, clamp, FreeTorque.of(0.2, pieces), s, yielding, Galling.NONE);
    }
}
