package org.shutoffbench.joint.strength;

import org.shutoffbench.joint.thread.CustomaryUnits;

/**
 * Nominal strength of a bolt material.
 *
 * @param proofPa stress under proof load S_p, Pa
 * @param yieldPa yield or 0.2 % proof strength R_p0.2, Pa
 * @param tensilePa tensile strength R_m, Pa
 */
public record Strength(double proofPa, double yieldPa, double tensilePa) {

    public Strength {
        if (!(proofPa > 0 && proofPa <= yieldPa && yieldPa < tensilePa && tensilePa < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("strengths must be positive and rise from proof over yield to tensile");
        }
    }

    static Strength megapascal(double proof, double yield, double tensile) {
        return new Strength(proof * 1e6, yield * 1e6, tensile * 1e6);
    }

    static Strength ksi(double proof, double yield, double tensile) {
        double ksi = CustomaryUnits.KSI_PA;
        return new Strength(proof * ksi, yield * ksi, tensile * ksi);
    }
}
