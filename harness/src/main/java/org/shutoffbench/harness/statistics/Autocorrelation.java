package org.shutoffbench.harness.statistics;

/** Correlation of neighbours in a series. */
public final class Autocorrelation {

    private Autocorrelation() {}

    /**
     * Lag-1 autocorrelation; missing values (NaN) break the series and count in no pair.
     *
     * @return -1 to 1, NaN where nothing varies or no pair is complete
     */
    public static double lag1(double[] series) {
        double mean = mean(series);
        double squares = 0;
        double products = 0;
        int pairs = 0;
        for (int i = 0; i < series.length; i++) {
            if (Double.isNaN(series[i])) {
                continue;
            }
            squares += (series[i] - mean) * (series[i] - mean);
            if (i > 0 && !Double.isNaN(series[i - 1])) {
                products += (series[i] - mean) * (series[i - 1] - mean);
                pairs++;
            }
        }
        return pairs == 0 || squares == 0 ? Double.NaN : products / squares;
    }

    /** Mean of what is there, summed as deviations from the first value: large values that differ little keep their digits. */
    private static double mean(double[] series) {
        double first = Double.NaN;
        double sum = 0;
        int n = 0;
        for (double value : series) {
            if (!Double.isNaN(value)) {
                first = n == 0 ? value : first;
                sum += value - first;
                n++;
            }
        }
        return first + sum / n;
    }
}
