package org.shutoffbench.harness.statistics;

import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Estimates from joints that come in clusters (few lots, few tools): joints of one cluster are not independent.
 *
 * <p>The variance is that of cluster totals about the common rate (ratio estimator). A rate gets Wilson's interval of as
 * many independent joints as the clusters are worth, few clusters counted by Student's law (sources: Korn1998, Franco2019); a
 * mean gets Student's with clusters less one degrees of freedom.
 *
 * @param estimate rate or mean
 * @param interval with the confidence asked for
 * @param designEffect variance over that of as many independent joints; at least 1 for rates
 */
public record ClusterInterval(double estimate, Interval interval, double designEffect) {

    /**
     * The interval of a rate.
     *
     * @param counts successes by cluster
     * @param sizes joints by cluster, same length; empty clusters are skipped
     * @param confidence in (0, 1)
     */
    public static ClusterInterval ofRate(long[] counts, long[] sizes, double confidence) {
        Levels.probability(confidence, "confidence");
        Totals totals = Totals.of(counts, sizes);
        double n = totals.size;
        double rate = totals.sum / n;
        if (totals.clusters < 2) {
            return new ClusterInterval(rate, new Interval(0, 1), n);
        }
        double designEffect;
        if (totals.sum == 0 || totals.sum == n) {
            // Nothing varied, so nothing is known of the spread between clusters: each counts once.
            designEffect = n / totals.clusters;
        } else {
            designEffect = Math.max(1, totals.variance() / (rate * (1 - rate) / (n - 1)));
        }
        double ratio = student(n - 1, confidence) / student(totals.clusters - 1.0, confidence);
        double worth = Math.min(n, n / designEffect * ratio * ratio);
        return new ClusterInterval(rate, wilson(rate, worth, confidence), designEffect);
    }

    /**
     * The interval of a mean.
     *
     * @param sums sum of the values by cluster
     * @param sizes joints by cluster
     * @param variance of single joints; where it is 0 the design effect is 1
     */
    public static ClusterInterval ofMean(double[] sums, long[] sizes, double variance, double confidence) {
        Levels.probability(confidence, "confidence");
        Totals totals = Totals.of(sums, sizes);
        double mean = totals.sum / totals.size;
        if (totals.clusters < 2) {
            return new ClusterInterval(
                    mean, new Interval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY), totals.size);
        }
        double ofMean = totals.variance();
        double reach = student(totals.clusters - 1.0, confidence) * Math.sqrt(ofMean);
        double designEffect = variance > 0 ? ofMean * totals.size / variance : 1;
        return new ClusterInterval(mean, new Interval(mean - reach, mean + reach), designEffect);
    }

    private static double student(double degreesOfFreedom, double confidence) {
        return TDistribution.of(degreesOfFreedom).inverseSurvivalProbability((1 - confidence) / 2);
    }

    /** Wilson's interval of a sample whose size need not be whole. */
    private static Interval wilson(double rate, double n, double confidence) {
        double z = StandardNormal.twoSided(confidence);
        double pull = z * z / n;
        double centre = (rate + pull / 2) / (1 + pull);
        double reach = z * Math.sqrt(rate * (1 - rate) / n + pull / (4 * n)) / (1 + pull);
        return new Interval(rate <= 0 ? 0 : Math.max(0, centre - reach), rate >= 1 ? 1 : Math.min(1, centre + reach));
    }

    /** Sums over clusters. */
    private static final class Totals {
        private int clusters;
        private double size;
        private double sum;
        private double residualSquares;

        static Totals of(long[] sums, long[] sizes) {
            double[] asDouble = new double[sums.length];
            for (int i = 0; i < sums.length; i++) {
                asDouble[i] = (double) sums[i];
            }
            return of(asDouble, sizes);
        }

        static Totals of(double[] sums, long[] sizes) {
            Totals totals = new Totals();
            for (int i = 0; i < sums.length; i++) {
                if (sizes[i] > 0) {
                    totals.add(sums[i], (double) sizes[i]);
                }
            }
            if (totals.clusters == 0) {
                throw new IllegalArgumentException("no cluster holds a joint");
            }
            double ratio = totals.sum / totals.size;
            for (int i = 0; i < sums.length; i++) {
                double residual = sums[i] - ratio * (double) sizes[i];
                totals.residualSquares += residual * residual;
            }
            return totals;
        }

        private void add(double clusterSum, double clusterSize) {
            clusters++;
            size += clusterSize;
            sum += clusterSum;
        }

        double variance() {
            return clusters / (clusters - 1.0) * residualSquares / (size * size);
        }
    }
}
