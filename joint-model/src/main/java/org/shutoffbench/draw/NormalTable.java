package org.shutoffbench.draw;

/**
 * Inverse of the standard normal distribution function by linear interpolation in a table, for 64 random bits.
 *
 * <p>The lowest bit is the sign. The others are a tail probability p in (0, 1/2). Its octave [2^-(k+2), 2^-(k+1)) has 128
 * equal segments; within a segment the size falls linearly between the exact values at its ends. The exact size is convex in
 * p with a second derivative z/phi(z)^2 that falls with p, so the error of a segment of width w lies between 0 and
 * w^2/8 z/phi(z)^2 at the segment's lower end: at most {@link #ERROR_BOUND} over all segments (the tests compute every one
 * of them). Knots are rounded to multiples of 2^-40; their differences are then exact and the interpolation is monotone.
 */
final class NormalTable {

    /** Greatest absolute error against the exact inverse, for p of 2^-54 and more. */
    static final double ERROR_BOUND = 3.3e-6;

    /** Segments per octave as a power of two. */
    static final int SEGMENT_BITS = 7;

    static final int SEGMENTS = 1 << SEGMENT_BITS;

    /** Octaves of p; the last reaches down to 2^-54, where the size is 8.3. */
    static final int OCTAVES = 53;

    private static final int PITCH = SEGMENTS + 1;
    private static final double KNOT_STEPS = 0x1.0p40;
    private static final double[] KNOTS = knots();

    /** Least p in units of 2^-64; smaller ones, 2^-53 of all, are raised to it. */
    private static final long FLOOR = 1L << (63 - OCTAVES);

    private NormalTable() {}

    /** The normal number of 64 random bits. */
    static double at(long bits) {
        long tail = Math.max(bits >>> 1, FLOOR);
        int octave = Long.numberOfLeadingZeros(tail) - 1;
        long below = tail << (octave + 2);
        int knot = octave * PITCH + (int) (below >>> (64 - SEGMENT_BITS));
        double fraction = (below << SEGMENT_BITS >>> 11) * 0x1.0p-53;
        double from = KNOTS[knot];
        double size = from + fraction * (KNOTS[knot + 1] - from);
        return Double.longBitsToDouble(Double.doubleToRawLongBits(size) ^ (bits << 63));
    }

    /** Tail probability at a knot; knot 0 to {@link #SEGMENTS} of an octave from its lower end up. */
    static double knotProbability(int octave, int knot) {
        return StrictMath.scalb(1.0 + (double) knot / SEGMENTS, -(octave + 2));
    }

    private static double[] knots() {
        double[] knots = new double[OCTAVES * PITCH];
        for (int octave = 0; octave < OCTAVES; octave++) {
            for (int knot = 0; knot <= SEGMENTS; knot++) {
                double size = -NormalQuantile.at(knotProbability(octave, knot));
                knots[octave * PITCH + knot] = Math.rint(size * KNOT_STEPS) / KNOT_STEPS;
            }
        }
        return knots;
    }
}
