package org.shutoffbench.joint.prevailing;

import org.shutoffbench.joint.thread.MetricSize;

/**
 * Prevailing torque of metric nuts of classes 5 to 8: most on first assembly, least on first and on fifth removal (source
 * key {@code ISO-2320}, from memory).
 */
public enum MetricPrevailing {
    M5(1.6, 0.29, 0.2),
    M6(3, 0.45, 0.3),
    M8(6, 0.85, 0.6),
    M10(10.5, 1.5, 1),
    M12(15.5, 2.3, 1.6),
    M14(24, 3.3, 2.3),
    M16(32, 4.5, 3),
    M18(42, 6, 4.2),
    M20(54, 7.5, 5.3),
    M22(68, 9.5, 6.5),
    M24(80, 11.5, 8),
    M27(94, 13.5, 10),
    M30(108, 16, 12),
    M33(122, 18, 14),
    M36(136, 21, 16);

    private final double firstOnHighestNm;
    private final double firstOffLowestNm;
    private final double fifthOffLowestNm;

    MetricPrevailing(double firstOnHighestNm, double firstOffLowestNm, double fifthOffLowestNm) {
        this.firstOnHighestNm = firstOnHighestNm;
        this.firstOffLowestNm = firstOffLowestNm;
        this.fifthOffLowestNm = fifthOffLowestNm;
    }

    public static MetricPrevailing of(MetricSize size) {
        return valueOf(size.name());
    }

    /** First assembly to first removal. */
    public PrevailingRange firstUse() {
        return new PrevailingRange(firstOnHighestNm, firstOffLowestNm, "ISO-2320");
    }

    /** Least on fifth removal, N m. */
    public double fifthOffLowestNm() {
        return fifthOffLowestNm;
    }
}
