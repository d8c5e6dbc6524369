package org.shutoffbench.harness.cli;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.report.Printed;
import org.shutoffbench.harness.run.EndReason;
import org.shutoffbench.harness.study.CellSummary;
import org.shutoffbench.harness.study.Family;
import org.shutoffbench.harness.study.Rate;
import org.shutoffbench.harness.study.Rates;
import org.shutoffbench.harness.study.Strategy;
import org.shutoffbench.harness.study.StudySummary;

/** The table that {@code run} prints: in-window and silent-miss rates with their intervals, strategies by families. */
final class SummaryTable {

    private static final String GAP = "  ";
    private static final int CELL_WIDTH = 22;

    private final StudySummary summary;
    private final StringBuilder text = new StringBuilder();
    private final int nameWidth;
    private final int cellWidth;

    SummaryTable(StudySummary summary) {
        this.summary = summary;
        this.nameWidth = summary.strategies().stream()
                .mapToInt(s -> title(s).length())
                .max()
                .orElse(0);
        this.cellWidth = Math.max(
                CELL_WIDTH,
                summary.families().stream()
                        .mapToInt(f -> f.name().length())
                        .max()
                        .orElse(0));
        header();
        for (int s = 0; s < summary.strategies().size(); s++) {
            line(title(summary.strategies().get(s)), "in window ", s, Rates::inWindow);
            line("", "silent miss", s, Rates::silentMiss);
        }
        text.append(String.format(
                Locale.ROOT,
                "%% of joints, in brackets the %s %% interval (%s); silent miss: the tool says done and the joint is loose.%n",
                java.math.BigDecimal.valueOf(100 * summary.methods().confidence())
                        .round(new java.math.MathContext(5))
                        .stripTrailingZeros()
                        .toPlainString(),
                summary.methods().rates().title()));
        for (int s = 0; s < summary.strategies().size(); s++) {
            faults(s);
        }
        if (summary.guarded() > 0) {
            text.append("On ")
                    .append(summary.guarded())
                    .append(" tightenings the plant stepped over events that it could not bring in order:"
                            + " guard_steps in outcomes.csv says which.\n");
        }
    }

    /** A tightening that ends by a fault counts as not reached; whoever wrote the strategy should hear of it at once. */
    private void faults(int strategy) {
        long faults = summary.cells().stream()
                .filter(cell -> cell.strategy() == strategy)
                .flatMap(cell -> cell.counts().stream())
                .filter(count -> count.endReason() == EndReason.FAULT)
                .mapToLong(CellSummary.Count::joints)
                .sum();
        if (faults > 0) {
            text.append(title(summary.strategies().get(strategy)))
                    .append(": ")
                    .append(faults)
                    .append(" tightenings ended by a fault, most often a strategy that threw or answered nothing;"
                            + " conform, and trace on such a joint, say which.\n");
        }
    }

    private interface Pick {
        Rate from(Rates rates);
    }

    private static String title(Strategy strategy) {
        return strategy.name() + " (" + strategy.settings().title() + ")";
    }

    private void header() {
        text.append(pad("", nameWidth)).append(GAP).append(pad("", 11));
        for (Family family : summary.families()) {
            text.append(GAP).append(pad(family.name(), cellWidth));
        }
        text.append(System.lineSeparator());
    }

    private void line(String name, String what, int strategy, Pick pick) {
        text.append(pad(name, nameWidth)).append(GAP).append(pad(what, 11));
        for (int f = 0; f < summary.families().size(); f++) {
            text.append(GAP).append(pad(cell(summary.cell(f, strategy), pick), cellWidth));
        }
        text.append(System.lineSeparator());
    }

    private static String cell(CellSummary cell, Pick pick) {
        @Nullable Rates rates = cell.rates();
        if (rates == null) {
            return "not run";
        }
        Rate rate = pick.from(rates);
        return Printed.percent(rate) + " (" + Printed.percent(rate.low()) + " to " + Printed.percent(rate.high()) + ")";
    }

    private static String pad(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
