package org.shutoffbench.harness.report;

import java.util.List;
import java.util.TreeSet;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.joint.Yielding;

/** Torque of a drawn joint over nut angle past snug, turning on for the first time. */
final class JointCurves {

    private static final int POINTS = 160;

    private final JointLaw law;

    JointCurves(JointLaw law) {
        this.law = law;
    }

    /** Torque per clamp force before any galling, m. */
    double kappaOnM() {
        return law.torqueTension().kappaOnM();
    }

    /** Torque that clamps, kappa_on F, in N m. */
    double clampingNm(double pastSnugDeg) {
        double pastSnugRad = Math.toRadians(pastSnugDeg);
        double kappaOnM =
                law.torqueTensionAt(law.clamp().snugAngleRad() + pastSnugRad).kappaOnM();
        return kappaOnM * forceN(pastSnugRad);
    }

    private double forceN(double pastSnugRad) {
        double elasticN = law.clamp().forceN(pastSnugRad);
        Yielding yielding = law.yielding();
        return elasticN <= yielding.yieldForceN()
                ? elasticN
                : yielding.yieldForceN() + yielding.slopeRatio() * (elasticN - yielding.yieldForceN());
    }

    /** Running and prevailing torque in N m. */
    double freeNm(double pastSnugDeg) {
        return law.freeTorque().torqueNm(law.clamp().snugAngleRad() + Math.toRadians(pastSnugDeg));
    }

    /** Where the tool starts, deg past snug (negative). */
    double startDeg() {
        return -Math.toDegrees(law.clamp().snugAngleRad());
    }

    /** Elastic nut angle past snug at which a clamping torque is reached, deg. */
    double angleForTorqueDeg(double clampingNm) {
        double forceN = clampingNm / law.torqueTension().kappaOnM();
        return Math.toDegrees(law.clamp().angleForForceRad(forceN));
    }

    /** Angles that show the curves between two angles: an even grid and every corner, ascending, deg past snug. */
    List<Double> grid(double fromDeg, double toDeg) {
        TreeSet<Double> angles = new TreeSet<>();
        for (int i = 0; i <= POINTS; i++) {
            angles.add(fromDeg + (toDeg - fromDeg) * i / POINTS);
        }
        for (int zone = 1; zone < law.freeTorque().zoneCount(); zone++) {
            double corner = Math.toDegrees(law.freeTorque().startRad(zone)) + startDeg();
            if (corner > fromDeg && corner < toDeg) {
                angles.add(corner);
            }
        }
        if (fromDeg < 0 && toDeg > 0) {
            angles.add(0.0);
        }
        return List.copyOf(angles);
    }
}
