package org.shutoffbench.harness.study;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a study sets out to do, known before the first joint is run.
 *
 * @param scenario name of the scenario
 * @param judge what counts as in the window
 * @param families in the order of the scenario; a family's index is its place here
 * @param strategies in the order of the scenario; a strategy's index is its place here. One strategy under two settings
 *     tables is two entries
 * @param notRun cells that cannot be run, with the reason
 * @param hardAndSoft the two families of the torque-rate pair, or null where the scenario names none
 * @param methods which intervals, at which confidence
 */
public record StudyPlan(
        String scenario,
        Judge judge,
        List<Family> families,
        List<Strategy> strategies,
        List<NotRun> notRun,
        @Nullable TorqueRateFamilies hardAndSoft,
        Methods methods) {

    public StudyPlan {
        families = List.copyOf(families);
        strategies = List.copyOf(strategies);
        notRun = List.copyOf(notRun);
        if (families.isEmpty() || strategies.isEmpty()) {
            throw new IllegalArgumentException("a study needs a family and a strategy");
        }
    }

    /** The same plan with every interval at another confidence. */
    StudyPlan at(double confidence) {
        Methods other = new Methods(
                confidence,
                methods.rates(),
                methods.toleranceContent(),
                methods.toleranceConfidence(),
                methods.torqueRateSigmas());
        return new StudyPlan(scenario, judge, families, strategies, notRun, hardAndSoft, other);
    }

    /** Number of cells: every strategy on every family. */
    public int cells() {
        return families.size() * strategies.size();
    }

    /** Place of a cell in family-major order. */
    public int cell(int family, int strategy) {
        return family * strategies.size() + strategy;
    }

    /** Why a cell cannot be run, or null where it can. */
    public @Nullable String reasonNotRun(int family, int strategy) {
        for (NotRun cell : notRun) {
            if (cell.family() == family && cell.strategy() == strategy) {
                return cell.reason();
            }
        }
        return null;
    }

    /**
     * A cell that cannot be run.
     *
     * @param reason in words, such as "needs a torque channel"
     */
    public record NotRun(int family, int strategy, String reason) {}

    /** Indices of the families that stand for a hard and for a soft joint. */
    public record TorqueRateFamilies(int hard, int soft) {}
}
