package org.shutoffbench.joint.assembly;

/**
 * Turn-of-nut rule of structural bolting: rotation from snug by bolt length, both faces flat (source key {@code RCSC-2014},
 * table 8.2).
 */
public enum TurnOfNut {
    THIRD(4, 1.0 / 3, 30),
    HALF(8, 1.0 / 2, 30),
    TWO_THIRDS(12, 2.0 / 3, 45);

    private final int longestInDiameters;
    private final double turns;
    private final double toleranceDeg;

    TurnOfNut(int longestInDiameters, double turns, double toleranceDeg) {
        this.longestInDiameters = longestInDiameters;
        this.turns = turns;
        this.toleranceDeg = toleranceDeg;
    }

    /**
     * The rotation for a bolt.
     *
     * @throws IllegalArgumentException above 12 diameters, where the rule asks for a test
     */
    public static TurnOfNut of(double boltLengthM, double diameterM) {
        for (TurnOfNut rule : values()) {
            if (boltLengthM <= rule.longestInDiameters * diameterM * (1 + 1e-9)) {
                return rule;
            }
        }
        throw new IllegalArgumentException("the turn-of-nut rule ends at a bolt length of 12 diameters");
    }

    /** Rotation from snug, rad. */
    public double rotationRad() {
        return turns * 2 * Math.PI;
    }

    public double turns() {
        return turns;
    }

    /** Tolerance of the rotation to either side, rad. */
    public double toleranceRad() {
        return Math.toRadians(toleranceDeg);
    }
}
