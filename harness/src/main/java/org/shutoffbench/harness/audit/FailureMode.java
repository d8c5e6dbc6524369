package org.shutoffbench.harness.audit;

import org.shutoffbench.harness.run.Outcome;
import org.shutoffbench.harness.run.TighteningRecord;

/** Ways in which a joint can be worse than its torque says, first match; for asking which of them an audit sees. */
public enum FailureMode {
    /** The outcome is unseated: parts do not bear, or nearly no torque clamps. */
    UNSEATED("unseated"),
    /** Too little torque clamps, though the whole torque would do: thread or insert took the rest. */
    FOULED_THREAD("fouled thread"),
    /** The whole torque is too low. */
    LOW_TORQUE("low torque"),
    /** Enough torque clamps, but friction took it: the clamp force lies below its window. */
    HIGH_FRICTION("high friction"),
    /** None of these. */
    NONE("none");

    private final String title;

    FailureMode(String title) {
        this.title = title;
    }

    /** For people. */
    public String title() {
        return title;
    }

    /**
     * The mode of a joint.
     *
     * @param lowestNm least clamping torque of the window, N m
     * @param lowestN least clamp force: the window about the force that the target torque makes on the family's median
     *     joint, N
     */
    public static FailureMode of(TighteningRecord row, double lowestNm, double lowestN) {
        if (row.outcome() == Outcome.UNSEATED) {
            return UNSEATED;
        }
        if (row.outcome() == Outcome.FRACTURED) {
            return NONE;
        }
        if (row.clampingTorqueNm() < lowestNm) {
            return row.clampingTorqueNm() + row.prevailingTorqueNm() < lowestNm ? LOW_TORQUE : FOULED_THREAD;
        }
        return row.clampForceN() < lowestN ? HIGH_FRICTION : NONE;
    }
}
