package org.shutoffbench.harness.statistics;

/**
 * Interval of the difference of two rates on different joints: Wilson's intervals of both, put together by squares (method
 * 10 of source: Newcombe1998).
 */
public final class RateDifference {

    private RateDifference() {}

    /**
     * The two-sided interval of count1 / n1 - count2 / n2.
     *
     * @param count1 successes of the first, 0 to n1
     * @param n1 trials of the first, at least 1
     * @param count2 successes of the second, 0 to n2
     * @param n2 trials of the second, at least 1
     * @param confidence in (0, 1)
     */
    public static Interval of(long count1, long n1, long count2, long n2, double confidence) {
        Interval first = BinomialInterval.WILSON.of(count1, n1, confidence);
        Interval second = BinomialInterval.WILSON.of(count2, n2, confidence);
        double p1 = (double) count1 / n1;
        double p2 = (double) count2 / n2;
        return new Interval(
                p1 - p2 - StrictMath.hypot(p1 - first.low(), second.high() - p2),
                p1 - p2 + StrictMath.hypot(first.high() - p1, p2 - second.low()));
    }
}
