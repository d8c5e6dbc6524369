package org.shutoffbench.harness.report.joint;

import org.shutoffbench.joint.ClampLaw;
import org.shutoffbench.joint.assembly.BoltedAssembly;
import org.shutoffbench.joint.assembly.PreloadAccuracy;
import org.shutoffbench.joint.assembly.TurnOfNut;
import org.shutoffbench.joint.strength.AssemblyLimit;

/** Force, torque and nut angle at 70 and 90 % of yield and at yield; torque rate; turn of nut. */
final class TighteningFacts {

    /** Nut angle from a tenth of the torque to all of it (common practice, no source; ISO 5393 tests near these ends). */
    private static final double HARD_UP_TO_RAD = Math.toRadians(30);

    private static final double SOFT_FROM_RAD = Math.toRadians(720);
    private static final double TENTH = 0.1;

    private final JointSubject subject;
    private final ClampLaw clamp;
    private final double kappaOnM;
    private final FactSection section = new FactSection("Tightening");

    private TighteningFacts(JointSubject subject) {
        this.subject = subject;
        this.clamp = subject.specification().law().clamp();
        this.kappaOnM = subject.torqueTension().kappaOnM();
    }

    static FactSection of(JointSubject subject) {
        return new TighteningFacts(subject).section();
    }

    private FactSection section() {
        AssemblyLimit limit = subject.limit();
        if (limit != null) {
            at("70 % of yield", limit.forceN(0.7));
            at("90 % of yield", limit.forceN(0.9));
            at("yield", limit.forceN(1));
        }
        if (!Double.isNaN(subject.targetForceN())) {
            at("target", subject.targetForceN());
        }
        section.add(
                "torque rate past seating",
                "",
                Measure.TORQUE_PER_ANGLE,
                kappaOnM * clamp.forcePerAngleNPerRad(),
                "kappa_on k_F");
        section.add(
                "seating width", "x_a", Measure.ANGLE, subject.specification().seatingWidthRad(), "given or assumed");
        if (!Double.isNaN(subject.aimedForceN())) {
            hardness(subject.aimedForceN());
        }
        turnOfNut();
        section.add(
                "preload scatter by torque wrench, to either side",
                "",
                Measure.SHARE,
                PreloadAccuracy.TORQUE_WRENCH.relative(),
                "MachineryHandbook");
        return section;
    }

    private void at(String where, double forceN) {
        section.add("clamp force at " + where, "F", Measure.FORCE, forceN, "VDI-2230")
                .add("clamping torque at " + where, "T_F", Measure.TORQUE, kappaOnM * forceN, "kappa_on F")
                .add("angle from snug at " + where, "", Measure.ANGLE, clamp.angleForForceRad(forceN), "x_a/2 + F/k_F");
    }

    private void hardness(double forceN) {
        double angle = clamp.angleForForceRad(forceN) - clamp.angleForForceRad(TENTH * forceN);
        section.add("angle from a tenth of the torque to all of it", "", Measure.ANGLE, angle, "common practice");
        section.remark(
                "A " + word(angle) + " joint: hard up to 30 deg, soft from 720 deg (common practice, no source).");
    }

    private static String word(double angleRad) {
        if (angleRad <= HARD_UP_TO_RAD) {
            return "hard";
        }
        return angleRad >= SOFT_FROM_RAD ? "soft" : "medium";
    }

    private void turnOfNut() {
        BoltedAssembly assembly = subject.assembly();
        if (assembly == null) {
            return;
        }
        double diameter = assembly.thread().majorDiameterM();
        if (assembly.boltLength().lengthM() > 12 * diameter) {
            section.remark("The turn-of-nut rule ends at a bolt length of 12 diameters.");
            return;
        }
        TurnOfNut rule = TurnOfNut.of(assembly.boltLength().lengthM(), diameter);
        section.add("turn-of-nut rule from snug", "", Measure.TURNS, rule.rotationRad(), "RCSC-2014")
                .add("its tolerance, to either side", "", Measure.ANGLE, rule.toleranceRad(), "RCSC-2014")
                .add(
                        "elastic clamp force after that turn",
                        "",
                        Measure.FORCE,
                        clamp.forceN(rule.rotationRad()),
                        "k_F (x - x_a/2)");
        AssemblyLimit limit = subject.limit();
        if (limit != null && clamp.forceN(rule.rotationRad()) > limit.yieldForceN()) {
            section.remark("That turn takes the bolt past yield, as the rule intends for structural bolts.");
        }
        if (!Double.isNaN(subject.aimedForceN())) {
            section.add(
                    "turns that make the aimed clamp force",
                    "",
                    Measure.TURNS,
                    clamp.angleForForceRad(subject.aimedForceN()),
                    "x_a/2 + F/k_F");
        }
    }
}
