package org.shutoffbench.harness.statistics;

/**
 * Scatter of a tool on a hard and on a soft joint together, in ISO 5393 style.
 *
 * <p>Each joint spans mean +- k standard deviations. The combined mean is the middle of the range that both spans cover,
 * the combined scatter that range over the combined mean, the shift the difference of the means over the combined mean.
 * The standard excludes impact tools; see {@code docs/statistics.md}.
 *
 * @param hardScatterPercent 2 k s over the mean of the hard joint; NaN where the mean is 0
 * @param softScatterPercent the same of the soft joint
 * @param meanShiftPercent hard mean less soft mean over the combined mean; NaN where that is 0
 * @param combinedMean middle of the combined range
 * @param combinedScatterPercent combined range over the combined mean; NaN where that is 0
 */
public record TorqueRateFigures(
        double hardScatterPercent,
        double softScatterPercent,
        double meanShiftPercent,
        double combinedMean,
        double combinedScatterPercent) {

    /**
     * The figures of two joints.
     *
     * @param sigmas standard deviations on each side that count as scatter, 3 by custom
     */
    public static TorqueRateFigures of(
            double hardMean, double hardDeviation, double softMean, double softDeviation, double sigmas) {
        double highest = Math.max(hardMean + sigmas * hardDeviation, softMean + sigmas * softDeviation);
        double lowest = Math.min(hardMean - sigmas * hardDeviation, softMean - sigmas * softDeviation);
        double middle = (highest + lowest) / 2;
        return new TorqueRateFigures(
                percent(2 * sigmas * hardDeviation, hardMean),
                percent(2 * sigmas * softDeviation, softMean),
                percent(hardMean - softMean, middle),
                middle,
                percent(highest - lowest, middle));
    }

    private static double percent(double part, double whole) {
        return whole == 0 ? Double.NaN : 100 * part / whole;
    }
}
