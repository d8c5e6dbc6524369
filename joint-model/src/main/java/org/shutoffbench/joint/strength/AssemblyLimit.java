package org.shutoffbench.joint.strength;

import org.shutoffbench.joint.thread.ScrewThread;

/**
 * The clamp force at which a bolt under combined tension and thread torsion reaches a share of its yield strength (source
 * key {@code VDI-2230}, assembly preload).
 *
 * @param thread the thread
 * @param yieldStrengthPa R_p0.2, Pa; positive
 * @param threadFriction mu_th; not negative
 */
public record AssemblyLimit(ScrewThread thread, double yieldStrengthPa, double threadFriction) {

    /** Share of yield that VDI 2230 uses for its tabulated assembly preloads. */
    public static final double TABLE_UTILISATION = 0.9;

    /** 1/cos 30 deg as the guideline rounds it. */
    private static final double FLANK_FACTOR = 1.155;

    public AssemblyLimit {
        if (!(yieldStrengthPa > 0 && yieldStrengthPa < Double.POSITIVE_INFINITY)
                || !(threadFriction >= 0 && threadFriction < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("yield strength must be positive, thread friction not negative");
        }
    }

    /** Clamp force in N at a utilisation of yield; 1 is yield itself. */
    public double forceN(double utilisation) {
        return utilisation * yieldStrengthPa * thread.stressAreaM2() / Math.sqrt(1 + 3 * square(shearPerTension()));
    }

    /** F_y, N. */
    public double yieldForceN() {
        return forceN(1);
    }

    private double shearPerTension() {
        return 1.5
                * thread.pitchDiameterM()
                / thread.torsionDiameterM()
                * (thread.helixTangent() + FLANK_FACTOR * threadFriction);
    }

    private static double square(double value) {
        return value * value;
    }
}
