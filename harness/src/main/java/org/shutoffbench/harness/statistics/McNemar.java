package org.shutoffbench.harness.statistics;

import org.apache.commons.statistics.distribution.BinomialDistribution;

/** McNemar's test: do two strategies fail equally often on the same joints? (source: McNemar1947, Fagerland2013) */
public enum McNemar {
    /** Exact conditional test: never rejects more often than it says. */
    EXACT {
        @Override
        public double p(long onlyFirst, long onlySecond) {
            BinomialDistribution fair = fair(onlyFirst, onlySecond);
            return Math.min(1, 2 * fair.cumulativeProbability((int) Math.min(onlyFirst, onlySecond)));
        }
    },
    /** Half of the probability of what was seen is left out: closer to the level it says, may exceed it slightly. */
    MID_P {
        @Override
        public double p(long onlyFirst, long onlySecond) {
            BinomialDistribution fair = fair(onlyFirst, onlySecond);
            int least = (int) Math.min(onlyFirst, onlySecond);
            double p = 2 * fair.cumulativeProbability(least) - fair.probability(least);
            return Math.min(1, p);
        }
    };

    /**
     * Two-sided p value.
     *
     * @param onlyFirst joints where the first alone succeeded
     * @param onlySecond joints where the second alone succeeded
     */
    public abstract double p(long onlyFirst, long onlySecond);

    private static BinomialDistribution fair(long onlyFirst, long onlySecond) {
        Levels.atLeast(onlyFirst, 0, "onlyFirst");
        Levels.atLeast(onlySecond, 0, "onlySecond");
        return BinomialDistribution.of(Math.toIntExact(onlyFirst + onlySecond), 0.5);
    }
}
