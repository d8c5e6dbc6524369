package org.shutoffbench.harness.statistics;

import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Estimates from joints that come in clusters (few lots, few tools): joints of one cluster are not independent.
 *
 * <p>The variance is that of cluster totals about the common rate (ratio estimator), few clusters counted by Student's law
 * with clusters less one degrees of freedom. A rate gets its interval on the scale of the log odds (sources: Korn1999,
 * DeanPagano2015); where all or none succeeded, Wilson's of as many joints as there are clusters (source: Korn1998).
 *
 * @param estimate rate or mean
 * @param interval with the confidence asked for
 * @param designEffect variance over that of as many independent joints; at least 1 for rates
 */
public record ClusterInterval(double estimate, Interval interval, double designEffect) {

    /**
     * Counts of few clusters may be equal by chance; the variance of a rate is not taken for less than this share of that of
     * independent joints. Without it two clusters cover 81 % at the least, with it 95 % (docs/validation.md).
     */
    private static final double LEAST_SHARE = 0.5;

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
        double student = student(totals.clusters - 1.0, confidence);
        if (totals.sum == 0 || totals.sum == n) {
            // Nothing varied, so nothing is known of the spread between clusters: each counts once.
            double ratio = student(n - 1, confidence) / student;
            return new ClusterInterval(
                    rate, wilson(rate, totals.clusters * ratio * ratio, confidence), n / totals.clusters);
        }
        double ofOneJoint = rate * (1 - rate);
        double reach = Math.max(
                student * Math.sqrt(totals.variance()),
                StandardNormal.twoSided(confidence) * Math.sqrt(LEAST_SHARE * ofOneJoint / n));
        double designEffect = Math.max(1, totals.variance() / (ofOneJoint / (n - 1)));
        return new ClusterInterval(rate, onLogOdds(rate, reach / ofOneJoint), designEffect);
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

    private static Interval onLogOdds(double rate, double reach) {
        double logOdds = Math.log(rate / (1 - rate));
        return new Interval(1 / (1 + Math.exp(reach - logOdds)), 1 / (1 + Math.exp(-reach - logOdds)));
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
