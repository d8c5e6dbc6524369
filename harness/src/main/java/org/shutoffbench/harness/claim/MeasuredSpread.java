package org.shutoffbench.harness.claim;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.statistics.AndersonDarling;
import org.shutoffbench.harness.statistics.Interval;
import org.shutoffbench.harness.statistics.NormalIntervals;
import org.shutoffbench.harness.statistics.VariablesPlan;

/**
 * Mean and spread of measured joints against the k method's constant for as many joints (source: Schilling2009). It speaks
 * only of joints that are independent and whose values look normal.
 *
 * @param family whose joints, in words
 * @param n joints
 * @param mean in SI
 * @param sd their standard deviation, in SI; 0 of a single joint
 * @param distance of the mean to the nearer limit that counts, in standard deviations
 * @param k distance that would support the claim; NaN below two joints
 * @param normality probability of so odd a sample where values are normal; NaN where there are too few joints to ask
 * @param sharesLots whether several joints are of one lot
 */
record MeasuredSpread(
        String family, int n, double mean, double sd, double distance, double k, double normality, boolean sharesLots) {

    /** The constant hardly falls beyond; taking it for fewer joints than there are errs to the safe side. */
    private static final int MOST = 20_000;

    /** Probability below which a sample is not taken as normal. */
    static final double ODD = 0.05;

    /** What mean and spread say. */
    enum Finding {
        KEEPS_DISTANCE,
        TOO_NEAR,
        TOO_FEW,
        NOT_NORMAL,
        SHARES_LOTS
    }

    static MeasuredSpread of(
            Claim claim, @Nullable GuardBand guard, String family, double[] values, boolean sharesLots) {
        int n = values.length;
        double mean = Arrays.stream(values).average().orElseThrow();
        double sd = ClaimJudgement.sd(values);
        double low = claim.failure() == FailureRule.ABOVE
                ? Double.POSITIVE_INFINITY
                : mean - (guard == null ? claim.lowest() : guard.acceptFrom());
        double high = claim.failure() == FailureRule.BELOW
                ? Double.POSITIVE_INFINITY
                : (guard == null ? claim.highest() : guard.acceptTo()) - mean;
        return new MeasuredSpread(
                family,
                n,
                mean,
                sd,
                Math.min(low, high) / sd,
                n < 2
                        ? Double.NaN
                        : VariablesPlan.protecting(
                                        Math.min(n, MOST), claim.failure().limits(), claim.buyer())
                                .k(),
                n < AndersonDarling.LEAST_SAMPLE ? Double.NaN : AndersonDarling.p(values),
                sharesLots);
    }

    Finding finding() {
        if (Double.isNaN(normality)) {
            return Finding.TOO_FEW;
        }
        if (normality < ODD) {
            return Finding.NOT_NORMAL;
        }
        if (sharesLots) {
            return Finding.SHARES_LOTS;
        }
        return distance >= k ? Finding.KEEPS_DISTANCE : Finding.TOO_NEAR;
    }

    boolean supports() {
        return finding() == Finding.KEEPS_DISTANCE;
    }

    /** Bounds of the mean, joints taken as independent. */
    Interval meanBounds(double confidence) {
        return NormalIntervals.mean(mean, sd / Math.sqrt((double) n), n - 1.0, confidence);
    }
}
