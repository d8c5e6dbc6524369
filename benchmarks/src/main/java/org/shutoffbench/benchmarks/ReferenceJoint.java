package org.shutoffbench.benchmarks;

import java.util.List;
import org.shutoffbench.joint.ClampLaw;
import org.shutoffbench.joint.FreeTorque;
import org.shutoffbench.joint.Galling;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.joint.TorqueTension;
import org.shutoffbench.joint.Yielding;
import org.shutoffbench.tool.ImpactTool;
import org.shutoffbench.tool.ReferenceTools;

/** Reference joints A to D with the light tool (docs/physics.md), or A with the heavy one. */
record ReferenceJoint(String name, JointLaw law, ImpactTool tool) {

    private static final double PITCH_M = 1.75e-3;
    private static final double RAMP_RAD = 2 * Math.PI;
    private static final double PREVAILING_NM = 10;

    static final ReferenceJoint A = new ReferenceJoint("A", law(312e6, 8, false), ReferenceTools.LIGHT);

    static final List<ReferenceJoint> ALL = List.of(
            A,
            new ReferenceJoint("B", law(147e6, 15, false), ReferenceTools.LIGHT),
            new ReferenceJoint("C", law(60e6, 40, false), ReferenceTools.LIGHT),
            new ReferenceJoint("D", law(312e6, 8, true), ReferenceTools.LIGHT),
            new ReferenceJoint("A_HEAVY", law(312e6, 8, false), ReferenceTools.HEAVY));

    static ReferenceJoint of(String name) {
        for (ReferenceJoint joint : ALL) {
            if (joint.name.equals(name)) {
                return joint;
            }
        }
        throw new IllegalArgumentException("no joint is called " + name);
    }

    private static JointLaw law(double stiffnessNPerM, double seatingDeg, boolean isLockNut) {
        return new JointLaw(
                TorqueTension.of(PITCH_M, 12e-3 - 0.64952 * PITCH_M, 15.6e-3, 0.12, 0.12),
                new ClampLaw(stiffnessNPerM * PITCH_M / (2 * Math.PI), 4 * Math.PI, Math.toRadians(seatingDeg)),
                FreeTorque.of(0.2, isLockNut ? insert() : List.of()),
                1,
                Yielding.OFF,
                Galling.NONE);
    }

    private static List<FreeTorque.Piece> insert() {
        return List.of(
                new FreeTorque.Piece(Math.PI, Math.PI + RAMP_RAD, 0, PREVAILING_NM / RAMP_RAD, 0),
                FreeTorque.Piece.constantFrom(Math.PI + RAMP_RAD, PREVAILING_NM));
    }
}
