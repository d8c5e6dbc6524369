package org.shutoffbench.joint;

/**
 * What happens above the yield limit of the bolt: the slope falls, the excess is plastic and stays, and the bolt breaks
 * when the plastic angle exceeds its limit.
 *
 * @param yieldForceN F_y under combined tension and torsion, N; infinite where yield is off
 * @param slopeRatio k_y, slope above yield over elastic slope, in (0, 1)
 * @param fractureAngleRad plastic nut angle at which the bolt breaks, rad
 */
public record Yielding(double yieldForceN, double slopeRatio, double fractureAngleRad) {

    /** Slope above yield over elastic slope (assumed, not measured). */
    public static final double ASSUMED_SLOPE_RATIO = 0.06;

    /** Plastic angle at fracture, 60 deg (assumed, not measured). */
    public static final double ASSUMED_FRACTURE_ANGLE_RAD = Math.PI / 3;

    /** A bolt that stays elastic at any force. */
    public static final Yielding OFF =
            new Yielding(Double.POSITIVE_INFINITY, ASSUMED_SLOPE_RATIO, ASSUMED_FRACTURE_ANGLE_RAD);

    public Yielding {
        if (!(yieldForceN > 0) || !(slopeRatio > 0 && slopeRatio < 1) || !(fractureAngleRad > 0)) {
            throw new IllegalArgumentException(
                    "yield force and fracture angle must be positive, the slope ratio between 0 and 1");
        }
    }

    public static Yielding at(double yieldForceN) {
        return new Yielding(yieldForceN, ASSUMED_SLOPE_RATIO, ASSUMED_FRACTURE_ANGLE_RAD);
    }
}
