package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.List;
import org.shutoffbench.harness.report.ChartData.MissPicture;
import org.shutoffbench.harness.report.ChartData.MissRow;
import org.shutoffbench.harness.study.CellSummary;
import org.shutoffbench.harness.study.Ranking.Standing;
import org.shutoffbench.harness.study.Rate;
import org.shutoffbench.harness.study.Rates;
import org.shutoffbench.harness.study.StudySummary;

/** Near 100 % bars say nothing more: what the best strategies miss, on a logarithmic scale, with intervals. */
final class MissesSection {

    /** Strategies below this in-window rate on their worst family are told apart well enough by the matrix. */
    private static final double NEAR = 0.9;

    private static final double LEAST_PERCENT = 1e-4;

    private final StudySummary summary;
    private final Names names;
    private final List<Standing> near;

    MissesSection(StudySummary summary, Names names) {
        this.summary = summary;
        this.names = names;
        this.near = summary.ranking().standings().stream()
                .filter(s ->
                        s.everyFamily() && s.inWindow() != null && s.inWindow().estimate() >= NEAR)
                .toList();
    }

    private record View(String heading, List<Panel> panels) {}

    private record Panel(int index, String title, String values) {}

    boolean present() {
        return !near.isEmpty();
    }

    String html(Templates templates) {
        List<Panel> panels = new ArrayList<>();
        for (int f = 0; f < summary.families().size(); f++) {
            panels.add(new Panel(f, names.family(f), inWords(f)));
        }
        return templates.fill("misses", new View(heading(), panels));
    }

    /** The bound that the data support for the best one on every family. */
    private String heading() {
        double most = 0;
        int best = near.get(0).strategy();
        for (int f = 0; f < summary.families().size(); f++) {
            most = Math.max(most, 1 - inWindow(f, best).low());
        }
        return Printed.capital(names.strategy(best)) + " left at most " + Printed.percent(most)
                + " % of any family outside the window, as far as these joints can tell";
    }

    List<MissPicture> pictures() {
        List<MissPicture> pictures = new ArrayList<>();
        double lowest = 100;
        for (int f = 0; f < summary.families().size(); f++) {
            for (Standing standing : near) {
                for (Rate rate : List.of(missed(f, standing.strategy()), silent(f, standing.strategy()))) {
                    lowest = Math.min(lowest, 100 * (rate.count() == 0 ? rate.high() / 3 : Math.max(rate.low(), 1e-9)));
                }
            }
        }
        double from = Math.max(LEAST_PERCENT, Math.pow(10, Math.floor(Math.log10(lowest))));
        for (int f = 0; f < summary.families().size(); f++) {
            List<MissRow> rows = new ArrayList<>();
            for (Standing standing : near) {
                rows.add(new MissRow(
                        standing.strategy(),
                        percent(missed(f, standing.strategy())),
                        percent(silent(f, standing.strategy()))));
            }
            pictures.add(new MissPicture(from, rows));
        }
        return pictures;
    }

    private static List<Double> percent(Rate rate) {
        return List.of(100 * rate.estimate(), 100 * rate.low(), 100 * rate.high());
    }

    private Rate inWindow(int family, int strategy) {
        return rates(family, strategy).inWindow();
    }

    private Rate silent(int family, int strategy) {
        return rates(family, strategy).silentMiss();
    }

    private Rate missed(int family, int strategy) {
        Rate in = inWindow(family, strategy);
        return new Rate(
                in.n() - in.count(),
                in.n(),
                1 - in.estimate(),
                1 - in.high(),
                1 - in.low(),
                in.kind(),
                in.designEffect());
    }

    private Rates rates(int family, int strategy) {
        CellSummary cell = summary.cell(family, strategy);
        if (cell.rates() == null) {
            throw new IllegalStateException("a strategy ranked on every family without a rate on one");
        }
        return cell.rates();
    }

    private String inWords(int family) {
        List<String> lines = new ArrayList<>();
        for (Standing standing : near) {
            Rate missed = missed(family, standing.strategy());
            Rate silent = silent(family, standing.strategy());
            lines.add(names.strategy(standing.strategy()) + ": outside the window " + Printed.percent(missed) + " % ("
                    + Printed.interval(missed) + "), silent " + Printed.percent(silent) + " % ("
                    + Printed.interval(silent)
                    + ")");
        }
        return String.join("; ", lines) + ".";
    }
}
