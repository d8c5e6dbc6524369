package org.shutoffbench.joint;

/**
 * The law of one drawn joint: what the nut resists with at every angle, and what clamp force it makes.
 *
 * <p>Nut angles count from where the tool starts. Torque to move the nut on: free torque plus kappa_on F; to back it off:
 * free torque plus kappa_off F.
 *
 * @param torqueTension torque per clamp force before any galling
 * @param clamp elastic clamp force over angle
 * @param freeTorque running and prevailing torque and disturbances
 * @param staticRatio s, breakaway torque over moving torque, at least 1
 * @param yielding yield and fracture
 * @param galling a step of thread friction, or none
 */
public record JointLaw(
        TorqueTension torqueTension,
        ClampLaw clamp,
        FreeTorque freeTorque,
        double staticRatio,
        Yielding yielding,
        Galling galling) {

    public JointLaw {
        if (!torqueTension.isSelfLocking()) {
            throw new IllegalArgumentException(String.format(
                    java.util.Locale.ROOT,
                    "joint is not self-locking: friction levers %.4g m do not exceed the helix lever %.4g m",
                    torqueTension.threadLeverM() + torqueTension.bearingLeverM(),
                    torqueTension.helixLeverM()));
        }
        if (!(staticRatio >= 1 && staticRatio < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("static ratio must be finite and at least 1");
        }
        double seatedN = clamp.forceN(clamp.seatingWidthRad());
        if (yielding.yieldForceN() <= seatedN) {
            throw new IllegalArgumentException("the bolt would yield inside the seating zone");
        }
    }

    /** Torque per clamp force at a nut angle on first passage, galling included. */
    public TorqueTension torqueTensionAt(double angleRad) {
        return angleRad < galling.fromAngleRad()
                ? torqueTension
                : torqueTension.withThreadFrictionTimes(galling.frictionFactor());
    }
}
