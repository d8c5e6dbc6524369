package org.shutoffbench.harness.audit;

/**
 * What an audit of one joint says.
 *
 * @param decision what the auditor does with the joint
 * @param readingNm what the hand tool shows, N m; NaN where nobody looked
 */
public record AuditResult(Decision decision, double readingNm) {

    /** What the auditor does with a joint. */
    public enum Decision {
        /** Ticked, but never checked. */
        SKIPPED,
        ACCEPTED,
        /** The reading is below the limit. */
        REJECTED_LOW,
        /** The reading is above the limit. */
        REJECTED_HIGH
    }

    /** Whether the joint goes to rework. */
    public boolean isRejected() {
        return decision == Decision.REJECTED_LOW || decision == Decision.REJECTED_HIGH;
    }
}
