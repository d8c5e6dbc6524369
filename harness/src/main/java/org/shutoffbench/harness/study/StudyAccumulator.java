package org.shutoffbench.harness.study;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.run.TighteningRecord;

/**
 * Takes the tightenings of a study and keeps what its summary needs, in memory that does not grow with the number of
 * joints.
 *
 * <p>Everything kept is a whole number or a set with a fixed order: joints may come in any order and be split over any
 * number of accumulators, the summary is equal to the last bit. Not safe for several threads: give each its own and {@link
 * #merge} them.
 */
public final class StudyAccumulator {

    private final StudyPlan plan;
    private final CellAccumulator[] cells;
    private final FamilyDesign[] designs;
    private final PairAccumulator[][] pairs;

    /** Empty, for a plan. */
    public StudyAccumulator(StudyPlan plan) {
        this.plan = plan;
        int strategies = plan.strategies().size();
        this.cells = new CellAccumulator[plan.cells()];
        this.designs = new FamilyDesign[plan.families().size()];
        this.pairs = new PairAccumulator[plan.families().size()][strategies * (strategies - 1) / 2];
        for (int family = 0; family < designs.length; family++) {
            Family described = plan.families().get(family);
            designs[family] = new FamilyDesign(described);
            for (int strategy = 0; strategy < strategies; strategy++) {
                cells[plan.cell(family, strategy)] = new CellAccumulator(plan.judge(), described);
            }
            for (int pair = 0; pair < pairs[family].length; pair++) {
                pairs[family][pair] = new PairAccumulator(described);
            }
        }
    }

    private StudyAccumulator(StudyPlan plan, StudyAccumulator counted) {
        this.plan = plan;
        this.cells = counted.cells;
        this.designs = counted.designs;
        this.pairs = counted.pairs;
    }

    /** What was counted, to be summarised by another plan of the same cells: fewer joints, another confidence. */
    StudyAccumulator seenAs(StudyPlan other) {
        if (other.cells() != plan.cells()) {
            throw new IllegalArgumentException("a plan of other cells");
        }
        return new StudyAccumulator(other, this);
    }

    /** Adds one joint of a family without a covariate; see {@link #addJoint(List, double)}. */
    public void addJoint(List<TighteningRecord> tightenings) {
        addJoint(tightenings, Double.NaN);
    }

    /**
     * Adds one joint: what every strategy that ran made of it.
     *
     * @param tightenings of one joint of one family, each strategy at most once
     * @param covariate the joint's value of the family's covariate; NaN where the family has none
     * @throws IllegalArgumentException if the tightenings are not of one joint, a strategy comes twice, or a joint that was
     *     added before is seen again (noticed for joint numbers below 8192)
     */
    public void addJoint(List<TighteningRecord> tightenings, double covariate) {
        for (int i = 0; i < tightenings.size(); i++) {
            TighteningRecord tightening = tightenings.get(i);
            requireSameJoint(tightenings.get(0), tightening);
            cell(tightening.family(), tightening.strategy()).add(tightening, covariate);
            designs[tightening.family()].add(tightening);
            for (int j = 0; j < i; j++) {
                addPair(tightenings.get(j), tightening);
            }
        }
    }

    private static void requireSameJoint(TighteningRecord first, TighteningRecord other) {
        if (first.family() != other.family() || first.joint() != other.joint()) {
            throw new IllegalArgumentException("joint " + other.joint() + " of family " + other.family()
                    + " came together with joint " + first.joint() + " of family " + first.family());
        }
    }

    private void addPair(TighteningRecord one, TighteningRecord other) {
        if (one.strategy() == other.strategy()) {
            throw new IllegalArgumentException("strategy " + one.strategy() + " came twice on joint " + one.joint());
        }
        PairAccumulator kept = pair(one.family(), one.strategy(), other.strategy());
        if (one.strategy() < other.strategy()) {
            kept.add(one, other);
        } else {
            kept.add(other, one);
        }
    }

    /** Adds all that another accumulator of an equal plan has seen; the other one is left as it is. */
    public void merge(StudyAccumulator other) {
        if (!plan.equals(other.plan)) {
            throw new IllegalArgumentException("accumulators of unlike plans cannot be merged");
        }
        for (int i = 0; i < cells.length; i++) {
            cells[i].merge(other.cells[i]);
        }
        for (int family = 0; family < designs.length; family++) {
            designs[family].merge(other.designs[family]);
            for (int pair = 0; pair < pairs[family].length; pair++) {
                pairs[family][pair].merge(other.pairs[family][pair]);
            }
        }
    }

