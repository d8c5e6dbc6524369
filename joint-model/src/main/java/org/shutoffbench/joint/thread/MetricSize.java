package org.shutoffbench.joint.thread;

/**
 * Metric sizes M5 to M36: coarse pitch (source key {@code ISO-261}), hexagon bolts and nuts ({@code ISO-4014}, grade A to
 * M24, grade B above; {@code ISO-4032}) and medium holes ({@code ISO-273}).
 *
 * <p>Typed from memory. Bearing faces and holes of M6 to M24 are confirmed by the assembly torques of VDI 2230, the
 * others are not confirmed.
 */
public enum MetricSize {
    M5(5, 0.8, 8, 6.88, 5.5, 3.5, 4.7),
    M6(6, 1, 10, 8.88, 6.6, 4, 5.2),
    M8(8, 1.25, 13, 11.63, 9, 5.3, 6.8),
    M10(10, 1.5, 16, 14.63, 11, 6.4, 8.4),
    M12(12, 1.75, 18, 16.63, 13.5, 7.5, 10.8),
    M14(14, 2, 21, 19.64, 15.5, 8.8, 12.8),
    M16(16, 2, 24, 22.49, 17.5, 10, 14.8),
    M18(18, 2.5, 27, 25.34, 20, 11.5, 15.8),
    M20(20, 2.5, 30, 28.19, 22, 12.5, 18),
    M22(22, 2.5, 34, 31.71, 24, 14, 19.4),
    M24(24, 3, 36, 33.61, 26, 15, 21.5),
    M27(27, 3, 41, 38, 30, 17, 23.8),
    M30(30, 3.5, 46, 42.75, 33, 18.7, 25.6),
    M33(33, 3.5, 50, 46.55, 36, 21, 28.7),
    M36(36, 4, 55, 51.11, 39, 22.5, 31);

    private final double diameterM;
    private final double coarsePitchM;
    private final double acrossFlatsM;
    private final double bearingFaceM;
    private final double holeM;
    private final double headHeightM;
    private final double nutHeightM;

    MetricSize(
            double diameterMm,
            double coarsePitchMm,
            double acrossFlatsMm,
            double bearingFaceMm,
            double holeMm,
            double headHeightMm,
            double nutHeightMm) {
        diameterM = diameterMm / 1e3;
        coarsePitchM = coarsePitchMm / 1e3;
        acrossFlatsM = acrossFlatsMm / 1e3;
        bearingFaceM = bearingFaceMm / 1e3;
        holeM = holeMm / 1e3;
        headHeightM = headHeightMm / 1e3;
        nutHeightM = nutHeightMm / 1e3;
    }

    public double diameterM() {
        return diameterM;
    }

    public double coarsePitchM() {
        return coarsePitchM;
    }

    public HexDimensions hexagon() {
        return new HexDimensions(acrossFlatsM, bearingFaceM, holeM, headHeightM, nutHeightM);
    }

    /** The coarse thread of this size. */
    public ScrewThread coarse() {
        return new ScrewThread(name(), ThreadForm.METRIC, diameterM, coarsePitchM);
    }
}
