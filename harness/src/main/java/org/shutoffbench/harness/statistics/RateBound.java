package org.shutoffbench.harness.statistics;

import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * One-sided exact bounds of a rate (source: Clopper1934). Counts need not be whole, so that joints may enter with a weight;
 * whole counts give the exact bound.
 */
public final class RateBound {

    private static final double MOST = 1e12;

    private RateBound() {}

    /**
     * The rate is below this, with the stated confidence.
     *
     * @param count successes, 0 to n
     * @param n trials, above 0
     * @param confidence in (0, 1)
     */
    public static double upper(double count, double n, double confidence) {
        check(count, n, confidence);
        return count >= n ? 1 : BetaDistribution.of(count + 1, n - count).inverseCumulativeProbability(confidence);
    }

    /** The rate is above this, with the stated confidence. */
    public static double lower(double count, double n, double confidence) {
        check(count, n, confidence);
        return count <= 0 ? 0 : BetaDistribution.of(count, n - count + 1).inverseCumulativeProbability(1 - confidence);
    }

    /**
     * How many more trials at the rate seen so far would settle on which side of a limit the rate lies.
     *
     * @return 0 where it is settled; -1 where no sane number would, because rate and limit agree
     */
    public static long moreToSettle(long count, long n, double limit, double confidence) {
        double rate = (double) count / n;
        if (settled((double) count, (double) n, limit, confidence)) {
            return 0;
        }
        double low = n;
        double high = 2.0 * n;
        while (!settled(Math.rint(rate * high), high, limit, confidence)) {
            low = high;
            high *= 2;
            if (high > MOST) {
                return -1;
            }
        }
        while (high - low > 1) {
            double middle = Math.floor((low + high) / 2);
            if (settled(Math.rint(rate * middle), middle, limit, confidence)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return (long) high - n;
    }

    private static boolean settled(double count, double n, double limit, double confidence) {
        return upper(count, n, confidence) <= limit || lower(count, n, confidence) > limit;
    }

    private static void check(double count, double n, double confidence) {
        Levels.probability(confidence, "confidence");
        if (!(n > 0) || !(count >= 0 && count <= n)) {
            throw new IllegalArgumentException("0 <= count <= n and n > 0 are needed, not " + count + " of " + n);
        }
    }
}
