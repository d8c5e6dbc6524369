package org.shutoffbench.draw;

/**
 * Normal distribution cut at 4 standard deviations on both sides and scaled up to probability 1 again. The cut takes 6.3e-5
 * of the probability and 0.1 % off the variance.
 *
 * @param mean mean; finite
 * @param standardDeviation standard deviation before the cut; not negative
 */
public record CutNormal(double mean, double standardDeviation) implements Distribution {

    /** Where the distribution is cut, in standard deviations from the mean. */
    public static final double CUT = 4;

    /** Probability of a standard normal beyond 4 on one side (correctly rounded; computed with 40 digits). */
    private static final double BEYOND = 3.167124183311992e-5;

    public CutNormal {
        Finite.require(mean, "mean");
        Finite.requireNotNegative(standardDeviation, "standard deviation");
    }

    /** By mean and coefficient of variation (standard deviation over the mean's size). */
    public static CutNormal ofCv(double mean, double cv) {
        return new CutNormal(mean, Math.abs(mean) * cv);
    }

    @Override
    public double quantile(double uniform) {
        return mean + standardDeviation * standardQuantile(uniform);
    }

    /** Quantile of the cut standard normal; taken from the nearer end, so that it is symmetric. */
    private static double standardQuantile(double uniform) {
        return uniform < 0.5 ? lowerQuantile(uniform) : -lowerQuantile(1 - uniform);
    }

    private static double lowerQuantile(double uniform) {
        return Math.max(-CUT, NormalQuantile.at(BEYOND + uniform * (1 - 2 * BEYOND)));
    }
}
