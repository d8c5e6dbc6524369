package org.shutoffbench.harness.statistics;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.numbers.gamma.LogGamma;

/**
 * Acceptance sampling by variables, standard deviation unknown (the k method): measure n joints, accept where mean and
 * standard deviation keep every limit at least k standard deviations away (source: Schilling2009).
 *
 * <p>Exact for a normal population: with one limit by the noncentral t, with two by integrating over the law of the sample's
 * standard deviation. A failing share can be split over two limits in any way; both risks are held for the worst split.
 *
 * @param n sample size, at least 2
 * @param k acceptance constant
 * @param limits 1 or 2
 */
public record VariablesPlan(int n, double k, int limits) implements AcceptancePlan {

    private static final int MOST_JOINTS = 20_000;

    /** Shares of the failing joints beyond one of two limits that are tried for the worst. */
    private static final double[] SPLITS = {0.5, 0.6, 0.7, 0.8, 0.9, 0.97, 1};

    /** Panel edges round the middle of the scale's law, in its standard deviations. */
    private static final double[] EDGES = {-9, -6, -4, -3, -2, -1, 0, 1, 2, 3, 4, 6, 9, 14};

    public VariablesPlan {
        Levels.atLeast(n, 2, "n");
        if (limits != 1 && limits != 2) {
            throw new IllegalArgumentException("one or two limits, not " + limits);
        }
    }

    /** The plan of a given size that just holds the buyer's risk. */
    public static VariablesPlan protecting(int n, int limits, RiskPoint buyer) {
        double one = ToleranceFactor.oneSided(n, 1 - buyer.failing(), 1 - buyer.risk());
        if (limits == 1) {
            return new VariablesPlan(n, one, 1);
        }
        double both = ToleranceFactor.oneSided(n, 1 - buyer.failing() / 2, 1 - buyer.risk());
        double k = new BrentSolver(1e-10, 1e-10)
                .solve(
                        200,
                        tried -> new VariablesPlan(n, tried, 2).easiest(buyer.failing()) - buyer.risk(),
                        0.999 * one,
                        1.001 * both);
        return new VariablesPlan(n, k, 2);
    }

    /**
     * The smallest plan that holds both risks.
     *
     * @throws IllegalArgumentException where no plan of a sane size does
     */
    public static VariablesPlan holding(int limits, RiskPoint buyer, RiskPoint seller) {
        if (!(seller.failing() < buyer.failing())) {
            throw new IllegalArgumentException("the seller's failing share must lie below the buyer's");
        }
        int low = 1;
        int high = 2;
        while (!holds(protecting(high, limits, buyer), seller)) {
            low = high;
            high *= 2;
            if (high > MOST_JOINTS) {
                throw new IllegalArgumentException("more than " + MOST_JOINTS + " joints would be needed");
            }
        }
        while (high - low > 1) {
            int middle = low + (high - low) / 2;
            if (holds(protecting(middle, limits, buyer), seller)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return protecting(high, limits, buyer);
    }

    private static boolean holds(VariablesPlan plan, RiskPoint seller) {
        return 1 - plan.hardest(seller.failing()) <= seller.risk();
    }

    /** Probability of accepting, the failing share split evenly over the limits. */
    @Override
    public double acceptance(double failing) {
        return limits == 1 ? acceptance(failing, 0) : acceptance(failing / 2, failing / 2);
    }

    /** Greatest probability of accepting, however the failing share is split. */
    public double easiest(double failing) {
        double most = 0;
        for (double split : splits()) {
            most = Math.max(most, acceptance(split * failing, (1 - split) * failing));
        }
        return most;
    }

    /** Least probability of accepting, however the failing share is split. */
    public double hardest(double failing) {
        double least = 1;
        for (double split : splits()) {
            least = Math.min(least, acceptance(split * failing, (1 - split) * failing));
        }
        return least;
    }

    private double[] splits() {
        return limits == 1 ? new double[] {1} : SPLITS;
    }

    /**
     * Probability of accepting a normal population.
     *
     * @param beyondOne share beyond one limit, in [0, 1]
     * @param beyondOther share beyond the other, in [0, 1]
     */
    public double acceptance(double beyondOne, double beyondOther) {
        if (beyondOne + beyondOther >= 1) {
            return 0;
        }
        double root = Math.sqrt((double) n);
        if (beyondOne <= 0 && beyondOther <= 0) {
            return 1;
        }
        if (beyondOne <= 0 || beyondOther <= 0) {
            double beyond = Math.max(beyondOne, beyondOther);
            return NoncentralT.of(n - 1.0, StandardNormal.upperQuantile(beyond) * root)
                    .survival(k * root);
        }
        double near = StandardNormal.upperQuantile(beyondOne);
        double far = StandardNormal.upperQuantile(beyondOther);
        double nu = n - 1.0;
        double spread = 1 / Math.sqrt(2 * nu);
        double logConstant = Math.log(2) + nu / 2 * Math.log(nu / 2) - LogGamma.value(nu / 2);
        double[] edges = new double[EDGES.length + 1];
        for (int i = 0; i < EDGES.length; i++) {
            edges[i] = Math.max(0, Math.min(1 + EDGES[i] * spread, (near + far) / (2 * k)));
        }
        double integral = Quadrature.over(edges, s -> {
            double between = StandardNormal.cdf(root * (near - k * s)) - StandardNormal.cdf(-root * (far - k * s));
            return between <= 0 ? 0 : between * Math.exp(logConstant + (nu - 1) * Math.log(s) - nu * s * s / 2);
        });
        return Math.min(1, Math.max(0, integral));
    }

    /** Whether a sample passes; an infinite limit is none. */
    public boolean accepts(double mean, double sd, double lowest, double highest) {
        return mean - k * sd >= lowest && mean + k * sd <= highest;
    }
}
