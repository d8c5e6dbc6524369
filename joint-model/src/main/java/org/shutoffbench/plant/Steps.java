package org.shutoffbench.plant;

/** How far a series carries. */
final class Steps {

    /** Fastest eigenvalue times step: what {@link Series#ORDER} terms follow once the fastest mode has died. */
    private static final double REACH = 4;

    /** No step is longer, s. */
    private static final double LONGEST_S = 0.02;

    /** A series that needs a smaller part of its step than this has no finite terms. */
    private static final double SMALLEST_PART = 1e-6;

    private Steps() {}

    /** Step for carrier and hammer on the present cam branch. */
    static double forUpper(MotorAndCam drive, double inverseCarrier, double inverseHammer) {
        double inverse = inverseCarrier + inverseHammer;
        double rate =
                rate(drive.camStiffness * inverse, drive.camDamping * inverse + drive.motorSlope * inverseCarrier);
        return Math.min(LONGEST_S, REACH / rate);
    }

    static double forRate(double rate) {
        return Math.min(LONGEST_S, REACH / rate);
    }

    /** Bound on the eigenvalues of x'' + damping x' + stiffness x = 0, 1/s. */
    static double rate(double stiffness, double damping) {
        double half = damping / 2;
        double square = half * half - stiffness;
        return square <= 0 ? Math.sqrt(stiffness) : half + Math.sqrt(square);
    }

    /** Part of the step in (0, 1] on which the greatest last term stays below the tolerance. */
    static double usable(double perTolerance, double greatestLast) {
        double excess = greatestLast * perTolerance;
        if (!(excess > 1)) {
            return 1;
        }
        int grain = (int) (Double.doubleToRawLongBits(excess) >> GRAIN_SHIFT) - GRAIN_OF_ONE;
        return grain < PARTS.length ? PARTS[grain] : SMALLEST_PART;
    }

    // excess is rounded up to the next of four grains per power of two
    private static final int GRAIN_SHIFT = 50;
    private static final int GRAIN_OF_ONE = (int) (Double.doubleToRawLongBits(1) >> GRAIN_SHIFT);
    private static final double[] PARTS = parts();

    private static double[] parts() {
        double[] parts = new double[4 * (int) Math.ceil(-Series.ORDER * Math.log(SMALLEST_PART) / Math.log(2))];
        for (int i = 0; i < parts.length; i++) {
            double excess = Double.longBitsToDouble((long) (GRAIN_OF_ONE + i + 1) << GRAIN_SHIFT);
            parts[i] = StrictMath.pow(excess, -1.0 / Series.ORDER);
        }
        return parts;
    }
}
