package org.shutoffbench.harness.study;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.run.Outcome;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.statistics.AlphaSpending;
import org.shutoffbench.harness.statistics.KimNelson;

/**
 * Looks at the joints of a run while they come, each time their number has doubled, and says when its rule is met.
 *
 * <p>Looking often and stopping when it suits makes ordinary intervals too short. The error is therefore spent over the
 * looks (Pocock's spending, union bound): the intervals of a look use what is left for it, and all looks together keep the
 * confidence that was asked for (source: Lan1983). Selection of the best is fully sequential (source: Kim2001).
 */
final class Looks {

    private static final int FIRST = 64;
    private static final AlphaSpending SPENDING = AlphaSpending.POCOCK;

    private final StopRule rule;
    private final StudyPlan plan;
    private final int most;
    private final @Nullable KimNelson selection;
    private final double[] inWindow;
    private int families;
    private int looks;

    /** @param most joints in every family where the rule is not met before */
    Looks(StopRule rule, StudyPlan plan, int most) {
        this.rule = rule;
        this.plan = plan;
        this.most = most;
        int strategies = plan.strategies().size();
        this.inWindow = new double[strategies];
        if (rule instanceof StopRule.DecidedRanking ranking && strategies > 1) {
            double once = 1.0 / FIRST;
            this.selection = new KimNelson(
                    strategies,
                    FIRST,
                    1 - plan.methods().confidence(),
                    ranking.lead(),
                    once * (1 - once) / plan.families().size());
        } else {
            this.selection = null;
        }
    }

    /** Joints in every family at a look, from 0. */
    int at(int look) {
        return rule instanceof StopRule.FixedNumber ? most : (int) Math.min(most, (long) FIRST << Math.min(look, 31));
    }

    /** Takes what every strategy made of one joint; families of one joint number come one after the other. */
    void take(List<TighteningRecord> joint) {
        if (selection == null) {
            return;
        }
        for (TighteningRecord r : joint) {
            inWindow[r.strategy()] +=
                    r.outcome() == Outcome.IN_WINDOW ? 1.0 / plan.families().size() : 0;
        }
        if (++families == plan.families().size()) {
            selection.observe(inWindow);
            java.util.Arrays.fill(inWindow, 0);
            families = 0;
        }
    }

    /** Confidence of every interval at a look. */
    double confidence(int look) {
        if (rule instanceof StopRule.FixedNumber) {
            return plan.methods().confidence();
        }
        double before = look == 0 ? 0 : (double) at(look - 1) / most;
        return 1
                - SPENDING.atLook(
                        before, (double) at(look) / most, 1 - plan.methods().confidence());
    }

    /** Whether the run ends at this look, and why; null where it goes on. */
    @Nullable
    StoppingReport look(int look, StudyAccumulator counts) {
        looks = look + 1;
        int n = at(look);
        if (rule instanceof StopRule.FixedNumber) {
            return new StoppingReport(rule.title(), n + " joints in every family, fixed before the run", 1, true);
        }
        String met = met(counts, confidence(look));
        if (met != null) {
            return report(rule.title(), met + " after " + n + " joints in every family", look);
        }
        return n < most
                ? null
                : report(
                        "largest number of joints",
                        most + " joints in every family were run without meeting the rule: " + rule.title(),
                        look);
    }

    private StoppingReport report(String title, String reason, int look) {
        String intervals = String.format(
                Locale.ROOT,
                "; %d looks, each interval at %.3f %% so that all looks together keep %.0f %%",
                looks,
                100 * confidence(look),
                100 * plan.methods().confidence());
        return new StoppingReport(title, reason + intervals, looks, true);
    }

    private @Nullable String met(StudyAccumulator counts, double confidence) {
        if (rule instanceof StopRule.NarrowIntervals narrow) {
            return widest(counts, confidence) <= 2 * narrow.halfWidth() ? "every interval was narrow enough" : null;
        }
        return decided();
    }

    private @Nullable String decided() {
        if (selection == null) {
            return "one strategy is best alone";
        }
        List<Integer> left = selection.survivors();
        if (left.size() > 1) {
            return null;
        }
        Strategy best = plan.strategies().get(left.get(0));
        return best.name() + " (" + best.settings().title() + ") was found best";
    }

    private double widest(StudyAccumulator counts, double confidence) {
        double widest = 0;
        StudyAccumulator at = counts.seenAs(plan.at(confidence));
        for (int family = 0; family < plan.families().size(); family++) {
            for (int strategy = 0; strategy < plan.strategies().size(); strategy++) {
                for (Event event : List.of(Event.IN_WINDOW, Event.SILENT_MISS)) {
                    Rate rate = at.rate(family, strategy, event);
                    widest = rate == null ? 1 : Math.max(widest, rate.high() - rate.low());
                }
            }
        }
        return widest;
    }
}