    /** The plan it was made for. */
    public StudyPlan plan() {
        return plan;
    }

    /** Joints that a strategy has run on a family. */
    public long run(int family, int strategy) {
        return cell(family, strategy).run();
    }

    /** The rate of an event in a cell; null where no joint ran. */
    public @Nullable Rate rate(int family, int strategy, Event event) {
        CellAccumulator cell = cell(family, strategy);
        return cell.run() == 0 ? null : RatesReport.rate(cell, event, plan.methods());
    }

    /** The summary of what was added up to now. */
    public StudySummary summarise(StoppingReport stopping) {
        return summarise(stopping, List.of());
    }

    /** The same with what single joints explain. */
    StudySummary summarise(StoppingReport stopping, List<PrevailingScan> prevailingScans) {
        List<CellSummary> summaries = new ArrayList<>();
        for (int family = 0; family < designs.length; family++) {
            for (int strategy = 0; strategy < plan.strategies().size(); strategy++) {
                summaries.add(cellSummary(family, strategy, stopping));
            }
        }
        Ranking ranking = new RankingReport(this).summarise();
        return new StudySummary(
                StudySummary.FORMAT,
                plan.scenario(),
                plan.judge(),
                plan.methods(),
                plan.families(),
                plan.strategies(),
                summaries,
                new ComparisonReport(plan.methods(), comparedPairs()).summarise(),
                ranking,
                new HeadlineReport(summaries, ranking).summarise(),
                TorqueRateReport.summarise(this),
                covariateCurves(),
                prevailingScans,
                stopping);
    }

    private CellSummary cellSummary(int family, int strategy, StoppingReport stopping) {
        CellAccumulator cell = cell(family, strategy);
        long planned = stopping.finished()
                ? mostRun(family)
                : plan.families().get(family).joints();
        String reason = plan.reasonNotRun(family, strategy);
        if (reason == null && cell.run() < planned) {
            reason = stopping.reason();
        }
        if (cell.run() == 0) {
            return new CellSummary(
                    family, strategy, planned, 0, reason, List.of(), null, null, null, null, 0, List.of());
        }
        return new CellSummary(
                family,
                strategy,
                planned,
                cell.run(),
                reason,
                cell.outcomes().summarise(),
                RatesReport.summarise(cell, plan.methods()),
                quantity(Quantity.CLAMPING_TORQUE, family, cell),
                quantity(Quantity.CLAMP_FORCE, family, cell),
                EffortReport.summarise(cell, plan.methods()),
                cell.guarded(),
                cell.worst().summarise());
    }

    private long mostRun(int family) {
        long most = 0;
        for (int strategy = 0; strategy < plan.strategies().size(); strategy++) {
            most = Math.max(most, run(family, strategy));
        }
        return most == 0 ? plan.families().get(family).joints() : most;
    }

    private QuantitySummary quantity(Quantity quantity, int family, CellAccumulator cell) {
        return new QuantityReport(quantity, cell, plan.judge(), plan.methods())
                .summarise(designs[family].components(cell.quantity(quantity).keptByJoint()));
    }

    private List<ComparisonReport.Pair> comparedPairs() {
        List<ComparisonReport.Pair> found = new ArrayList<>();
        for (int family = 0; family < designs.length; family++) {
            for (int first = 0; first < plan.strategies().size(); first++) {
                for (int second = first + 1; second < plan.strategies().size(); second++) {
                    PairAccumulator kept = pair(family, first, second);
                    if (kept.inWindow().n() > 0) {
                        found.add(new ComparisonReport.Pair(family, first, second, kept));
                    }
                }
            }
        }
        return found;
    }

    private List<CovariateCurve> covariateCurves() {
        List<CovariateCurve> curves = new ArrayList<>();
        for (int family = 0; family < designs.length; family++) {
            for (int strategy = 0; strategy < plan.strategies().size(); strategy++) {
                CovariateTally tally = cell(family, strategy).covariate();
                if (tally != null && run(family, strategy) > 0) {
                    curves.add(tally.summarise(family, strategy, plan.methods()));
                }
            }
        }
        return curves;
    }

    CellAccumulator cell(int family, int strategy) {
        return cells[plan.cell(family, strategy)];
    }

    /** What is kept of two strategies, the one with the lower index first. */
    PairAccumulator pair(int family, int one, int other) {
        int low = Math.min(one, other);
        int high = Math.max(one, other);
        return pairs[family][high * (high - 1) / 2 + low];
    }
}
