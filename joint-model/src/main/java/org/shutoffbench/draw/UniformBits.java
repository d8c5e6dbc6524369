package org.shutoffbench.draw;

/** 64 random bits as a number between 0 and 1. */
final class UniformBits {

    private static final double STEP = 0x1.0p-52;

    private UniformBits() {}

    /**
     * The top 52 bits as the centre of one of 2^52 equal cells of (0, 1). Exact; never 0 or 1; symmetric: the complement of
     * the bits gives exactly 1 minus the number.
     */
    static double openInterval(long bits) {
        return ((bits >>> 12) + 0.5) * STEP;
    }
}
