package org.shutoffbench.harness.statistics;

import java.math.BigInteger;

/** A sum of products of whole numbers in 128 bits: exact, so no order of addition changes it. */
final class ExactSum {

    private long high;
    private long low;

    void add(long value) {
        addParts(value >> 63, value);
    }

    void addProduct(long a, long b) {
        addParts(Math.multiplyHigh(a, b), a * b);
    }

    void add(ExactSum other) {
        addParts(other.high, other.low);
    }

    private void addParts(long otherHigh, long otherLow) {
        long sum = low + otherLow;
        long carry = Long.compareUnsigned(sum, low) < 0 ? 1 : 0;
        low = sum;
        high += otherHigh + carry;
    }

    BigInteger value() {
        return BigInteger.valueOf(high)
                .shiftLeft(64)
                .add(BigInteger.valueOf(low >>> 1).shiftLeft(1).add(BigInteger.valueOf(low & 1)));
    }
}
