package org.shutoffbench.harness.statistics;

import java.math.BigInteger;

/** Paired values on the same joints: mean difference, its variance, and the correlation; exact like {@link ExactMoments}. */
public final class ExactPairMoments {

    private final ExactMoments first;
    private final ExactMoments second;
    private final ExactMoments difference;
    private final ExactSum products = new ExactSum();

    /** For values that are whole multiples of the step. */
    public ExactPairMoments(FixedPoint point) {
        first = new ExactMoments(point);
        second = new ExactMoments(point);
        difference = new ExactMoments(point);
    }

    /** Adds a pair, in steps. */
    public void add(long firstUnits, long secondUnits) {
        first.add(firstUnits);
        second.add(secondUnits);
        difference.add(firstUnits - secondUnits);
        products.addProduct(firstUnits, secondUnits);
    }

    /** Adds all that another has seen. */
    public void merge(ExactPairMoments other) {
        first.merge(other.first);
        second.merge(other.second);
        difference.merge(other.difference);
        products.add(other.products);
    }

    /** First minus second. */
    public ExactMoments difference() {
        return difference;
    }

    /** Pearson's correlation, NaN where one of the two does not vary. */
    public double correlation() {
        BigInteger n = BigInteger.valueOf(first.n());
        BigInteger varianceOfFirst = first.centredSquares();
        BigInteger varianceOfSecond = second.centredSquares();
        if (varianceOfFirst.signum() == 0 || varianceOfSecond.signum() == 0) {
            return Double.NaN;
        }
        double covariance = products.value()
                .multiply(n)
                .subtract(first.total().multiply(second.total()))
                .doubleValue();
        double r = covariance / Math.sqrt(varianceOfFirst.doubleValue()) / Math.sqrt(varianceOfSecond.doubleValue());
        return Math.max(-1, Math.min(1, r));
    }
}
