package org.shutoffbench.harness.study;

import java.util.ArrayList;
import java.util.List;
import org.shutoffbench.harness.statistics.ExactMoments;
import org.shutoffbench.harness.statistics.ExactSample;
import org.shutoffbench.harness.statistics.NormalIntervals;
import org.shutoffbench.harness.statistics.OrderStatistics;

/** Turns blows and times of a cell into their summary. */
final class EffortReport {

    private static final double[] POINTS = {0, 0.05, 0.25, 0.5, 0.75, 0.95, 1};

    private EffortReport() {}

    static Effort summarise(CellAccumulator cell, Methods methods) {
        return new Effort(
                mean(cell.blows().moments(), methods),
                points(cell.blows()),
                mean(cell.times().moments(), methods),
                points(cell.times()),
                mean(cell.runOn(), methods));
    }

    private static Estimate mean(ExactMoments moments, Methods methods) {
        if (moments.n() < 2) {
            return new Estimate(moments.mean(), null, null);
        }
        double standardError = moments.standardDeviation() / Math.sqrt((double) moments.n());
        return QuantityReport.estimate(
                moments.mean(),
                NormalIntervals.mean(moments.mean(), standardError, moments.n() - 1.0, methods.confidence()));
    }

    private static List<QuantitySummary.Point> points(ExactSample sample) {
        OrderStatistics order = sample.orderStatistics();
        List<QuantitySummary.Point> found = new ArrayList<>();
        for (double p : POINTS) {
            found.add(
                    new QuantitySummary.Point(Math.round(100 * p) * 1.0, new Estimate(order.quantile(p), null, null)));
        }
        return found;
    }
}
