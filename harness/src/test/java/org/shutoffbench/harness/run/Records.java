package org.shutoffbench.harness.run;

/** Records for tests. */
final class Records {

    private Records() {}

    /** The same tightening under another strategy index. */
    static TighteningRecord asStrategy(TighteningRecord r, int strategy) {
        return new TighteningRecord(
                r.family(),
                r.joint(),
                r.lot(),
                r.piece(),
                r.repeat(),
                r.tool(),
                strategy,
                r.endReason(),
                r.verdict(),
                r.outcome(),
                r.clampForceN(),
                r.clampingTorqueNm(),
                r.prevailingTorqueNm(),
                r.nutAngleDeg(),
                r.blows(),
                r.timeS(),
                r.runOnAngleDeg(),
                r.guardSteps());
    }
}
