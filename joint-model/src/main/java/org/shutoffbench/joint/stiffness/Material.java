package org.shutoffbench.joint.stiffness;

import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * Materials of bolts and parts by their modulus of elasticity at room temperature: round handbook values, from memory.
 *
 * <p>A part of another material is a {@link Layer} with its own modulus.
 */
public enum Material {
    STEEL("steel", 205e9),
    STAINLESS_STEEL("stainless steel", 195e9),
    CAST_IRON("cast iron", 110e9),
    DUCTILE_IRON("ductile iron", 170e9),
    ALUMINIUM("aluminium", 70e9),
    BRASS("brass", 105e9),
    COPPER("copper", 120e9),
    TITANIUM("titanium", 110e9),
    /** Pultruded, through the thickness. */
    GLASS_FIBRE_LAMINATE("glass fibre laminate", 9e9),
    /** Across the grain, dry; scatters widely. */
    HARDWOOD("hardwood", 0.9e9),
    POLYETHYLENE("polyethylene", 0.9e9);

    private final String title;
    private final double elasticModulusPa;

    Material(String title, double elasticModulusPa) {
        this.title = title;
        this.elasticModulusPa = elasticModulusPa;
    }

    /**
     * The material that a title names.
     *
     * @throws IllegalArgumentException with the titles allowed
     */
    public static Material named(String text) {
        return Arrays.stream(values())
                .filter(m -> m.title.equalsIgnoreCase(text.strip()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("\"" + text + "\" is no known material; known are "
                        + Arrays.stream(values()).map(Material::title).collect(Collectors.joining(", "))));
    }

    public String title() {
        return title;
    }

    /** E, Pa. */
    public double elasticModulusPa() {
        return elasticModulusPa;
    }
}
