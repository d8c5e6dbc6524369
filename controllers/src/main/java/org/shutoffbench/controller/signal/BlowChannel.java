package org.shutoffbench.controller.signal;

/** Reads the blow detector's count. */
public final class BlowChannel {

    /** More than a blow and its double cannot fall between two samples: blows are many milliseconds apart. */
    private static final int MOST_PER_SAMPLE = 2;

    private BlowChannel() {}

    /** The count of one sample; an impossible count is cut to 0 or 2. */
    public static int plausible(int reported) {
        return Math.max(0, Math.min(MOST_PER_SAMPLE, reported));
    }
}
