package org.shutoffbench.joint.assembly;

/** Preload accuracy by way of tightening, as a handbook gives it (source key {@code MachineryHandbook}). */
public enum PreloadAccuracy {
    FEEL("by feel", 0.35),
    TORQUE_WRENCH("torque wrench", 0.25),
    TURN_OF_NUT("turn of nut", 0.15),
    YIELD_SENSING("yield sensing", 0.08),
    /** The handbook says 3 to 5 %; the wider one. */
    ELONGATION("bolt elongation", 0.05);

    private final String title;
    private final double relative;

    PreloadAccuracy(String title, double relative) {
        this.title = title;
        this.relative = relative;
    }

    public String title() {
        return title;
    }

    /** Half width of the band around the aimed preload, as a share of it. */
    public double relative() {
        return relative;
    }

    /**
     * Half width, as a share of the mean, of a band whose largest preload is alpha_A times its smallest (source key {@code
     * VDI-2230}).
     *
     * @param tighteningFactor alpha_A, at least 1
     */
    public static double ofTighteningFactor(double tighteningFactor) {
        if (!(tighteningFactor >= 1 && tighteningFactor < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("tightening factor must be finite and at least 1");
        }
        return (tighteningFactor - 1) / (tighteningFactor + 1);
    }
}
