package org.shutoffbench.joint;

/**
 * Torque per clamp force of a threaded joint, split into its three levers (linear form after Motosh; ISO 16047 and VDI
 * 2230 agree within their rounding).
 *
 * @param helixLeverM pitch part, P/(2 pi), in m; positive
 * @param threadLeverM thread friction part, mu_th d2 / (2 cos 30 deg), in m; not negative
 * @param bearingLeverM bearing face part, mu_b D_b / 2, in m; not negative
 */
public record TorqueTension(double helixLeverM, double threadLeverM, double bearingLeverM) {

    private static final double COS_FLANK_ANGLE = Math.sqrt(3) / 2;

    public TorqueTension {
        if (!(helixLeverM > 0 && helixLeverM < Double.POSITIVE_INFINITY)
                || !(threadLeverM >= 0 && threadLeverM < Double.POSITIVE_INFINITY)
                || !(bearingLeverM >= 0 && bearingLeverM < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "levers must be finite, the helix lever positive, the others not negative");
        }
    }

    /**
     * Levers from geometry and friction.
     *
     * @param pitchM thread pitch P in m
     * @param pitchDiameterM d2 in m
     * @param bearingDiameterM effective bearing diameter D_b in m
     * @param threadFriction mu_th
     * @param bearingFriction mu_b
     */
    public static TorqueTension of(
            double pitchM,
            double pitchDiameterM,
            double bearingDiameterM,
            double threadFriction,
            double bearingFriction) {
        return new TorqueTension(
                pitchM / (2 * Math.PI),
                threadFriction * pitchDiameterM / (2 * COS_FLANK_ANGLE),
                bearingFriction * bearingDiameterM / 2);
    }

    /** Torque to tighten per clamp force, kappa_on, in m. */
    public double kappaOnM() {
        return helixLeverM + threadLeverM + bearingLeverM;
    }

    /** Torque to loosen per clamp force, kappa_off, in m; not positive where the thread is not self-locking. */
    public double kappaOffM() {
        return threadLeverM + bearingLeverM - helixLeverM;
    }

    public boolean isSelfLocking() {
        return kappaOffM() > 0;
    }

    /** The same joint with thread friction multiplied by a factor (galling). */
    public TorqueTension withThreadFrictionTimes(double factor) {
        return new TorqueTension(helixLeverM, threadLeverM * factor, bearingLeverM);
    }
}
