package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.List;
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
        }
        if (!summary.torqueRatePairs().isEmpty()) {
            tables.add(torqueRate());
        }
        return tables;
    }

    private PlainTable capability(ShownQuantity shown) {
        List<List<String>> rows = new ArrayList<>();
        for (int f = 0; f < summary.families().size(); f++) {
            for (Standing standing : summary.ranking().standings()) {
                QuantitySummary q = shown.of(summary.cell(f, standing.strategy()));
                if (q != null) {
                    rows.add(row(shown, names.family(f) + ", " + names.strategy(standing.strategy()), q));
                }
            }
        }
        return new PlainTable(
                "Table of capability and variance of " + shown.quantity.title(),
                "Capability in percentile form, intervals in brackets; variance of " + shown.quantity.title() + " in ("
                        + shown.unit + ")\u00b2. A rate is never derived from an index.",
                List.of(
                        "Family, strategy",
                        "lag-1 autocorrelation",
                        "capability, whole window",
                        "capability, worst side",
                        "why none",
                        "why this tolerance interval",
                        "variance by lot",
                        "by piece",
                        "by repeat"),
                rows);
    }

    private static List<String> row(ShownQuantity shown, String head, QuantitySummary q) {
        Double lag1 = q.lag1();
        Capability capability = q.capability();
        String withheld = q.capabilityWithheld();
        Tolerance tolerance = q.tolerance();
        Variance variance = q.variance();
        return List.of(
                head,
                lag1 == null ? "none: too few joints, or nothing varies" : Printed.fixed(lag1.doubleValue(), 3),
                capability == null ? "none" : index(capability.spread()),
                capability == null ? "none" : index(capability.worstSide()),
                withheld == null ? "" : withheld,
                tolerance == null ? "" : tolerance.reason(),
                variance == null ? "not told apart" : component(shown, variance.lot()),
                variance == null ? "not told apart" : component(shown, variance.piece()),
                variance == null ? "not told apart" : component(shown, variance.repeat()));
    }

    private static String index(Estimate index) {
        return Printed.fixed(index.value(), 2) + " (" + Printed.fixed(index.low(), 2) + " to "
                + Printed.fixed(index.high(), 2) + ")";
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
