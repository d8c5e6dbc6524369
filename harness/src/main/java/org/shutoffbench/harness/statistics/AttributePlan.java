package org.shutoffbench.harness.statistics;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * Acceptance sampling by attributes: try n joints, accept where at most c fail. Exact by the binomial law, as for joints
 * drawn from a long production (source: Schilling2009).
 *
 * @param n sample size, at least 1
 * @param c acceptance number, 0 to n - 1
 */
public record AttributePlan(int n, int c) implements AcceptancePlan {

    private static final int MOST_FAILURES = 2000;
    private static final int MOST_JOINTS = 200_000_000;

    public AttributePlan {
        Levels.atLeast(n, 1, "n");
        Levels.atLeast(c, 0, "c");
        Levels.atLeast(n - 1L - c, 0, "n - 1 - c");
    }

    /** P(at most c of n fail) where a share of all joints fails. */
    @Override
    public double acceptance(double failing) {
        return BinomialDistribution.of(n, failing).cumulativeProbability(c);
    }

    /**
     * The smallest sample that accepts a failing share with at most the buyer's risk, for one acceptance number.
     *
     * @param c acceptance number
     * @param failing share at which the buyer wants protection, in (0, 1)
     * @param risk of accepting there, in (0, 1)
     */
    public static AttributePlan protecting(int c, double failing, double risk) {
        Levels.probability(failing, "failing share");
        Levels.probability(risk, "risk");
        int low = c;
        int high = c + 1;
        while (cdf(c, high, failing) > risk) {
            low = high;
            if (high >= MOST_JOINTS / 2) {
                throw new IllegalArgumentException("more than " + MOST_JOINTS + " joints would be needed");
            }
            high *= 2;
        }
        while (high - low > 1) {
            int middle = low + (high - low) / 2;
            if (cdf(c, middle, failing) > risk) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new AttributePlan(high, c);
    }

    /**
     * The smallest plan that holds both risks.
     *
     * @param buyer failing share and risk of accepting it
     * @param seller failing share, below the buyer's, and risk of rejecting it
     * @throws IllegalArgumentException where no plan of a sane size holds both
     */
    public static AttributePlan holding(RiskPoint buyer, RiskPoint seller) {
        if (!(seller.failing() < buyer.failing())) {
            throw new IllegalArgumentException("the seller's failing share must lie below the buyer's");
        }
        for (int c = 0; c <= MOST_FAILURES; c++) {
            AttributePlan plan = protecting(c, buyer.failing(), buyer.risk());
            if (1 - plan.acceptance(seller.failing()) <= seller.risk()) {
                return plan;
            }
        }
        throw new IllegalArgumentException("no plan with at most " + MOST_FAILURES
                + " failures holds both risks: the two shares lie too near to each other");
    }

    /** P(X &lt;= c), by the beta law, which is exact for any n. */
    private static double cdf(int c, int n, double failing) {
        return c >= n ? 1 : BetaDistribution.of(n - (double) c, c + 1.0).cumulativeProbability(1 - failing);
    }
}
