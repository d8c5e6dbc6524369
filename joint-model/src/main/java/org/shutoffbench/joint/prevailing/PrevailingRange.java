package org.shutoffbench.joint.prevailing;

import java.util.Optional;
import org.shutoffbench.joint.thread.ScrewThread;
import org.shutoffbench.joint.thread.ThreadDesignation;

/**
 * Prevailing torque that a standard allows a nut of one size.
 *
 * @param highestNm most on first assembly, N m
 * @param lowestNm least on first removal, or on reuse where the source is about used nuts, N m
 * @param sourceKey key into docs/references.md
 */
public record PrevailingRange(double highestNm, double lowestNm, String sourceKey) {

    public PrevailingRange {
        if (!(lowestNm > 0 && lowestNm < highestNm && highestNm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a prevailing torque range must rise from above 0");
        }
    }

    /** The range that a standard gives for the size of a thread, metric classes 5 to 8 or inch. */
    public static Optional<PrevailingRange> of(ScrewThread thread) {
        return ThreadDesignation.metricSizeOf(thread)
                .map(size -> MetricPrevailing.of(size).firstUse())
                .or(() -> ThreadDesignation.unifiedSizeOf(thread)
                        .map(size -> UnifiedPrevailing.of(size).used(size.isFine(thread))));
    }

    public double middleNm() {
        return (lowestNm + highestNm) / 2;
    }
}
