package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.study.Estimate;
import org.shutoffbench.harness.study.QuantitySummary;
import org.shutoffbench.harness.study.QuantitySummary.Capability;
import org.shutoffbench.harness.study.QuantitySummary.Tolerance;
import org.shutoffbench.harness.study.QuantitySummary.Variance;
import org.shutoffbench.harness.study.Ranking.Standing;
import org.shutoffbench.harness.study.StudySummary;
import org.shutoffbench.harness.study.TorqueRatePair;

/**
 * Tables for who asks for capability: the correlation of neighbours first, then the index or why none is printed; why a
 * tolerance interval is of its kind; where the variance comes from; scatter on a hard and a soft family together.
 */
final class CapabilityTables {

    private final StudySummary summary;
    private final Names names;

    CapabilityTables(StudySummary summary, Names names) {
        this.summary = summary;
        this.names = names;
    }

    List<PlainTable> all() {
        List<PlainTable> tables = new ArrayList<>();
        for (ShownQuantity shown : ShownQuantity.values()) {
            tables.add(capability(shown));
            tables.add(variance(shown));
        }
        if (!summary.torqueRatePairs().isEmpty()) {
            tables.add(torqueRate());
        }
        return tables;
    }

    private PlainTable capability(ShownQuantity shown) {
        return new PlainTable(
                "Table of capability of " + shown.quantity.title(),
                "Capability in percentile form, intervals in brackets. A rate is never derived from an index.",
                List.of(
                        "Family, strategy",
                        "lag-1 autocorrelation",
                        "capability, whole window",
                        "capability, worst side",
                        "why none",
                        "why this tolerance interval"),
                rows(shown, CapabilityTables::capability));
    }

    private PlainTable variance(ShownQuantity shown) {
        return new PlainTable(
                "Table of the variance of " + shown.quantity.title(),
                "Variance of " + shown.quantity.title() + " in (" + shown.unit + ")\u00b2",
                List.of("Family, strategy", "by lot", "by piece", "by repeat"),
                rows(shown, q -> variance(shown, q.variance())));
    }

    private List<List<String>> rows(ShownQuantity shown, Function<QuantitySummary, List<String>> cells) {
        List<List<String>> rows = new ArrayList<>();
        for (int f = 0; f < summary.families().size(); f++) {
            for (Standing standing : summary.ranking().standings()) {
                QuantitySummary q = shown.of(summary.cell(f, standing.strategy()));
                if (q != null) {
                    List<String> row =
                            new ArrayList<>(List.of(names.family(f) + ", " + names.strategy(standing.strategy())));
                    row.addAll(cells.apply(q));
                    rows.add(row);
                }
            }
        }
        return rows;
    }

    private static List<String> capability(QuantitySummary q) {
        Double lag1 = q.lag1();
        Capability capability = q.capability();
        String withheld = q.capabilityWithheld();
        Tolerance tolerance = q.tolerance();
        return List.of(
                lag1 == null ? "none: too few joints, or nothing varies" : Printed.fixed(lag1.doubleValue(), 3),
                capability == null ? "none" : index(capability.spread()),
                capability == null ? "none" : index(capability.worstSide()),
                withheld == null ? "" : withheld,
                tolerance == null ? "" : tolerance.reason());
    }

    private static List<String> variance(ShownQuantity shown, @Nullable Variance variance) {
        return variance == null
                ? List.of("not told apart", "not told apart", "not told apart")
                : List.of(
                        component(shown, variance.lot()),
                        component(shown, variance.piece()),
                        component(shown, variance.repeat()));
    }

    private static String index(Estimate index) {
        return Printed.withInterval(index.value(), index.low(), index.high(), 2);
    }

    private static String component(ShownQuantity shown, @Nullable Double variance) {
        return variance == null ? "not told apart" : Printed.fixed(variance * shown.factor * shown.factor, 3);
    }

    private PlainTable torqueRate() {
        List<List<String>> rows = new ArrayList<>();
        for (TorqueRatePair pair : summary.torqueRatePairs()) {
            ShownQuantity shown =
                    pair.quantity() == ShownQuantity.FORCE.quantity ? ShownQuantity.FORCE : ShownQuantity.TORQUE;
            rows.add(List.of(
                    names.strategy(pair.strategy()) + ", " + names.family(pair.hardFamily()) + " and "
                            + names.family(pair.softFamily()),
                    Printed.fixed(pair.hardScatterPercent(), 1),
                    Printed.fixed(pair.softScatterPercent(), 1),
                    Printed.fixed(pair.meanShiftPercent(), 1),
                    shown.print(pair.combinedMean()) + " " + shown.unit,
                    Printed.fixed(pair.combinedScatterPercent(), 1)));
        }
        return new PlainTable(
                "Table of hard and soft joints together, in ISO 5393 style",
                "Scatter and shift in %, scatter over "
                        + Printed.fixed(2 * summary.methods().torqueRateSigmas(), 1)
                        + " standard deviations. The standard excludes impact tools; buyers ask for the figures all the same.",
                List.of(
                        "Strategy, families",
                        "scatter, hard",
                        "scatter, soft",
                        "mean shift",
                        "combined mean",
                        "combined scatter"),
                rows);
    }
}
