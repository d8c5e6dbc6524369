package org.shutoffbench.joint.prevailing;

/**
 * What to do with the torque that turns a lock nut one turn before it seats: add it to the target where it is at least a
 * third of it (source key {@code TB-43-0218}).
 */
public final class RunningTorqueRule {

    private static final double SHARE_OF_TARGET = 1.0 / 3;

    private RunningTorqueRule() {}

    /** Torque to tighten to, N m. */
    public static double setTorqueNm(double targetNm, double runningNm) {
        return runningNm >= SHARE_OF_TARGET * targetNm ? targetNm + runningNm : targetNm;
    }
}
