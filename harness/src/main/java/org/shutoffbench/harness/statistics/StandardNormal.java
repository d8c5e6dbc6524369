package org.shutoffbench.harness.statistics;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** The standard normal law, accurate in both tails. */
public final class StandardNormal {

    private static final NormalDistribution LAW = NormalDistribution.of(0, 1);

    private StandardNormal() {}

    /** P(Z &lt;= z). */
    public static double cdf(double z) {
        return LAW.cumulativeProbability(z);
    }

    /** P(Z &gt; z). */
    public static double survival(double z) {
        return LAW.survivalProbability(z);
    }

    /** Density at z. */
    public static double density(double z) {
        return LAW.density(z);
    }

    /** The z with P(Z &lt;= z) = p, p in [0, 1]. */
    public static double quantile(double p) {
        return LAW.inverseCumulativeProbability(p);
    }

    /** The z with P(Z &gt; z) = p, p in [0, 1]. */
    public static double upperQuantile(double p) {
        return LAW.inverseSurvivalProbability(p);
    }

    /** The z that leaves (1 - confidence)/2 on each side. */
    public static double twoSided(double confidence) {
        return upperQuantile((1 - confidence) / 2);
    }
}
