package org.shutoffbench.draw;

/**
 * Lognormal distribution by its median and the standard deviation of its logarithm.
 *
 * @param median median; positive and finite
 * @param sigma standard deviation of the natural logarithm; not negative
 */
public record Lognormal(double median, double sigma) implements Distribution {

    public Lognormal {
        if (!(median > 0 && median < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("median must be positive and finite");
        }
        Finite.requireNotNegative(sigma, "sigma");
    }

    /** By median and coefficient of variation: sigma = sqrt(ln(1 + cv^2)). */
    public static Lognormal ofCv(double median, double cv) {
        Finite.requireNotNegative(cv, "cv");
        return new Lognormal(median, Math.sqrt(StrictMath.log1p(cv * cv)));
    }

    @Override
    public double quantile(double uniform) {
        return median * StrictMath.exp(sigma * NormalQuantile.at(uniform));
    }
}
