package org.shutoffbench.harness.statistics;

/** How an error probability is spent over repeated looks at growing data (source: Lan1983). */
public enum AlphaSpending {
    /** Little early, most at the end. */
    OBRIEN_FLEMING {
        @Override
        public double spent(double fraction, double alpha) {
            check(fraction, alpha);
            return fraction == 0
                    ? 0
                    : 2 * StandardNormal.survival(StandardNormal.upperQuantile(alpha / 2) / Math.sqrt(fraction));
        }
    },
    /** About evenly. */
    POCOCK {
        @Override
        public double spent(double fraction, double alpha) {
            check(fraction, alpha);
            return alpha * Math.log(1 + (Math.E - 1) * fraction);
        }
    };

    /**
     * Error spent up to a share of the greatest sample.
     *
     * @param fraction 0 to 1
     * @param alpha error to spend in all, in (0, 1)
     */
    public abstract double spent(double fraction, double alpha);

    /**
     * Error that one look may use: what is spent at it less what was spent before. A union bound over looks, so it needs no
     * law of the looks together.
     */
    public double atLook(double fractionBefore, double fraction, double alpha) {
        return spent(fraction, alpha) - spent(fractionBefore, alpha);
    }

    private static void check(double fraction, double alpha) {
        Levels.probability(alpha, "alpha");
        if (!(fraction >= 0 && fraction <= 1)) {
            throw new IllegalArgumentException("fraction must lie in 0 to 1, not " + fraction);
        }
    }
}
