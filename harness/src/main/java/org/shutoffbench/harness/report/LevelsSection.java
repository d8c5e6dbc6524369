package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.report.ChartData.LevelCurve;
import org.shutoffbench.harness.report.ChartData.LevelPicture;
import org.shutoffbench.harness.study.CovariateCurve;
import org.shutoffbench.harness.study.CovariateCurve.Bin;
import org.shutoffbench.harness.study.Ranking.Standing;
import org.shutoffbench.harness.study.Rate;
import org.shutoffbench.harness.study.StudySummary;

/** From which level on it goes wrong: silent misses by class of a drawn parameter, such as prevailing torque. */
final class LevelsSection {

    private static final double MOST = 0.5;

    private final StudySummary summary;
    private final Names names;
    private final List<Group> groups;
    private final PrevailingLevels explained;

    LevelsSection(StudySummary summary, Names names) {
        this.summary = summary;
        this.names = names;
        this.groups = groups(summary);
        this.explained = new PrevailingLevels(summary, names);
    }

    /** The curves of one family over one parameter. */
    private record Group(int family, String name, String unit, List<CovariateCurve> curves) {}

    private record View(String heading, String note, List<Panel> panels, List<String> tables) {}

    private record Panel(int index, String title, String values) {}

    boolean present() {
        return !groups.isEmpty();
    }

    private static List<Group> groups(StudySummary summary) {
        List<Group> groups = new ArrayList<>();
        for (int f = 0; f < summary.families().size(); f++) {
            List<CovariateCurve> curves = new ArrayList<>();
            for (Standing standing : summary.ranking().standings()) {
                for (CovariateCurve curve : summary.covariateCurves()) {
                    if (curve.family() == f && curve.strategy() == standing.strategy()) {
                        curves.add(curve);
                    }
                }
            }
            if (!curves.isEmpty()) {
                groups.add(new Group(f, curves.get(0).name(), curves.get(0).unit(), curves));
            }
        }
        return groups;
    }

    List<LevelPicture> pictures() {
        List<LevelPicture> pictures = new ArrayList<>();
        for (Group group : groups) {
            List<Bin> bins = group.curves().get(0).bins();
            double from = bins.get(0).from();
            double to = bins.get(bins.size() - 1).to();
            List<Double> ticks = new ArrayList<>();
            for (double tick : Scale.reaching(to, null).halves()) {
                if (tick >= from && tick <= to) {
                    ticks.add(tick);
                }
            }
            List<LevelCurve> curves = new ArrayList<>();
            for (CovariateCurve curve : group.curves()) {
                curves.add(new LevelCurve(curve.strategy(), points(curve)));
            }
            pictures.add(new LevelPicture(
                    group.name(), Printed.unit(group.unit()), ChartData.numbers(from, to), ticks, curves));
        }
        return pictures;
    }

    private static List<List<Double>> points(CovariateCurve curve) {
        List<List<Double>> points = new ArrayList<>();
        for (Bin bin : curve.bins()) {
            Rate miss = bin.silentMiss();
            if (miss != null) {
                points.add(ChartData.numbers(
                        (bin.from() + bin.to()) / 2, 100 * miss.estimate(), 100 * miss.low(), 100 * miss.high()));
            }
        }
        return List.copyOf(points);
    }

    String html(Templates templates) {
        List<Panel> panels = new ArrayList<>();
        List<String> tables = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            Group group = groups.get(i);
            panels.add(new Panel(i, names.family(group.family()), inWords(group)));
            tables.add(table(group).html(templates));
        }
        explained.tables().forEach(table -> tables.add(table.html(templates)));
        return templates.fill("levels", new View(heading(), note(), panels, tables));
    }

    private String heading() {
        return explained.finding().map(PrevailingLevels.Finding::heading).orElseGet(this::headingOfClasses);
    }

    private String headingOfClasses() {
        for (Group group : groups) {
            CovariateCurve worst = mostMissing(group);
            if (worst != null) {
                return sentence(group, worst);
            }
        }
        return "No strategy called most joints of any class done while they were low or unseated";
    }

    private @Nullable CovariateCurve mostMissing(Group group) {
        CovariateCurve worst = null;
        double most = 0;
        for (CovariateCurve curve : group.curves()) {
            double missed = curve.bins().stream()
                    .map(Bin::silentMiss)
                    .filter(r -> r != null && r.low() > MOST)
                    .count();
            if (missed > most) {
                most = missed;
                worst = curve;
            }
        }
        return worst;
    }

    private String sentence(Group group, CovariateCurve curve) {
        double lowest = curve.bins().get(0).from();
        for (Bin bin : curve.bins()) {
            Rate miss = bin.silentMiss();
            if (miss != null && miss.low() > MOST) {
                String level = Printed.fixed(bin.from(), 1) + " " + Printed.unit(group.unit()) + " of " + group.name();
                return (bin.from() == lowest ? "At every level drawn, from " + level : "From " + level) + " on, "
                        + names.strategy(curve.strategy()) + " calls most " + names.joints(group.family())
                        + " done while they are low or unseated";
            }
        }
        throw new IllegalStateException("no class with silent misses");
    }

    private String note() {
        String reason = explained.finding().map(found -> found.reason() + " ").orElse("");
        String classes =
                explained.finding().map(found -> headingOfClasses() + ". ").orElse("");
        return reason + classes + "Silent misses by class of " + groups.get(0).name() + ", each mark with its "
                + Printed.level(summary.methods().confidence())
                + " % interval. A level counts as found where the whole interval lies above half of the joints.";
    }

    private String inWords(Group group) {
        List<String> lines = new ArrayList<>();
        for (CovariateCurve curve : group.curves()) {
            List<String> values = new ArrayList<>();
            for (Bin bin : curve.bins()) {
                Rate miss = bin.silentMiss();
                if (miss != null) {
                    values.add(Printed.fixed(bin.from(), 1) + " to " + Printed.fixed(bin.to(), 1) + ": "
                            + Printed.percent(miss) + " %");
                }
            }
            lines.add(names.strategy(curve.strategy()) + " " + String.join(", ", values));
        }
        return "Silent misses by " + group.name() + " in " + Printed.unit(group.unit()) + ". "
                + String.join("; ", lines) + ".";
    }

    private PlainTable table(Group group) {
        List<List<String>> rows = new ArrayList<>();
        for (CovariateCurve curve : group.curves()) {
            for (Bin bin : curve.bins()) {
                Rate miss = bin.silentMiss();
                Rate in = bin.inWindow();
                rows.add(List.of(
                        names.strategy(curve.strategy()),
                        Printed.fixed(bin.from(), 1) + " to " + Printed.fixed(bin.to(), 1),
                        miss == null ? "0" : Long.toString(miss.n()),
                        in == null ? "" : Printed.withInterval(in),
                        miss == null ? "" : Printed.withInterval(miss)));
            }
        }
        return new PlainTable(
                "Table of rates by " + group.name() + ", " + names.family(group.family()),
                "% of joints run; intervals in brackets",
                List.of(
                        "Strategy",
                        group.name() + ", " + Printed.unit(group.unit()),
                        "joints",
                        "in window",
                        "silent miss"),
                rows);
    }
}
