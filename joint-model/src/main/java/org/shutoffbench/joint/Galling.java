package org.shutoffbench.joint;

/**
 * Galling: thread friction is multiplied by a factor once the nut has passed an angle, and stays so.
 *
 * @param fromAngleRad nut angle from where the tool starts, rad; infinite for none
 * @param frictionFactor factor on mu_th, at least 1
 */
public record Galling(double fromAngleRad, double frictionFactor) {

    public static final Galling NONE = new Galling(Double.POSITIVE_INFINITY, 1);

    public Galling {
        if (Double.isNaN(fromAngleRad) || !(frictionFactor >= 1 && frictionFactor < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("galling needs an angle and a finite factor of at least 1");
        }
    }
}
