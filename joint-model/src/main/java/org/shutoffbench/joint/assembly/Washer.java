package org.shutoffbench.joint.assembly;

import org.shutoffbench.joint.stiffness.Layer;
import org.shutoffbench.joint.stiffness.Material;

/**
 * A flat washer; it counts as a layer of its own width.
 *
 * @param thicknessM m; positive
 * @param outerDiameterM m
 * @param holeDiameterM m
 * @param material what it is made of
 */
public record Washer(double thicknessM, double outerDiameterM, double holeDiameterM, Material material) {

    /** Outer diameter and thickness of a normal washer over d, close to ISO 7089 (assumed; M12 there is 24 by 2.5 mm). */
    private static final double OUTER_PER_DIAMETER = 2.0;

    private static final double THICKNESS_PER_DIAMETER = 0.2;
    private static final double HOLE_PER_DIAMETER = 1.08;

    /** A normal steel washer for a thread diameter. */
    public static Washer normal(double threadDiameterM) {
        return new Washer(
                THICKNESS_PER_DIAMETER * threadDiameterM,
                OUTER_PER_DIAMETER * threadDiameterM,
                HOLE_PER_DIAMETER * threadDiameterM,
                Material.STEEL);
    }

    Layer asLayer() {
        return Layer.of(material, thicknessM, outerDiameterM, holeDiameterM);
    }
}
