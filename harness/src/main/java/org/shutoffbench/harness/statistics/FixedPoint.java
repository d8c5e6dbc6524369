package org.shutoffbench.harness.statistics;

/**
 * Values as whole multiples of a small step, so that sums of them are exact.
 *
 * @param perUnit steps in one unit of the quantity, such as 1e6; above 0
 */
public record FixedPoint(double perUnit) {

    private static final double GREATEST = 1L << 52;

    public FixedPoint {
        if (!(perUnit > 0 && Double.isFinite(perUnit))) {
            throw new IllegalArgumentException("a number of steps above 0 is needed, not " + perUnit);
        }
    }

    /**
     * The nearest multiple.
     *
     * @throws IllegalArgumentException if the value is not finite or beyond 2^52 steps
     */
    public long steps(double value) {
        double steps = Math.rint(value * perUnit);
        if (!(Math.abs(steps) <= GREATEST)) {
            throw new IllegalArgumentException(value + " is out of range");
        }
        return (long) steps;
    }

    /** The value of a number of steps. */
    public double value(double steps) {
        return steps / perUnit;
    }

    /** The value of a whole number of steps. */
    public double value(long steps) {
        return value((double) steps);
    }

    /** The value as it is counted. */
    public double rounded(double value) {
        return value(steps(value));
    }
}
