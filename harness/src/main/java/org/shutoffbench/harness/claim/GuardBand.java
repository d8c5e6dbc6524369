package org.shutoffbench.harness.claim;

import org.shutoffbench.harness.claim.ClaimPage.Part;
import org.shutoffbench.harness.statistics.StandardNormal;

/**
 * Acceptance limits for readings of an uncertain gauge: the tolerance less, and more, the expanded uncertainty. A reading
 * inside the first is a joint inside the tolerance, one outside the second is outside, one between is undecided (source:
 * JCGM106).
 *
 * @param acceptFrom least reading that proves a joint inside, in SI
 * @param acceptTo greatest one
 * @param rejectBelow readings below prove a joint outside
 * @param rejectAbove readings above do
 * @param riskAtLimit probability that a reading at an acceptance limit comes from a joint outside the tolerance
 */
public record GuardBand(
        double acceptFrom, double acceptTo, double rejectBelow, double rejectAbove, double riskAtLimit) {

    /** What a reading says of its joint. */
    public enum Result {
        INSIDE,
        OUTSIDE,
        UNDECIDED
    }

    /** The guard bands of a gauge. */
    static GuardBand of(Claim claim, Claim.Gauge gauge) {
        double u = gauge.expandedUncertainty();
        return new GuardBand(
                claim.lowest() + u,
                claim.highest() - u,
                claim.lowest() - u,
                claim.highest() + u,
                StandardNormal.survival(gauge.coverageFactor()));
    }

    /** Whether any reading can prove a joint inside. */
    boolean leavesRoom() {
        return acceptFrom <= acceptTo;
    }

    /** What a reading says about the edges that count for a failure. */
    Result of(double reading, FailureRule rule) {
        boolean low = rule != FailureRule.ABOVE;
        boolean high = rule == FailureRule.OUTSIDE || rule == FailureRule.ABOVE;
        if ((low && reading < rejectBelow) || (high && reading > rejectAbove)) {
            return Result.OUTSIDE;
        }
        return (low && reading < acceptFrom) || (high && reading > acceptTo) ? Result.UNDECIDED : Result.INSIDE;
    }

    Part part(ClaimWords words) {
        if (!leavesRoom()) {
            return Part.of(
                    "Guard bands for the gauge",
                    "The gauge's uncertainty is wider than the tolerance: no reading can prove a joint inside. Use a"
                            + " better gauge.");
        }
        return Part.of(
                "Guard bands for the gauge",
                "A reading from " + words.value(acceptFrom) + " to " + words.value(acceptTo)
                        + " proves a joint inside the tolerance; below " + words.value(rejectBelow) + " or above "
                        + words.value(rejectAbove)
                        + " it is outside; between, it is undecided. At an acceptance limit the"
                        + " risk of a wrong \"inside\" is " + ClaimWords.percent(riskAtLimit)
                        + " % (JCGM 106, normal errors).");
    }
}
