package org.shutoffbench.harness.study;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.run.EndReason;
import org.shutoffbench.harness.run.Outcome;

/**
 * One strategy on one family.
 *
 * @param family index of the family
 * @param strategy index of the strategy
 * @param planned joints planned
 * @param run joints run
 * @param reason why it did not run, or not to the end; null for a complete cell
 * @param counts joints by outcome, verdict and end reason; combinations that did not occur are left out
 * @param rates null where no joint ran
 * @param clampingTorque N m; null where no joint ran
 * @param clampForce N; null where no joint ran
 * @param effort blows and time; null where no joint ran
 * @param guarded joints on which the plant stepped over events that it could not bring in order
 * @param worst up to 100 joints farthest from the target, worst first
 */
public record CellSummary(
        int family,
        int strategy,
        long planned,
        long run,
        @Nullable String reason,
        List<Count> counts,
        @Nullable Rates rates,
        @Nullable QuantitySummary clampingTorque,
        @Nullable QuantitySummary clampForce,
        @Nullable Effort effort,
        long guarded,
        List<WorstJoint> worst) {

    public CellSummary {
        counts = List.copyOf(counts);
        worst = List.copyOf(worst);
    }

    /** Whether every planned joint ran. */
    public boolean complete() {
        return run == planned;
    }

    /** Number of joints with one combination of outcome, verdict and end reason. */
    public record Count(Outcome outcome, Verdict verdict, EndReason endReason, long joints) {}
}
