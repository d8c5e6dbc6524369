package org.shutoffbench.harness.study;

/**
 * Two strategies on the same joints of one family; differences are first minus second.
 *
 * @param family index of the family
 * @param first index of a strategy
 * @param second index of a strategy
 * @param n joints that both ran
 * @param inWindow shares of joints in window
 * @param silentMiss shares of silent misses
 * @param clampingTorque N m
 * @param clampForce N
 */
public record PairedComparison(
        int family,
        int first,
        int second,
        long n,
        PairedRates inWindow,
        PairedRates silentMiss,
        PairedMeans clampingTorque,
        PairedMeans clampForce) {

    /**
     * Two shares on the same joints.
     *
     * @param onlyFirst joints where it holds for the first alone
     * @param onlySecond joints where it holds for the second alone
     * @param both joints where it holds for both
     * @param difference (onlyFirst - onlySecond) / n
     * @param low lower bound of the difference, -1 to 1
     * @param high upper bound of the difference, -1 to 1
     * @param pExact two-sided exact McNemar test of no difference
     * @param pMid the same with the mid-p correction
     * @param pHolm the exact one, adjusted for all comparisons of this kind in the study
     */
    public record PairedRates(
            long onlyFirst,
            long onlySecond,
            long both,
            double difference,
            double low,
            double high,
            double pExact,
            double pMid,
            double pHolm) {}

    /**
     * Two means on the same joints.
     *
     * @param difference of the means, with a t interval of the paired differences
     * @param correlation achieved between the two on the same joints; null value where one of them does not vary
     */
    public record PairedMeans(Estimate difference, Estimate correlation) {}
}
