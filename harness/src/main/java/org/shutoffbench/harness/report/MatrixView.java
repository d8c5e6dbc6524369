package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.study.CellSummary;
import org.shutoffbench.harness.study.Ranking.Standing;
import org.shutoffbench.harness.study.Rate;
import org.shutoffbench.harness.study.Rates;
import org.shutoffbench.harness.study.Strategy;
import org.shutoffbench.harness.study.StudySummary;

/**
 * Which strategy on which family: strategies in rows, best worst family first, families in columns, and in each cell the
 * share in window and the share of silent misses with their intervals.
 */
record MatrixView(List<Head> families, List<Row> rows) {

    /** A share of joints that neither bar shows is put in words from here on. */
    private static final double LARGE_REMAINDER = 0.1;

    /** A family over its column. */
    record Head(String name, String note) {}

    record Row(String name, @Nullable String settings, String small, Mark mark, List<Cell> cells) {

        String symbol() {
            return Symbols.svg(mark);
        }
    }

    /**
     * One strategy on one family.
     *
     * @param absent why nothing ran; null where something did
     * @param rest large remainders and missing joints in words; null where there is nothing to say
     */
    record Cell(
            String family,
            boolean worst,
            @Nullable Bar inWindow,
            @Nullable Bar silentMiss,
            @Nullable String rest,
            @Nullable String absent) {}

    /** A rate as bar, number and interval; style holds the custom properties of the bar. */
    record Bar(String percent, String interval, String spoken, boolean none, String style) {

        static Bar of(Rate rate) {
            return new Bar(
                    Printed.percent(rate),
                    Printed.interval(rate),
                    Printed.percent(rate) + " %, interval " + Printed.percent(rate.low()) + " to "
                            + Printed.percent(rate.high()) + " %, " + Printed.countOf(rate.count(), rate.n())
                            + " joints",
                    rate.count() == 0,
                    String.format(
                            Locale.ROOT,
                            "--value:%.3f%%;--low:%.3f%%;--high:%.3f%%",
                            100 * rate.estimate(),
                            100 * rate.low(),
                            100 * rate.high()));
        }
    }

    static MatrixView of(StudySummary summary, Names names) {
        List<Row> rows = new ArrayList<>();
        for (Standing standing : summary.ranking().standings()) {
            int s = standing.strategy();
            List<Cell> cells = new ArrayList<>();
            for (int f = 0; f < summary.families().size(); f++) {
                cells.add(cell(summary, f, s, f == standing.worstFamily()));
            }
            Strategy strategy = summary.strategies().get(s);
            String settings = names.severalSettings() ? strategy.settings().title() : null;
            rows.add(new Row(strategy.name(), settings, channels(strategy), names.mark(s), cells));
        }
        return new MatrixView(
                summary.families().stream()
                        .map(f -> new Head(f.name(), Printed.unit(f.note())))
                        .toList(),
                rows);
    }

    private static String channels(Strategy strategy) {
        return strategy.channels().isEmpty() ? "no sensor channel" : String.join(", ", strategy.channels());
    }

    private static Cell cell(StudySummary summary, int f, int s, boolean worst) {
        CellSummary cell = summary.cell(f, s);
        String family = summary.families().get(f).name();
        Rates rates = cell.rates();
        if (rates == null) {
            String reason = cell.reason() == null ? "not run" : "not run: " + cell.reason();
            return new Cell(family, false, null, null, null, reason);
        }
        return new Cell(family, worst, Bar.of(rates.inWindow()), Bar.of(rates.silentMiss()), rest(cell, rates), null);
    }

    private static @Nullable String rest(CellSummary cell, Rates rates) {
        List<String> words = new ArrayList<>();
        addLarge(words, rates.high(), "too high");
        addLarge(words, rates.yielded(), "yielded");
        addLarge(words, rates.fractured(), "fractured");
        addLarge(words, rates.undecided(), "undecided");
        long notCalledDone = rates.low().count()
                + rates.unseated().count()
                - rates.silentMiss().count();
        if (notCalledDone >= LARGE_REMAINDER * cell.run()) {
            words.add(Printed.percent((double) notCalledDone / cell.run()) + " % low or unseated, not called done");
        }
        if (!cell.complete()) {
            words.add("only " + cell.run() + " of " + cell.planned() + " joints ran"
                    + (cell.reason() == null ? "" : ": " + cell.reason()));
        }
        return words.isEmpty() ? null : String.join(" \u00b7 ", words);
    }

    private static void addLarge(List<String> words, Rate rate, String what) {
        if (rate.estimate() >= LARGE_REMAINDER) {
            words.add(Printed.percent(rate) + " % " + what + " (" + Printed.interval(rate) + ")");
        }
    }
}
