package org.shutoffbench.harness.statistics;

import org.apache.commons.numbers.gamma.LogBeta;

/**
 * Intervals of a rate that hold at all sample sizes together, however the run is stopped: those rates whose likelihood is
 * not beaten 1/alpha times by the mixture over a uniform prior (sources: Robbins1970, Howard2021).
 */
public final class ConfidenceSequence {

    private ConfidenceSequence() {}

    /**
     * The interval after n trials.
     *
     * @param count successes
     * @param n trials, at least 1
     * @param confidence that no interval of the sequence misses the rate
     */
    public static Interval of(long count, long n, double confidence) {
        Levels.probability(confidence, "confidence");
        Levels.atLeast(n, 1, "n");
        Levels.atLeast(count, 0, "count");
        Levels.atLeast(n - count, 0, "n - count");
        double estimate = (double) count / n;
        double limit = LogBeta.value(count + 1.0, n - count + 1.0) + Math.log(1 - confidence);
        double low = count == 0 ? 0 : edge(count, n, limit, 0, estimate);
        double high = count == n ? 1 : edge(count, n, limit, 1, estimate);
        return new Interval(low, high);
    }

    /** Where the log likelihood falls to the limit between an excluded and an included rate. */
    private static double edge(long count, long n, double limit, double excluded, double included) {
        double outside = excluded;
        double inside = included;
        for (int i = 0; i < 64; i++) {
            double middle = (outside + inside) / 2;
            if (logLikelihood(count, n, middle) > limit) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return outside;
    }

    private static double logLikelihood(long count, long n, double rate) {
        return term(count, rate) + term(n - count, 1 - rate);
    }

    private static double term(long count, double rate) {
        return count == 0 ? 0 : count * Math.log(rate);
    }
}
