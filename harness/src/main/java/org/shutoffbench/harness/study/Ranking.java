package org.shutoffbench.harness.study;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Strategies by the in-window rate of their worst family.
 *
 * @param standings best first; strategies that did not run on every family come last
 * @param differences paired differences on the worst families that decided which strategies can be told apart
 * @param friedman test across families that all strategies do alike; null with fewer than two families or strategies
 */
public record Ranking(
        List<Standing> standings,
        List<WorstFamilyDifference> differences,
        @Nullable Friedman friedman) {

    public Ranking {
        standings = List.copyOf(standings);
        differences = List.copyOf(differences);
    }

    /**
     * Where a strategy stands.
     *
     * @param strategy index of the strategy
     * @param worstFamily index of the family with its lowest in-window rate; -1 where it ran nowhere
     * @param inWindow rate on that family; null where it ran nowhere
     * @param everyFamily whether it ran on every family
     * @param bestRank least rank that the data allow, from 1
     * @param worstRank greatest rank that the data allow
     */
    public record Standing(
            int strategy, int worstFamily, @Nullable Rate inWindow, boolean everyFamily, int bestRank, int worstRank) {}

    /**
     * Two strategies on the worst family of one of them, on the same joints.
     *
     * @param family index of the family
     * @param first index of the strategy that stands higher
     * @param second index of the strategy that stands lower
     * @param n joints that both ran
     * @param difference in-window share of the first minus that of the second
     * @param low lower bound, at the confidence that Holm's procedure leaves
     * @param high upper bound
     * @param pHolm exact McNemar test, adjusted for all differences listed
     * @param decided whether the pair is told apart on this family
     */
    public record WorstFamilyDifference(
            int family,
            int first,
            int second,
            long n,
            double difference,
            double low,
            double high,
            double pHolm,
            boolean decided) {}

    /**
     * Friedman's test on the in-window rates, families as blocks.
     *
     * @param statistic with ties corrected
     * @param degreesOfFreedom strategies less one
     * @param p exact by enumeration where that is small, else chi-square
     * @param exact whether p is exact
     */
    public record Friedman(double statistic, int degreesOfFreedom, double p, boolean exact) {}
}
