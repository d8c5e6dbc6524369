package org.shutoffbench.harness.statistics;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Factors k of two-sided tolerance intervals mean +- k s of a normal population.
 *
 * <p>With the stated confidence the interval holds at least the stated content of the population.
 */
public enum ToleranceFactor {
    /** By numerical integration over the mean's error (sources: Eberhardt1989, NIST-Handbook 7.2.6.3). */
    EXACT {
        @Override
        public double twoSided(long n, double content, double confidence) {
            check(n, content, confidence);
            return new ExactFactor(n, content).forConfidence(confidence);
        }
    },
    /** Howe's closed form: a little short for small samples (source: NIST-Handbook 7.2.6.3). */
    HOWE {
        @Override
        public double twoSided(long n, double content, double confidence) {
            check(n, content, confidence);
            double z = StandardNormal.twoSided(content);
            double chiSquare = ChiSquaredDistribution.of(n - 1.0).inverseCumulativeProbability(1 - confidence);
            return z * Math.sqrt((n - 1.0) * (1 + 1.0 / n) / chiSquare);
        }
    };

    /**
     * The factor for a sample.
     *
     * @param n sample size, at least 2
     * @param content share of the population, in (0, 1)
     * @param confidence in (0, 1)
     */
    public abstract double twoSided(long n, double content, double confidence);

    /** The factor of the one-sided interval mean + k s, exact by the noncentral t. */
    public static double oneSided(long n, double content, double confidence) {
        check(n, content, confidence);
        double root = Math.sqrt((double) n);
        return NoncentralT.of(n - 1.0, StandardNormal.quantile(content) * root).quantile(confidence) / root;
    }

    private static void check(long n, double content, double confidence) {
        Levels.atLeast(n, 2, "n");
        Levels.probability(content, "content");
        Levels.probability(confidence, "confidence");
    }

    /** P(S &gt;= r(Z / sqrt n) / k) = confidence, r the half width that holds the content off centre. */
    private static final class ExactFactor {

        private static final double REACH = 9;
        private static final double[] EDGES = {0, 0.5, 1, 1.5, 2, 3, 4, 5, 7, REACH};

        private final ChiSquaredDistribution chiSquare;
        private final double nu;
        private final double root;
        private final double content;
        private final double start;

        ExactFactor(long n, double content) {
            this.nu = n - 1.0;
            this.chiSquare = ChiSquaredDistribution.of(nu);
            this.root = Math.sqrt((double) n);
            this.content = content;
            this.start = StandardNormal.twoSided(content);
        }

        double forConfidence(double confidence) {
            double low = start / 16;
            double high = 2 * start;
            while (confidenceOf(low) > confidence) {
                low /= 2;
            }
            while (confidenceOf(high) < confidence) {
                high *= 2;
            }
            return new BrentSolver(1e-12, 1e-12).solve(500, k -> confidenceOf(k) - confidence, low, high);
        }

        private double confidenceOf(double k) {
            return Quadrature.over(EDGES, z -> 2 * StandardNormal.density(z) * scaleReaches(halfWidth(z / root) / k));
        }

        private double scaleReaches(double ratio) {
            return chiSquare.survivalProbability(nu * ratio * ratio);
        }

        /** r with Phi(x + r) - Phi(x - r) = content, by Newton's method from outside. */
        private double halfWidth(double x) {
            double r = x + start;
            for (int i = 0; i < 60; i++) {
                double excess = (StandardNormal.survival(x - r) - StandardNormal.survival(x + r)) - content;
                double step = excess / (StandardNormal.density(x + r) + StandardNormal.density(x - r));
                r -= step;
                if (Math.abs(step) < 1e-14 * r) {
                    break;
                }
            }
            return r;
        }
    }
}
