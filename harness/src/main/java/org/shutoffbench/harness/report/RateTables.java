package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.shutoffbench.harness.study.CellSummary;
import org.shutoffbench.harness.study.PairedComparison;
import org.shutoffbench.harness.study.Ranking.Standing;
import org.shutoffbench.harness.study.Rates;
import org.shutoffbench.harness.study.StudySummary;

/** The tables behind the matrix: every rate with its interval, what it cost, and every pair compared. */
final class RateTables {

    /** As many rows as fit on two pages of paper. */
    private static final int FEW_ROWS = 80;

    private final StudySummary summary;
    private final Names names;

    RateTables(StudySummary summary, Names names) {
        this.summary = summary;
        this.names = names;
    }

    PlainTable rates() {
        List<List<String>> rows = new ArrayList<>();
        forEachCell((head, cell) -> {
            Rates r = cell.rates();
            if (r == null) {
                List<String> row = new ArrayList<>(List.of(head, "0 of " + cell.planned(), reason(cell)));
                while (row.size() < 13) {
                    row.add("");
                }
                rows.add(row);
                return;
            }
            rows.add(List.of(
                    head,
                    cell.run() + " of " + cell.planned(),
                    Printed.withInterval(r.inWindow()),
                    Printed.withInterval(r.silentMiss()),
                    Printed.withInterval(r.falseStop()),
                    Printed.withInterval(r.falseAlarm()),
                    Printed.withInterval(r.undecided()),
                    Printed.withInterval(r.reached()),
                    Printed.withInterval(r.unseated()),
                    Printed.withInterval(r.low()),
                    Printed.withInterval(r.high()),
                    Printed.withInterval(r.yielded()),
                    Printed.withInterval(r.fractured())));
        });
        return new PlainTable(
                "Table of all rates, with false stops, false alarms and undecided",
                "% of joints run; intervals in brackets",
                List.of(
                        "Family, strategy",
                        "joints",
                        "in window",
                        "silent miss",
                        "false stop",
                        "false alarm",
                        "undecided",
                        "called done",
                        "unseated",
                        "low",
                        "high",
                        "yielded",
                        "fractured"),
                rows);
    }

    PlainTable effort() {
        List<List<String>> rows = new ArrayList<>();
        forEachCell((head, cell) -> {
            if (cell.effort() != null) {
                rows.add(List.of(
                        head,
                        Printed.withInterval(
                                cell.effort().meanBlows().value(),
                                cell.effort().meanBlows().low(),
                                cell.effort().meanBlows().high(),
                                1),
                        Printed.withInterval(
                                cell.effort().meanTimeS().value(),
                                cell.effort().meanTimeS().low(),
                                cell.effort().meanTimeS().high(),
                                3),
                        Printed.withInterval(
                                cell.effort().meanRunOnDeg().value(),
                                cell.effort().meanRunOnDeg().low(),
                                cell.effort().meanRunOnDeg().high(),
                                2)));
            }
        });
        return new PlainTable(
                "Table of blows, time and run-on",
                "Means; intervals in brackets",
                List.of("Family, strategy", "blows", "time to stop, s", "run-on, deg"),
                rows);
    }

    /** Every pair; on paper, where they are many, those with the strategy that ranks first. */
    PlainTable comparisons() {
        List<List<String>> rows = new ArrayList<>();
        int first = summary.ranking().standings().get(0).strategy();
        Set<Integer> withFirst = new HashSet<>();
        for (PairedComparison c : summary.comparisons()) {
            PairedComparison.PairedRates in = c.inWindow();
            PairedComparison.PairedRates miss = c.silentMiss();
            if (c.first() == first || c.second() == first) {
                withFirst.add(rows.size());
            }
            rows.add(List.of(
                    names.family(c.family()) + ": " + names.strategy(c.first()) + " less " + names.strategy(c.second()),
                    Long.toString(c.n()),
                    Printed.pointsWithBounds(in.difference(), in.low(), in.high()),
                    p(in.pHolm()),
                    Printed.pointsWithBounds(miss.difference(), miss.low(), miss.high()),
                    p(miss.pHolm())));
        }
        return new PlainTable(
                "Table of paired comparisons",
                "Differences in points on the same joints, bounds in brackets; p by the exact McNemar test, adjusted by Holm",
                List.of("Family, pair", "joints", "in window", "p", "silent miss", "p"),
                rows,
                rows.size() <= FEW_ROWS
                        ? null
                        : new PlainTable.Paper(
                                "On paper: pairs with " + names.strategy(first) + ", " + withFirst.size() + " of "
                                        + rows.size() + "; all of them are on the page and in summary.json",
                                withFirst));
    }

    private interface CellReader {
        void read(String head, CellSummary cell);
    }

    private void forEachCell(CellReader reader) {
        for (int f = 0; f < summary.families().size(); f++) {
            for (Standing standing : summary.ranking().standings()) {
                reader.read(
                        names.family(f) + ", " + names.strategy(standing.strategy()),
                        summary.cell(f, standing.strategy()));
            }
        }
    }

    private static String reason(CellSummary cell) {
        return cell.reason() == null ? "not run" : "not run: " + cell.reason();
    }

    private static String p(double p) {
        return p < 0.001 ? "<0.001" : Printed.fixed(p, 3);
    }
}
