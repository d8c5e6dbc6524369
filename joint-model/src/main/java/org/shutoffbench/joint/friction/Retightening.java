package org.shutoffbench.joint.friction;

/**
 * How friction changes when the same joint is tightened again: a factor per tightening, up to a limit.
 *
 * @param factorPerRepeat factor on the coefficients for each earlier tightening; positive
 * @param limitFactor factor that is never passed: at least 1 where friction grows, at most 1 where it falls
 */
public record Retightening(double factorPerRepeat, double limitFactor) {

    /** Nothing changes. */
    public static final Retightening NONE = new Retightening(1, 1);

    public Retightening {
        if (!(factorPerRepeat > 0 && factorPerRepeat < Double.POSITIVE_INFINITY)
                || !(limitFactor > 0 && limitFactor < Double.POSITIVE_INFINITY)
                || (factorPerRepeat - 1) * (limitFactor - 1) < 0) {
            throw new IllegalArgumentException("factors must be positive and lie on the same side of 1");
        }
    }

    /**
     * Factor on the friction of a tightening.
     *
     * @param repeat number of earlier tightenings; not negative
     */
    public double factor(int repeat) {
        if (repeat < 0) {
            throw new IllegalArgumentException("repeat must not be negative");
        }
        double factor = Math.pow(factorPerRepeat, repeat);
        return factorPerRepeat > 1 ? Math.min(factor, limitFactor) : Math.max(factor, limitFactor);
    }
}
