package org.shutoffbench.harness.statistics;

import org.apache.commons.statistics.interval.BinomialConfidenceInterval;

/** Intervals of a rate from a count of independent trials. */
public enum BinomialInterval {
    /** Exact: covers at least what it says for every rate (source: Clopper1934). */
    CLOPPER_PEARSON(BinomialConfidenceInterval.CLOPPER_PEARSON),
    /** Score interval: covers what it says on average (source: Wilson1927). */
    WILSON(BinomialConfidenceInterval.WILSON_SCORE);

    private final BinomialConfidenceInterval method;

    BinomialInterval(BinomialConfidenceInterval method) {
        this.method = method;
    }

    /**
     * The two-sided interval.
     *
     * @param count successes, 0 to n
     * @param n trials, 1 to 2^31 - 1
     * @param confidence in (0, 1)
     */
    public Interval of(long count, long n, double confidence) {
        Levels.probability(confidence, "confidence");
        Levels.atLeast(n, 1, "n");
        Levels.atLeast(count, 0, "count");
        Levels.atLeast(n - count, 0, "n - count");
        var interval = method.fromErrorRate(Math.toIntExact(n), Math.toIntExact(count), 1 - confidence);
        double low = count == 0 ? 0 : Math.max(0, interval.getLowerBound());
        double high = count == n ? 1 : Math.min(1, interval.getUpperBound());
        return new Interval(low, high);
    }
}
