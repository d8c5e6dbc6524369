package org.shutoffbench.joint.stiffness;

import java.util.Locale;

/**
 * One clamped part, or a washer, as a round plate with a hole.
 *
 * @param elasticModulusPa E, Pa; positive
 * @param thicknessM along the bolt, m; positive
 * @param outerDiameterM D_A, m; larger than the hole; infinite for a part much wider than its cone
 * @param holeDiameterM d_h, m; not negative
 */
public record Layer(double elasticModulusPa, double thicknessM, double outerDiameterM, double holeDiameterM) {

    public Layer {
        if (!(elasticModulusPa > 0 && elasticModulusPa < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("modulus of elasticity must be positive and finite");
        }
        if (!(thicknessM > 0 && thicknessM < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("layer thickness must be positive and finite");
        }
        if (!(holeDiameterM >= 0)) {
            throw new IllegalArgumentException("hole diameter must not be negative");
        }
        if (!(outerDiameterM > holeDiameterM)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "a layer of %.4g mm outer diameter cannot hold a hole of %.4g mm",
                    outerDiameterM * 1e3,
                    holeDiameterM * 1e3));
        }
    }

    public static Layer of(Material material, double thicknessM, double outerDiameterM, double holeDiameterM) {
        return new Layer(material.elasticModulusPa(), thicknessM, outerDiameterM, holeDiameterM);
    }
}
