package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.shutoffbench.harness.study.CellSummary;
import org.shutoffbench.harness.study.Family;
import org.shutoffbench.harness.study.Methods;
import org.shutoffbench.harness.study.Ranking;
import org.shutoffbench.harness.study.Strategy;
import org.shutoffbench.harness.study.StudySummary;

/** What the numbers are: intervals, comparisons, settings, populations, gaps, seed and versions; and the caution. */
final class MethodSection {

    /** A term and what there is to say about it. */
    record Entry(String term, String text) {}

    private record View(List<Entry> entries, String caution, List<String> tables) {}

    private final StudySummary summary;
    private final Names names;
    private final RunFacts facts;

    MethodSection(StudySummary summary, Names names, RunFacts facts) {
        this.summary = summary;
        this.names = names;
        this.facts = facts;
    }

    String html(Templates templates) {
        return templates.fill(
                "method",
                new View(
                        entries(),
                        Caution.TEXT,
                        facts.tables().stream().map(t -> t.html(templates)).toList()));
    }

    private List<Entry> entries() {
        Methods m = summary.methods();
        List<Entry> entries = new ArrayList<>();
        entries.add(new Entry(
                "Judged by",
                summary.judge().quantity().title() + ", 0.5 s after the stop command acts, before embedding; window "
                        + window() + ", edges included"));
        entries.add(new Entry(
                "Intervals", whole(m.confidence()) + " %, " + m.rates().title() + independence()));
        entries.add(new Entry(
                "Tolerance",
                "holds " + whole(m.toleranceContent()) + " % of joints with " + whole(m.toleranceConfidence())
                        + " % confidence; its kind stands in the tables"));
        entries.add(new Entry(
                "Comparisons",
                "paired on the same joints, on the worst families of both strategies; bounds for the difference (Holm),"
                        + " not overlap of two intervals"));
        acrossFamilies(entries);
        entries.add(new Entry("Settings", settings()));
        for (Family family : summary.families()) {
            entries.add(new Entry(family.name(), population(family)));
        }
        entries.add(new Entry("Motion", motion()));
        entries.add(new Entry(
                "Stopping",
                summary.stopping().rule() + ": " + summary.stopping().reason()));
        gaps(entries);
        for (RunFacts.Fact fact : facts.provenance()) {
            entries.add(new Entry(fact.term(), fact.text()));
        }
        return entries;
    }

    private void acrossFamilies(List<Entry> entries) {
        Ranking.Friedman test = summary.ranking().friedman();
        if (test != null) {
            entries.add(new Entry(
                    "Across families",
                    "Friedman\u2019s test that all strategies do alike, families as blocks: statistic "
                            + Printed.fixed(test.statistic(), 2) + " on " + test.degreesOfFreedom()
                            + " degrees of freedom, p "
                            + (test.p() < 0.0001 ? "below 0.0001" : Printed.fixed(test.p(), 4))
                            + (test.exact() ? ", exact" : ", by chi-square")));
        }
    }

    private String window() {
        boolean force = summary.judge().quantity() == org.shutoffbench.harness.study.Quantity.CLAMP_FORCE;
        double factor = force ? 1e-3 : 1;
        return Printed.fixed(summary.judge().lowest() * factor, 1) + " to "
                + Printed.fixed(summary.judge().highest() * factor, 1) + (force ? " kN" : " N\u00b7m");
    }

    private String independence() {
        boolean clustered = summary.families().stream().anyMatch(f -> f.lots() < f.joints() || f.tools() < f.joints());
        return clustered
                ? "; families with few lots or few tools by cluster, with the design effect in summary.json"
                : "; each joint its own lot and tool";
    }

    private String motion() {
        long run = summary.cells().stream().mapToLong(CellSummary::run).sum();
        return "from event to event, exact between them; " + Printed.countOf(summary.guarded(), run)
                + " tightenings had events that could not be brought in order and were stepped over (guard_steps in outcomes.csv)";
    }

    private String settings() {
        List<String> everyName =
                summary.strategies().stream().map(Strategy::name).distinct().toList();
        List<String> lines = new ArrayList<>();
        for (Strategy.SettingsKind kind : Strategy.SettingsKind.values()) {
            List<String> of = summary.strategies().stream()
                    .filter(s -> s.settings() == kind)
                    .map(Strategy::name)
                    .toList();
            if (!of.isEmpty()) {
                lines.add(kind.title() + " (" + meaning(kind) + "): "
                        + (of.equals(everyName) ? "every strategy" : String.join(", ", of)));
            }
        }
        return String.join(". ", lines) + ". A run never tunes.";
    }

    /** What the settings tables of this study are, in a line. */
    static String settingsKey(StudySummary summary) {
        return Arrays.stream(Strategy.SettingsKind.values())
                .filter(kind -> summary.strategies().stream().anyMatch(s -> s.settings() == kind))
                .map(kind -> kind.title() + ": "
                        + switch (kind) {
                            case HOME -> "settings tuned on one family only";
                            case ALL -> "settings tuned on all families";
                            case GIVEN -> "settings as the scenario writes them";
                        })
                .collect(Collectors.joining("; "));
    }

    private static String meaning(Strategy.SettingsKind kind) {
        return switch (kind) {
            case HOME -> "tuned on one family, as a user sets a tool up on one joint";
            case ALL -> "tuned on all families pooled";
            case GIVEN -> "as written in the scenario";
        };
    }

    private static String population(Family family) {
        String lots = family.lots() == family.joints() ? "each its own lot" : family.lots() + " lots";
        String tools = family.tools() == family.joints() ? "each its own tool" : family.tools() + " tools";
        return (family.note().isEmpty() ? "" : Printed.unit(family.note()) + "; ") + family.joints() + " joints, "
                + lots + ", " + tools
                + (family.repeats() > 1 ? ", each piece tightened " + family.repeats() + " times" : "");
    }

    private void gaps(List<Entry> entries) {
        for (CellSummary cell : summary.cells()) {
            if (!cell.complete()) {
                String reason = cell.reason() == null ? "no reason recorded" : cell.reason();
                String what = cell.run() == 0
                        ? ""
                        : ", after " + cell.run() + " of " + cell.planned() + " joints; shown with its own interval";
                entries.add(new Entry(
                        "Not run",
                        names.strategy(cell.strategy()) + " on " + names.family(cell.family()) + ": " + reason + what));
            }
        }
    }

    private static String whole(double share) {
        return Printed.level(share);
    }
}
