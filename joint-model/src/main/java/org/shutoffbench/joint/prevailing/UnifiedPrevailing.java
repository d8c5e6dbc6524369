package org.shutoffbench.joint.prevailing;

import org.shutoffbench.joint.thread.CustomaryUnits;
import org.shutoffbench.joint.thread.UnifiedSize;

/**
 * Prevailing torque of inch nuts in use, in lbf in: most on installation (source key {@code NASM25027}), least breakaway of
 * used nuts (source key {@code TM-1-1500-204}, table 2-8, where it agrees with NASM25027), least on reuse (source key
 * {@code AC-43.13-1B}, table 7-2, from 7/16 in). Values not in docs/validation.md are from memory.
 */
public enum UnifiedPrevailing {
    QUARTER(30, 4.5, 3.5, 0, 0),
    FIVE_SIXTEENTHS(60, 7.5, 6.5, 0, 0),
    THREE_EIGHTHS(80, 12, 9.5, 0, 0),
    SEVEN_SIXTEENTHS(100, 16.5, 14, 8, 8),
    HALF(150, 24, 18, 10, 10),
    NINE_SIXTEENTHS(200, 30, 24, 14, 13),
    FIVE_EIGHTHS(300, 40, 32, 20, 18),
    THREE_QUARTERS(400, 60, 50, 27, 27),
    SEVEN_EIGHTHS(600, 82, 70, 40, 40),
    ONE(800, 110, 90, 51, 55);

    private final double highest;
    private final double coarseBreakaway;
    private final double fineBreakaway;
    private final double coarseReused;
    private final double fineReused;

    UnifiedPrevailing(
            double highest, double coarseBreakaway, double fineBreakaway, double coarseReused, double fineReused) {
        this.highest = highest;
        this.coarseBreakaway = coarseBreakaway;
        this.fineBreakaway = fineBreakaway;
        this.coarseReused = coarseReused;
        this.fineReused = fineReused;
    }

    public static UnifiedPrevailing of(UnifiedSize size) {
        return valueOf(size.name());
    }

    /** Most on installation to least breakaway of a used nut. */
    public PrevailingRange used(boolean fine) {
        double inchPound = CustomaryUnits.INCH_POUND_NM;
        return new PrevailingRange(
                highest * inchPound, (fine ? fineBreakaway : coarseBreakaway) * inchPound, "TM-1-1500-204");
    }

    /** Least prevailing torque at which a nut may be used again, N m; 0 where the source does not list the size. */
    public double reusedLowestNm(boolean fine) {
        return (fine ? fineReused : coarseReused) * CustomaryUnits.INCH_POUND_NM;
    }
}
