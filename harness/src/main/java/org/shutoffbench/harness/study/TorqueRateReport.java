package org.shutoffbench.harness.study;

import java.util.ArrayList;
import java.util.List;
import org.shutoffbench.harness.statistics.TorqueRateFigures;

/** Turns the hard and the soft family into torque-rate pairs, for both quantities. */
final class TorqueRateReport {

    private TorqueRateReport() {}

    static List<TorqueRatePair> summarise(StudyAccumulator study) {
        StudyPlan.TorqueRateFamilies families = study.plan().hardAndSoft();
        List<TorqueRatePair> pairs = new ArrayList<>();
        for (int strategy = 0;
                families != null && strategy < study.plan().strategies().size();
                strategy++) {
            CellAccumulator hard = study.cell(families.hard(), strategy);
            CellAccumulator soft = study.cell(families.soft(), strategy);
            for (Quantity quantity : Quantity.values()) {
                if (hard.run() > 1 && soft.run() > 1) {
                    TorqueRateFigures figures = TorqueRateFigures.of(
                            hard.quantity(quantity).moments().mean(),
                            hard.quantity(quantity).moments().standardDeviation(),
                            soft.quantity(quantity).moments().mean(),
                            soft.quantity(quantity).moments().standardDeviation(),
                            study.plan().methods().torqueRateSigmas());
                    pairs.add(new TorqueRatePair(
                            strategy,
                            quantity,
                            families.hard(),
                            families.soft(),
                            QuantityReport.finite(figures.hardScatterPercent()),
                            QuantityReport.finite(figures.softScatterPercent()),
                            QuantityReport.finite(figures.meanShiftPercent()),
                            figures.combinedMean(),
                            QuantityReport.finite(figures.combinedScatterPercent())));
                }
            }
        }
        return pairs;
    }
}
