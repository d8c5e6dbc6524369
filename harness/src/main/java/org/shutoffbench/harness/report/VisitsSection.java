package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.audit.AuditCount;
import org.shutoffbench.harness.audit.AuditTally;
import org.shutoffbench.harness.audit.Share;
import org.shutoffbench.harness.scenario.Costs;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.statistics.Interval;
import org.shutoffbench.harness.study.Ranking.Standing;
import org.shutoffbench.harness.study.StudySummary;
import org.shutoffbench.harness.visits.FamilyVisits;
import org.shutoffbench.harness.visits.VisitsReport;
import org.shutoffbench.harness.visits.VisitsWords;

/** One visit or two: what each strategy leaves low, and what an audit of every joint would still leave low. */
final class VisitsSection {

    private static final int JOB = 1000;

    private final StudySummary summary;
    private final Names names;
    private final Audited audited;
    private final double confidence;
    private final int family;

    /**
     * The audits of a run.
     *
     * @param scenario with its section {@code audit}
     * @param count every row of the run
     */
    record Audited(Scenario scenario, AuditCount count) {}

    VisitsSection(StudySummary summary, Names names, Audited audited) {
        this.summary = summary;
        this.names = names;
        this.audited = audited;
        this.confidence = summary.methods().confidence();
        this.family = worstFamily();
    }

    private record View(
            String heading,
            String family,
            List<Row> rows,
            String note,
            String limit,
            @Nullable Decision decision,
            List<String> tables) {}

    private record Row(
            String symbol, String name, String style, String change, String interval, String spoken, boolean changed) {}

    private record Decision(String lead, List<String> symbols, List<Line> lines) {}

    private record Line(String name, String answer) {}

    String html(Templates templates) {
        List<Row> rows = new ArrayList<>();
        for (Standing standing : summary.ranking().standings()) {
            rows.add(row(standing.strategy()));
        }
        return templates.fill(
                "visits",
                new View(
                        heading(),
                        names.joints(family),
                        rows,
                        Printed.level(confidence),
                        Printed.fixed(audited.count().audit().lowestNm(family), 1),
                        decision(),
                        List.of(table().html(templates))));
    }

    private AuditTally tally(int ofFamily, int strategy) {
        return audited.count().tally(ofFamily, strategy);
    }

    /** The family on which an audit leaves most; where it leaves nothing anywhere, the one on which the tools do. */
    private int worstFamily() {
        int worst = 0;
        double most = -1;
        for (int f = 0; f < summary.families().size(); f++) {
            for (int s = 0; s < summary.strategies().size(); s++) {
                AuditTally tally = tally(f, s);
                double left = counted(tally.stillLow()) + 1e-6 * counted(tally.leftLow());
                if (left > most) {
                    most = left;
                    worst = f;
                }
            }
        }
        return worst;
    }

    private static double counted(Share share) {
        return share.n() == 0 ? 0 : share.estimate();
    }

    private String heading() {
        int most = 0;
        for (int s = 0; s < summary.strategies().size(); s++) {
            if (weight(s) > weight(most)) {
                most = s;
            }
        }
        Share left = tally(family, most).leftLow();
        Share still = tally(family, most).stillLow();
        String joints = names.joints(family);
        if (left.count() == 0) {
            return "The tools called no low joint done: an audit finds nothing to put right, and takes its time";
        }
        if (still.count() == 0) {
            return "An audit would find the " + Printed.countOf(left.count(), left.n()) + " " + joints + " that "
                    + names.strategy(most) + " left low";
        }
        return "An audit would still leave " + Printed.percent(still.estimate()) + " % of " + joints + " low after "
                + names.strategy(most) + ", which left " + Printed.percent(left.estimate()) + " % low";
    }

    private double weight(int strategy) {
        return counted(tally(family, strategy).stillLow())
                + 1e-6 * counted(tally(family, strategy).leftLow());
    }

    private Row row(int strategy) {
        Share left = tally(family, strategy).leftLow();
        Share still = tally(family, strategy).stillLow();
        Interval interval = still.interval(confidence);
        String change = Printed.percent(counted(left)) + " \u2192 " + Printed.percent(counted(still)) + " %";
        String bounds = Printed.percent(interval.low()) + "\u2013" + Printed.percent(interval.high());
        return new Row(
                Symbols.svg(names.mark(strategy)),
                names.strategy(strategy),
                String.format(
                        Locale.ROOT,
                        "--hue:var(--hue-%d);--from:%.3f%%;--to:%.3f%%;--low:%.3f%%;--high:%.3f%%",
                        names.mark(strategy).hue(),
                        100 * counted(left),
                        100 * counted(still),
                        100 * interval.low(),
                        100 * interval.high()),
                change,
                bounds,
                Printed.percent(counted(left)) + " % left low by the tool, " + Printed.percent(counted(still))
                        + " % after an audit, interval " + bounds + " %",
                left.count() != still.count());
    }

    private @Nullable Decision decision() {
        Costs costs = audited.scenario().costs();
        if (costs == null) {
            return null;
        }
        List<Line> lines = new ArrayList<>();
        List<String> symbols = List.of();
        for (Standing standing : summary.ranking().standings()) {
            VisitsWords words = new VisitsWords(report(costs, standing.strategy()));
            lines.add(new Line(names.strategy(standing.strategy()), words.answer()));
            symbols = words.symbols();
        }
        return new Decision("Can the audit be left out?", symbols, lines);
    }

    private VisitsReport report(Costs costs, int strategy) {
        return VisitsReport.of(audited.scenario(), costs, audited.count(), names.strategy(strategy), strategy, JOB);
    }

    private PlainTable table() {
        Costs costs = audited.scenario().costs();
        List<List<String>> rows = new ArrayList<>();
        for (Standing standing : summary.ranking().standings()) {
            for (int f = 0; f < summary.families().size(); f++) {
                AuditTally tally = tally(f, standing.strategy());
                List<String> cells = new ArrayList<>(List.of(
                        names.strategy(standing.strategy()),
                        names.family(f),
                        withInterval(tally.leftLow()),
                        withInterval(tally.stillLow()),
                        withInterval(tally.detected()),
                        withInterval(tally.falselyRejected())));
                if (costs != null) {
                    FamilyVisits visits =
                            report(costs, standing.strategy()).families().get(f);
                    cells.add(VisitsWords.threshold(visits.threshold()));
                    cells.add(VisitsWords.threshold(visits.perfect()));
                    cells.add(visits.answer().title());
                }
                rows.add(cells);
            }
        }
        List<String> heads = new ArrayList<>(List.of(
                "Strategy",
                "family",
                "left low by the tool",
                "left low after an audit",
                "D, detected",
                "r, falsely rejected"));
        if (costs != null) {
            heads.addAll(List.of("p*, %", "p* at D = 1, %", "answer"));
        }
        return new PlainTable(
                "Table of audits, all families",
                "% of joints run; D: of the low joints called done; r: of the other joints called done; intervals in brackets",
                heads,
                rows);
    }

    private String withInterval(Share share) {
        if (share.n() == 0) {
            return "no such joint";
        }
        Interval interval = share.interval(confidence);
        return Printed.percent(share.estimate()) + " (" + Printed.percent(interval.low()) + "\u2013"
                + Printed.percent(interval.high()) + ")";
    }
}
