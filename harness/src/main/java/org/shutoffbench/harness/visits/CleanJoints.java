package org.shutoffbench.harness.visits;

import org.shutoffbench.harness.audit.Share;
import org.shutoffbench.harness.statistics.BinomialInterval;

/** How many more joints, none of them left low, would bring the upper bound of a rate below a limit. */
final class CleanJoints {

    /** More than anybody tightens: beyond it no number is given. */
    static final long MOST = 1_000_000_000L;

    private CleanJoints() {}

    /**
     * The least such number; {@link #MOST} where it is not smaller.
     *
     * @param missed what was counted so far
     * @param limit rate that the bound must fall below
     * @param confidence of the two-sided interval
     */
    static long needed(Share missed, double limit, double confidence) {
        if (!(limit > 0)) {
            return MOST;
        }
        double effect = missed.designEffect(confidence);
        long count = Math.round(missed.count() / effect);
        long seen = Math.max(count, Math.round(missed.n() / effect));
        if (!isBelow(count, seen + MOST, limit, confidence)) {
            return MOST;
        }
        long enough = MOST;
        long tooFew = -1;
        while (enough - tooFew > 1) {
            long middle = (enough + tooFew) / 2;
            if (isBelow(count, seen + middle, limit, confidence)) {
                enough = middle;
            } else {
                tooFew = middle;
            }
        }
        return Math.min(MOST, (long) Math.ceil(enough * effect));
    }

    private static boolean isBelow(long count, long n, double limit, double confidence) {
        return n > 0
                && BinomialInterval.CLOPPER_PEARSON.of(count, n, confidence).high() < limit;
    }
}
