package org.shutoffbench.joint.thread;

import static org.shutoffbench.joint.thread.CustomaryUnits.INCH_M;

/**
 * Unified sizes 1/4 to 1 in: threads per inch of the coarse and fine series (source key {@code ASME-B1.1}), hexagon bolts
 * and nuts ({@code ASME-B18.2}) and normal holes ({@code ASME-B18.2.8}). Typed from memory.
 *
 * <p>The bearing face is taken as 0.95 of the width across flats (assumed).
 */
public enum UnifiedSize {
    QUARTER("1/4", 16, 20, 28, 28, 18, 10, 14),
    FIVE_SIXTEENTHS("5/16", 20, 18, 24, 32, 22, 13, 17),
    THREE_EIGHTHS("3/8", 24, 16, 24, 36, 26, 15, 21),
    SEVEN_SIXTEENTHS("7/16", 28, 14, 20, 40, 30, 18, 24),
    HALF("1/2", 32, 13, 20, 48, 36, 20, 28),
    NINE_SIXTEENTHS("9/16", 36, 12, 18, 52, 40, 23, 31),
    FIVE_EIGHTHS("5/8", 40, 11, 18, 60, 44, 25, 35),
    THREE_QUARTERS("3/4", 48, 10, 16, 72, 52, 30, 41),
    SEVEN_EIGHTHS("7/8", 56, 9, 14, 84, 60, 35, 48),
    ONE("1", 64, 8, 12, 96, 70, 39, 55);

    private static final double BEARING_FACE_PER_ACROSS_FLATS = 0.95;

    private final String title;
    private final double diameterM;
    private final int coarsePerInch;
    private final int finePerInch;
    private final double acrossFlatsM;
    private final double holeM;
    private final double headHeightM;
    private final double nutHeightM;

    /** Lengths in 1/64 in. */
    UnifiedSize(
            String title,
            int diameter,
            int coarsePerInch,
            int finePerInch,
            int acrossFlats,
            int hole,
            int headHeight,
            int nutHeight) {
        this.title = title;
        this.diameterM = inSixtyFourths(diameter);
        this.coarsePerInch = coarsePerInch;
        this.finePerInch = finePerInch;
        this.acrossFlatsM = inSixtyFourths(acrossFlats);
        this.holeM = inSixtyFourths(hole);
        this.headHeightM = inSixtyFourths(headHeight);
        this.nutHeightM = inSixtyFourths(nutHeight);
    }

    private static double inSixtyFourths(int count) {
        return count * INCH_M / 64;
    }

    /** As written before the dash of a designation. */
    public String title() {
        return title;
    }

    public double diameterM() {
        return diameterM;
    }

    public int coarsePerInch() {
        return coarsePerInch;
    }

    public int finePerInch() {
        return finePerInch;
    }

    public HexDimensions hexagon() {
        return new HexDimensions(
                acrossFlatsM, BEARING_FACE_PER_ACROSS_FLATS * acrossFlatsM, holeM, headHeightM, nutHeightM);
    }

    /** Whether a thread of this size is finer than the coarse series. */
    public boolean isFine(ScrewThread thread) {
        return thread.pitchM() < 0.99 * INCH_M / coarsePerInch;
    }

    /** This size cut with a number of threads per inch. */
    public ScrewThread withThreadsPerInch(int threadsPerInch) {
        return new ScrewThread(title + "-" + threadsPerInch, ThreadForm.UNIFIED, diameterM, INCH_M / threadsPerInch);
    }
}
