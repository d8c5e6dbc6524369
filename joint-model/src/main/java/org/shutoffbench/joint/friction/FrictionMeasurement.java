package org.shutoffbench.joint.friction;

import org.shutoffbench.joint.thread.ScrewThread;

/**
 * Torque and clamp force read together on a friction test.
 *
 * @param torqueNm tightening torque, N m; positive
 * @param forceN clamp force, N; positive
 */
public record FrictionMeasurement(double torqueNm, double forceN) {

    /** Half of 1/cos 30 deg as the standard rounds it. */
    private static final double FLANK_FACTOR = 0.577;

    public FrictionMeasurement {
        if (!(torqueNm > 0 && torqueNm < Double.POSITIVE_INFINITY)
                || !(forceN > 0 && forceN < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("torque and clamp force must be positive and finite");
        }
    }

    /**
     * mu_tot, the one coefficient that thread and bearing face would need to have in common (source key {@code
     * ISO-16047}).
     *
     * @param bearingDiameterM effective bearing diameter D_b, m
     */
    public double totalFriction(ScrewThread thread, double bearingDiameterM) {
        double frictionLeverM = torqueNm / forceN - thread.pitchM() / (2 * Math.PI);
        return frictionLeverM / (FLANK_FACTOR * thread.pitchDiameterM() + 0.5 * bearingDiameterM);
    }
}
