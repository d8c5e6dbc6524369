package org.shutoffbench.harness.statistics;

/** Capability of a process against a window: what is printed, and the normal-theory bound it is checked with. */
public final class CapabilityIndex {

    private CapabilityIndex() {}

    /** Window over the span from the 0.135 to the 99.865 % point (source: ISO-22514-2). */
    public static double spread(double lowest, double highest, double low, double high) {
        return (highest - lowest) / (high - low);
    }

    /** The smaller of the two one-sided ratios from the median (source: ISO-22514-2). */
    public static double worstSide(double lowest, double highest, double low, double median, double high) {
        return Math.min((highest - median) / (high - median), (median - lowest) / (median - low));
    }

    /**
     * Bissell's lower confidence bound of C_pk of a normal population (source: Bissell1990).
     *
     * @param cpk estimate from mean and standard deviation
     * @param n sample size, at least 2
     * @param confidence one-sided, in (0, 1)
     */
    public static double bissellLowerBound(double cpk, long n, double confidence) {
        Levels.atLeast(n, 2, "n");
        Levels.probability(confidence, "confidence");
        double variance = 1 / (9.0 * n) + cpk * cpk / (2 * (n - 1.0));
        return cpk - StandardNormal.quantile(confidence) * Math.sqrt(variance);
    }
}
