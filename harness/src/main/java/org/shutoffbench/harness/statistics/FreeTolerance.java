package org.shutoffbench.harness.statistics;

import org.apache.commons.statistics.distribution.BinomialDistribution;

/** Distribution-free tolerance intervals between order statistics (source: Wilks1941). */
public final class FreeTolerance {

    private FreeTolerance() {}

    /**
     * How many of the outermost values may be cut, both ends together, so that the rest still spans the content with the
     * confidence; 0 where even the whole sample does not.
     *
     * <p>The span between order statistics r and s holds content with probability P(Binomial(n, content) &lt;= s - r - 1).
     *
     * @return m = n + 1 - (s - r), at least 2 for a two-sided interval to exist (1 for a one-sided one)
     */
    public static long blocksCut(long n, double content, double confidence) {
        Levels.atLeast(n, 1, "n");
        Levels.probability(content, "content");
        Levels.probability(confidence, "confidence");
        // P(Binomial(n, 1 - content) >= m) >= confidence, m as great as possible.
        BinomialDistribution outside = BinomialDistribution.of(Math.toIntExact(n), 1 - content);
        int m = outside.inverseCumulativeProbability(1 - confidence);
        return outside.cumulativeProbability(m) <= 1 - confidence ? m + 1L : m;
    }

    /** Least sample size for which the sample's own ends serve: {@code sides} is 1 or 2. */
    public static long leastSample(int sides, double content, double confidence) {
        if (sides != 1 && sides != 2) {
            throw new IllegalArgumentException("an interval has one or two sides, not " + sides);
        }
        Levels.probability(content, "content");
        Levels.probability(confidence, "confidence");
        long low = 0;
        long high = 2;
        while (blocksCut(high, content, confidence) < sides) {
            low = high;
            high *= 2;
        }
        while (high - low > 1) {
            long middle = (low + high) / 2;
            if (blocksCut(middle, content, confidence) < sides) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** Trials without a failure that show a reliability at a confidence: the success run. */
    public static long successRun(double reliability, double confidence) {
        return leastSample(1, reliability, confidence);
    }

    /**
     * Ranks of the two-sided interval, the cut shared evenly (the upper end takes the odd one).
     *
     * @return ranks from 1 to n; a rank of 0 and n + 1 where the sample is too small
     */
    public static QuantileRanks ranks(long n, double content, double confidence) {
        long cut = blocksCut(n, content, confidence);
        if (cut < 2) {
            return new QuantileRanks(0, n + 1);
        }
        long lower = cut / 2;
        return new QuantileRanks(lower, n + 1 - (cut - lower));
    }
}
