package org.shutoffbench.joint.friction;

/**
 * Friction classes of VDI 2230 table A5 for thread and head (source key {@code VDI-2230}, ranges from memory).
 *
 * <p>As scatter, the limits of a class are taken as two standard deviations of the logarithm to either side of the median
 * (assumed), two thirds of the variance between lots and one third between pieces (assumed), and the bearing face follows
 * the thread with a ratio of 8 % CV (assumed).
 */
public enum FrictionClass {
    A(0.04, 0.10),
    B(0.08, 0.16),
    C(0.14, 0.24),
    D(0.20, 0.35),
    /** The guideline gives no upper limit; 0.45 is assumed. */
    E(0.30, 0.45);

    private static final double SIGMAS_TO_EITHER_SIDE = 2;
    private static final double LOT_SHARE_OF_VARIANCE = 2.0 / 3;
    private static final double RATIO_CV = 0.08;

    private final double lowest;
    private final double highest;

    FrictionClass(double lowest, double highest) {
        this.lowest = lowest;
        this.highest = highest;
    }

    /** Lowest coefficient of the class. */
    public double lowest() {
        return lowest;
    }

    /** Highest coefficient of the class. */
    public double highest() {
        return highest;
    }

    /** Geometric mean of the limits. */
    public double median() {
        return Math.sqrt(lowest * highest);
    }

    /** The class as a population. */
    public FrictionScatter scatter() {
        double sigma = Math.log(highest / lowest) / (2 * SIGMAS_TO_EITHER_SIDE);
        double lotCv = Scatter.cv(sigma * Math.sqrt(LOT_SHARE_OF_VARIANCE));
        double pieceCv = Scatter.cv(sigma * Math.sqrt(1 - LOT_SHARE_OF_VARIANCE));
        return new FrictionScatter(
                new Scatter(median(), lotCv, pieceCv, 0), new Scatter(1, 0, RATIO_CV, 0), Retightening.NONE);
    }
}
