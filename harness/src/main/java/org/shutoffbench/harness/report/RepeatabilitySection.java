package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.report.ChartData.Curve;
import org.shutoffbench.harness.report.ChartData.FamilyCurves;
import org.shutoffbench.harness.report.ChartData.QuantityPanels;
import org.shutoffbench.harness.study.Estimate;
import org.shutoffbench.harness.study.QuantitySummary;
import org.shutoffbench.harness.study.QuantitySummary.Tolerance;
import org.shutoffbench.harness.study.Ranking.Standing;
import org.shutoffbench.harness.study.StudySummary;

/** How repeatable: cumulative shares and tolerance intervals per family, for clamping torque and for clamp force. */
final class RepeatabilitySection {

    private static final double AXIS_OVER_TARGET = 1.42;

    private final StudySummary summary;
    private final Names names;

    RepeatabilitySection(StudySummary summary, Names names) {
        this.summary = summary;
        this.names = names;
    }

    /** What its template reads. */
    record View(
            String heading,
            String note,
            List<Choice> quantities,
            List<String> settings,
            List<Panel> panels,
            List<String> tables) {

        boolean hasSettings() {
            return !settings.isEmpty();
        }
    }

    /** One choice of a switch. */
    record Choice(int value, String title) {}

    record Panel(int index, String title, String values) {}

    String html(Templates templates) {
        List<Panel> panels = new ArrayList<>();
        for (int f = 0; f < summary.families().size(); f++) {
            panels.add(new Panel(f, names.family(f), inWords(f)));
        }
        List<String> tables = new ArrayList<>();
        for (ShownQuantity shown : ShownQuantity.values()) {
            tables.add(table(shown).html(templates));
        }
        for (PlainTable table : new CapabilityTables(summary, names).all()) {
            tables.add(table.html(templates));
        }
        return templates.fill(
                "repeatability",
                new View(
                        RepeatabilityHeading.of(summary, names),
                        note(),
                        List.of(new Choice(0, "clamping torque"), new Choice(1, "clamp force")),
                        names.settings(),
                        panels,
                        tables));
    }

    List<QuantityPanels> panels() {
        List<QuantityPanels> all = new ArrayList<>();
        for (ShownQuantity shown : ShownQuantity.values()) {
            all.add(panels(shown));
        }
        return all;
    }

    private QuantityPanels panels(ShownQuantity shown) {
        boolean judged = summary.judge().quantity() == shown.quantity;
        Double target = judged ? summary.judge().target() * shown.factor : null;
        double typical = target == null ? leadersMedian(shown) * shown.factor : target;
        Scale scale = Scale.reaching(AXIS_OVER_TARGET * typical, target);
        List<FamilyCurves> families = new ArrayList<>();
        for (int f = 0; f < summary.families().size(); f++) {
            families.add(new FamilyCurves(names.family(f), curves(shown, f)));
        }
        return new QuantityPanels(
                shown.quantity.title(),
                shown.unit,
                target,
                judged ? summary.judge().lowest() * shown.factor : null,
                judged ? summary.judge().highest() * shown.factor : null,
                scale.max(),
                scale.ticks(),
                families);
    }

    private List<Curve> curves(ShownQuantity shown, int family) {
        List<Curve> curves = new ArrayList<>();
        for (Standing standing : summary.ranking().standings()) {
            QuantitySummary q = shown.of(summary.cell(family, standing.strategy()));
            if (q != null) {
                curves.add(curve(shown, standing.strategy(), q));
            }
        }
        return curves;
    }

    private static Curve curve(ShownQuantity shown, int strategy, QuantitySummary q) {
        List<List<Double>> points = new ArrayList<>();
        points.add(ChartData.numbers(q.smallest() * shown.factor, 0));
        for (QuantitySummary.Step step : q.ecdf()) {
            points.add(ChartData.numbers(step.value() * shown.factor, 100 * step.share()));
        }
        Tolerance t = q.tolerance();
        List<Double> tolerance = t == null || t.low() == null || t.high() == null
                ? null
                : ChartData.numbers(t.low() * shown.factor, t.high() * shown.factor);
        return new Curve(strategy, points, tolerance, median(q) * shown.factor);
    }

