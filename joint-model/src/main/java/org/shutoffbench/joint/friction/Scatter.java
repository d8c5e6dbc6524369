package org.shutoffbench.joint.friction;

/**
 * A lognormal quantity that scatters at three levels, each drawn on its own: the value is the median times one lognormal
 * factor per level. CV is standard deviation over mean of a level's factor, sigma^2 = ln(1 + CV^2).
 *
 * @param median positive
 * @param lotCv between lots: coating, lubricant; not negative
 * @param pieceCv between pieces of a lot; not negative
 * @param repeatCv between tightenings of one piece; not negative
 */
public record Scatter(double median, double lotCv, double pieceCv, double repeatCv) {

    public Scatter {
        if (!(median > 0 && median < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("median must be positive and finite");
        }
        if (!(lotCv >= 0 && lotCv < 10) || !(pieceCv >= 0 && pieceCv < 10) || !(repeatCv >= 0 && repeatCv < 10)) {
            throw new IllegalArgumentException("coefficients of variation must not be negative nor above 10");
        }
    }

    /** Always the same. */
    public static Scatter none(double value) {
        return new Scatter(value, 0, 0, 0);
    }

    /** Standard deviation of the logarithm of a factor with a coefficient of variation. */
    public static double sigma(double cv) {
        return Math.sqrt(Math.log1p(cv * cv));
    }

    /** Coefficient of variation of a lognormal factor with a standard deviation of its logarithm. */
    public static double cv(double sigma) {
        return Math.sqrt(Math.expm1(sigma * sigma));
    }

    /** Standard deviation of the logarithm, all levels together. */
    public double totalSigma() {
        return Math.sqrt(Math.log1p(lotCv * lotCv) + Math.log1p(pieceCv * pieceCv) + Math.log1p(repeatCv * repeatCv));
    }

    /** Coefficient of variation, all levels together. */
    public double totalCv() {
        return cv(totalSigma());
    }

    public double mean() {
        return median * Math.exp(totalSigma() * totalSigma() / 2);
    }

    /** The same scatter about another median. */
    public Scatter about(double otherMedian) {
        return new Scatter(otherMedian, lotCv, pieceCv, repeatCv);
    }
}
