package org.shutoffbench.harness.statistics;

import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * The order statistics that bound a percentage point of any continuous population (source: David2003).
 *
 * @param lower rank of the lower bound, from 1; 0 where the sample leaves it open
 * @param upper rank of the upper bound; n + 1 where the sample leaves it open
 */
public record QuantileRanks(long lower, long upper) {

    /**
     * Ranks that leave at most (1 - confidence)/2 outside on each side.
     *
     * @param n sample size, 1 to 2^31 - 1
     * @param p the point, in (0, 1)
     * @param confidence in (0, 1)
     */
    public static QuantileRanks of(long n, double p, double confidence) {
        Levels.atLeast(n, 1, "n");
        Levels.probability(p, "p");
        Levels.probability(confidence, "confidence");
        double tail = (1 - confidence) / 2;
        BinomialDistribution below = BinomialDistribution.of(Math.toIntExact(n), p);
        int lower = below.inverseCumulativeProbability(tail);
        if (below.cumulativeProbability(lower) <= tail) {
            lower++;
        }
        long upper = below.inverseSurvivalProbability(tail) + 1L;
        return new QuantileRanks(lower, upper);
    }

    /**
     * The ranks in a sample of joints that hang together: those of a smaller sample of independent joints at the same place,
     * rounded outwards.
     *
     * @param worth size of the sample that these ranks are of
     * @param n size of the sample that is there, at least worth
     * @return a rank of 0 and n + 1 where an end stays open
     */
    public QuantileRanks stretched(long worth, long n) {
        double scale = (double) n / worth;
        long fromBottom = (long) Math.floor(lower * scale);
        long fromTop = (long) Math.floor((worth + 1 - upper) * scale);
        return new QuantileRanks(fromBottom, n + 1 - fromTop);
    }
}