    private static double median(QuantitySummary q) {
        for (QuantitySummary.Point point : q.points()) {
            if (point.percent() == 50 && point.value().value() != null) {
                return point.value().value();
            }
        }
        return q.ecdf().stream()
                .filter(step -> step.share() >= 0.5)
                .mapToDouble(QuantitySummary.Step::value)
                .findFirst()
                .orElse(q.greatest());
    }

    private double leadersMedian(ShownQuantity shown) {
        double greatest = 0;
        for (Standing standing : summary.ranking().standings()) {
            for (int f = 0; f < summary.families().size(); f++) {
                QuantitySummary q = shown.of(summary.cell(f, standing.strategy()));
                greatest = q == null ? greatest : Math.max(greatest, median(q));
            }
            if (greatest > 0) {
                return greatest;
            }
        }
        return 1 / shown.factor;
    }

    private String note() {
        String judged = summary.judge().quantity().title();
        return "Each line rises from 0 to 100 % of joints; the steeper, the more repeatable. The shaded band is the window for "
                + judged + ". Bars below: the range that holds "
                + Printed.level(summary.methods().toleranceContent()) + " % of joints with "
                + Printed.level(summary.methods().toleranceConfidence())
                + " % confidence (a tolerance interval), the mark at the median; a bar inside the band would pass.";
    }

    private String inWords(int family) {
        List<String> parts = new ArrayList<>();
        for (ShownQuantity shown : ShownQuantity.values()) {
            List<String> lines = new ArrayList<>();
            for (Curve curve : curves(shown, family)) {
                String bar = curve.tolerance() == null
                        ? "tolerance interval open"
                        : "tolerance interval "
                                + Printed.fixed(curve.tolerance().get(0), 1) + " to "
                                + Printed.fixed(curve.tolerance().get(1), 1);
                lines.add(
                        names.strategy(curve.strategy()) + " median " + Printed.fixed(curve.median(), 1) + ", " + bar);
            }
            parts.add(shown.quantity.title() + ", " + shown.unit + ": " + String.join("; ", lines) + ".");
        }
        return String.join(" ", parts);
    }

    private PlainTable table(ShownQuantity shown) {
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
                "Table of " + shown.quantity.title() + " by family and strategy",
                shown.quantity.title() + " in " + shown.unit + "; intervals in brackets",
                List.of(
                        "Family, strategy",
                        "joints",
                        "mean",
                        "sd",
                        "0.135 % point",
                        "median",
                        "99.865 % point",
                        "least and greatest seen",
                        "tolerance interval",
                        "kind"),
                rows);
    }

    private static List<String> row(ShownQuantity shown, String head, QuantitySummary q) {
        Tolerance t = q.tolerance();
        return List.of(
                head,
                Long.toString(q.n()),
                estimate(shown, q.mean().value(), q.mean().low(), q.mean().high()),
                estimate(shown, q.sd().value(), q.sd().low(), q.sd().high()),
                point(shown, q, 0),
                point(shown, q, 1),
                point(shown, q, 2),
                shown.print(q.smallest()) + ", " + shown.print(q.greatest()),
                t == null ? Printed.OPEN : end(shown, t.low()) + " to " + end(shown, t.high()),
                t == null ? "" : t.kind());
    }

    /** A percentage point with its interval; an end that too few joints leave open is called so. */
    private static String point(ShownQuantity shown, QuantitySummary q, int index) {
        if (index >= q.points().size()) {
            return Printed.OPEN;
        }
        Estimate point = q.points().get(index).value();
        return estimate(shown, point.value(), point.low(), point.high());
    }

    private static String estimate(
            ShownQuantity shown, @Nullable Double value, @Nullable Double low, @Nullable Double high) {
        return end(shown, value) + " (" + end(shown, low) + " to " + end(shown, high) + ")";
    }

    private static String end(ShownQuantity shown, @Nullable Double value) {
        return value == null ? Printed.OPEN : shown.print(value);
    }
}
