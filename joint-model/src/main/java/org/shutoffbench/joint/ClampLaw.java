package org.shutoffbench.joint;

/**
 * Elastic clamp force over nut angle: nothing before snug, a parabola over the seating width, then a straight line;
 * continuous with its slope.
 *
 * @param forcePerAngleNPerRad clamp force per nut angle k_F = k_J P/(2 pi), N/rad; positive
 * @param snugAngleRad nut angle at which parts touch, from where the tool starts, rad
 * @param seatingWidthRad x_a, angle over which uneven parts come to bear, rad; not negative
 */
public record ClampLaw(double forcePerAngleNPerRad, double snugAngleRad, double seatingWidthRad) {

    public ClampLaw {
        if (!(forcePerAngleNPerRad > 0 && forcePerAngleNPerRad < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("clamp force per angle must be positive and finite");
        }
        if (!(Math.abs(snugAngleRad) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("snug angle must be finite");
        }
        if (!(seatingWidthRad >= 0 && seatingWidthRad < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("seating width must be finite and not negative");
        }
    }

    /** Elastic clamp force in N at a nut angle past snug (less any plastic angle), rad. */
    public double forceN(double pastSnugRad) {
        if (pastSnugRad <= 0) {
            return 0;
        }
        if (pastSnugRad < seatingWidthRad) {
            return forcePerAngleNPerRad * pastSnugRad * pastSnugRad / (2 * seatingWidthRad);
        }
        return forcePerAngleNPerRad * (pastSnugRad - seatingWidthRad / 2);
    }

    /** Nut angle past snug in rad at which the elastic clamp force is reached; 0 for a force of 0 or less. */
    public double angleForForceRad(double forceN) {
        if (forceN <= 0) {
            return 0;
        }
        double atSeatingEndN = forcePerAngleNPerRad * seatingWidthRad / 2;
        return forceN < atSeatingEndN
                ? Math.sqrt(2 * seatingWidthRad * forceN / forcePerAngleNPerRad)
                : forceN / forcePerAngleNPerRad + seatingWidthRad / 2;
    }
}
