package org.shutoffbench.harness.study.calibrate;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.random.HaltonSequenceGenerator;
import org.shutoffbench.joint.ClampLaw;
import org.shutoffbench.joint.FreeTorque;
import org.shutoffbench.joint.Galling;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.joint.TorqueTension;
import org.shutoffbench.joint.Yielding;

/**
 * A joint of the calibration bench: M12, no locking element, spread evenly over stiffness, seating, friction, running torque
 * and battery (all ranges assumed: they enclose the joints a light or heavy tool is used on).
 *
 * @param law the joint
 * @param supplyRatio battery voltage over nominal
 */
record PlainJoint(JointLaw law, double supplyRatio) {

    private static final double PITCH_M = 1.75e-3;
    private static final double PITCH_DIAMETER_M = 10.863e-3;
    private static final double BEARING_DIAMETER_M = 15.07e-3;
    private static final double RUNNING_TORQUE_NM = 0.2;

    /** Every third joint runs stiffly, so that blows at little torque are seen too. */
    private static final int STIFF_RUNNING_EVERY = 3;

    /** Below this the cam's swing changes its kind and one curve does not fit both. */
    private static final double LEAST_SUPPLY = 0.82;

    private static final int DIMENSIONS = 6;

    /** Joints of a set; sets that skip different numbers of points share none. */
    static List<PlainJoint> set(int count, int skip) {
        HaltonSequenceGenerator points = new HaltonSequenceGenerator(DIMENSIONS);
        points.skipTo(skip + 1);
        List<PlainJoint> joints = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            joints.add(at(points.nextVector(), i % STIFF_RUNNING_EVERY == 1));
        }
        return joints;
    }

    private static PlainJoint at(double[] point, boolean runsStiffly) {
        double stiffness = 60e6 * StrictMath.pow(400.0 / 60, point[0]);
        double seatingRad = StrictMath.toRadians(5 + 35 * point[1]);
        double friction = 0.10 + 0.08 * point[2];
        double runningNm = runsStiffly ? RUNNING_TORQUE_NM + 16 * point[3] : RUNNING_TORQUE_NM;
        double snugRad = 2 * Math.PI * (1.5 + 2 * point[4]);
        double supply = LEAST_SUPPLY + (1 - LEAST_SUPPLY) * point[5];
        TorqueTension lever = TorqueTension.of(PITCH_M, PITCH_DIAMETER_M, BEARING_DIAMETER_M, friction, friction);
        ClampLaw clamp = new ClampLaw(stiffness * PITCH_M / (2 * Math.PI), snugRad, seatingRad);
        JointLaw law =
                new JointLaw(lever, clamp, FreeTorque.of(runningNm, List.of()), 1.05, Yielding.OFF, Galling.NONE);
        return new PlainJoint(law, supply);
    }

    double runningTorqueNm() {
        return law.freeTorque().torqueNm(0);
    }

    boolean runsFreely() {
        return runningTorqueNm() <= RUNNING_TORQUE_NM;
    }

    /** Torque to turn the nut on, N m. */
    double torqueNm(double angleRad) {
        return runningTorqueNm() + clampingNm(angleRad);
    }

    double clampingNm(double angleRad) {
        return law.torqueTension().kappaOnM()
                * law.clamp().forceN(angleRad - law.clamp().snugAngleRad());
    }

    /** Work to turn the nut from one angle to another, J; the torque is a parabola at most, so Simpson's rule is exact
     * between its joints. */
    double workJ(double fromRad, double toRad) {
        int panels = 64;
        double step = (toRad - fromRad) / panels;
        double sum = 0;
        for (int i = 0; i < panels; i++) {
            double a = fromRad + i * step;
            sum += torqueNm(a) + 4 * torqueNm(a + step / 2) + torqueNm(a + step);
        }
        return sum * step / 6;
    }
}
