package org.shutoffbench.harness.statistics;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/** Mean and variance of many values, exact to the step of their fixed point: the same for any order, split or merge. */
public final class ExactMoments {

    private final double perUnit;
    private long n;
    private final ExactSum sum = new ExactSum();
    private final ExactSum squares = new ExactSum();

    /** For values that are whole multiples of the step. */
    public ExactMoments(FixedPoint point) {
        this.perUnit = point.perUnit();
    }

    /** Adds one value, in steps. */
    public void add(long units) {
        n++;
        sum.add(units);
        squares.addProduct(units, units);
    }

    /** Adds all that another has seen; both must share one step. */
    public void merge(ExactMoments other) {
        if (perUnit != other.perUnit) {
            throw new IllegalArgumentException("moments of unlike steps cannot be merged");
        }
        n += other.n;
        sum.add(other.sum);
        squares.add(other.squares);
    }

    /** Number of values. */
    public long n() {
        return n;
    }

    /** Mean, NaN without values. */
    public double mean() {
        return n == 0 ? Double.NaN : ratio(sum.value(), BigInteger.valueOf(n)) / perUnit;
    }

    /** Variance with n - 1, NaN below two values. */
    public double variance() {
        if (n < 2) {
            return Double.NaN;
        }
        return ratio(centredSquares(), BigInteger.valueOf(n).multiply(BigInteger.valueOf(n - 1))) / perUnit / perUnit;
    }

    /** Standard deviation with n - 1, NaN below two values. */
    public double standardDeviation() {
        return Math.sqrt(variance());
    }

    /** n sum x^2 - (sum x)^2, in steps squared. */
    BigInteger centredSquares() {
        BigInteger total = sum.value();
        return squares.value().multiply(BigInteger.valueOf(n)).subtract(total.multiply(total));
    }

    BigInteger total() {
        return sum.value();
    }

    static double ratio(BigInteger numerator, BigInteger denominator) {
        return new BigDecimal(numerator)
                .divide(new BigDecimal(denominator), MathContext.DECIMAL128)
                .doubleValue();
    }
}
