package org.shutoffbench.harness.study;

import java.util.List;
import org.shutoffbench.harness.record.OutcomesFormat;

/**
 * Everything a study found: what tables, pages and claims read, and what {@code summary.json} holds.
 *
 * <p>Depends on the tightenings alone: the same joints give an equal summary for any number of threads, order or split.
 *
 * @param format version of this shape
 * @param scenario name of the scenario
 * @param judge what counts as in the window
 * @param methods which intervals, at which confidence
 * @param families in scenario order
 * @param strategies in scenario order
 * @param cells every strategy on every family, family-major
 * @param comparisons every pair of strategies on every family where both ran
 * @param ranking strategies by worst family, with rank intervals
 * @param headline what the first sentence of a report may say
 * @param torqueRatePairs one for each strategy that ran on both families of the pair; empty where there is no pair
 * @param covariateCurves rates by class of a drawn parameter; empty where no family has one
 * @param prevailingScans the median joint over prevailing torque, for the families of those curves
 * @param stopping which rule ended the run
 */
public record StudySummary(
        int format,
        String scenario,
        Judge judge,
        Methods methods,
        List<Family> families,
        List<Strategy> strategies,
        List<CellSummary> cells,
        List<PairedComparison> comparisons,
        Ranking ranking,
        Headline headline,
        List<TorqueRatePair> torqueRatePairs,
        List<CovariateCurve> covariateCurves,
        List<PrevailingScan> prevailingScans,
        StoppingReport stopping) {

    /** Version of the shape written by this program. */
    public static final int FORMAT = 1;

    public StudySummary {
        families = List.copyOf(families);
        strategies = List.copyOf(strategies);
        cells = List.copyOf(cells);
        comparisons = List.copyOf(comparisons);
        torqueRatePairs = List.copyOf(torqueRatePairs);
        covariateCurves = List.copyOf(covariateCurves);
        prevailingScans = List.copyOf(prevailingScans);
    }

    /** The cell of one strategy on one family. */
    public CellSummary cell(int family, int strategy) {
        return cells.get(family * strategies.size() + strategy);
    }

    /** Tightenings on which the plant stepped over events that it could not bring in order. */
    public long guarded() {
        return cells.stream().mapToLong(CellSummary::guarded).sum();
    }

    /** The outcomes file as this study's run wrote it. */
    public OutcomesFormat outcomesFormat() {
        return new OutcomesFormat(
                families.stream().map(Family::name).toList(),
                strategies.stream()
                        .map(s -> new OutcomesFormat.StrategyName(
                                s.name(), s.settings().title()))
                        .toList());
    }
}
