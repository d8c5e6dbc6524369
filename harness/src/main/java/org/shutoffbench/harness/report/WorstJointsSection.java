package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.report.ChartData.JointPicture;
import org.shutoffbench.harness.run.Outcome;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.study.CellSummary;
import org.shutoffbench.harness.study.Headline;
import org.shutoffbench.harness.study.Ranking.Standing;
import org.shutoffbench.harness.study.StudySummary;
import org.shutoffbench.harness.study.WorstJoint;

/** Where and why it fails: the worst joints of up to three strategies that fail differently, and everybody's stop there. */
final class WorstJointsSection {

    private static final int PICTURES = 3;

    /** A joint to show, and for which strategy. */
    record Choice(int family, int strategy, int joint) {}

    /** A joint by its place in the study. */
    record Place(int family, int joint) {}

    /** What its template reads. */
    record View(String heading, String unit, List<String> columns, List<Figure> figures) {

        boolean severalColumns() {
            return columns.size() > 1;
        }
    }

    record Figure(int index, String title, List<Span> cause, List<StopLine> stops, String values) {}

    /** Where strategies are shown under several settings tables: their titles, one column each. */
    record StopLine(String name, List<StopCell> cells) {}

    record StopCell(String symbol, String value, boolean off) {}

    private static final StopCell NO_STOP = new StopCell("", "", false);

    private final StudySummary summary;
    private final Names names;
    private final List<Choice> choices;
    private final Map<Place, List<TighteningRecord>> stops;
    private final JointAtNumber joints;

    WorstJointsSection(
            StudySummary summary,
            Names names,
            List<Choice> choices,
            Map<Place, List<TighteningRecord>> stops,
            JointAtNumber joints) {
        this.summary = summary;
        this.names = names;
        this.choices = choices;
        this.stops = stops;
        this.joints = joints;
    }

    /** Joints worth showing: the worst silent miss first, then each strategy's worst cell, no two of one family while
     * others fail too. */
    static List<Choice> choose(StudySummary summary) {
        Set<Integer> order = new LinkedHashSet<>();
        Headline.SilentMiss miss = summary.headline().silentMiss();
        if (miss != null) {
            order.add(miss.strategy());
        }
        List<Standing> standings = summary.ranking().standings();
        for (int i = standings.size() - 1; i >= 0; i--) {
            order.add(standings.get(i).strategy());
        }
        List<Choice> choices = new ArrayList<>();
        add(summary, order, choices, Choice::family);
        add(summary, order, choices, choice -> new Place(choice.family(), choice.joint()));
        return choices;
    }

    /** Adds choices, at most one for each strategy by name and each value of what must differ. */
    private static void add(
            StudySummary summary, Set<Integer> order, List<Choice> choices, Function<Choice, Object> differing) {
        for (int strategy : order) {
            String name = summary.strategies().get(strategy).name();
            for (CellSummary cell :
                    worstCellsFirst(summary, strategy, summary.headline().silentMiss())) {
                WorstJoint worst = farthest(cell);
                if (worst == null || (worst.outcome() == Outcome.IN_WINDOW && !choices.isEmpty())) {
                    continue;
                }
                Choice choice = new Choice(cell.family(), strategy, worst.joint());
                boolean fresh = choices.stream()
                        .noneMatch(c -> differing.apply(c).equals(differing.apply(choice))
                                || summary.strategies().get(c.strategy()).name().equals(name));
                if (fresh && choices.size() < PICTURES) {
                    choices.add(choice);
                }
            }
        }
    }

    /** The joint of a cell farthest from the target, one that was called done before any other; null where none ran. */
    private static @Nullable WorstJoint farthest(CellSummary cell) {
        return cell.worst().stream()
                .filter(w -> w.verdict() == Verdict.REACHED)
                .findFirst()
                .orElse(cell.worst().isEmpty() ? null : cell.worst().get(0));
    }

    private static List<CellSummary> worstCellsFirst(
            StudySummary summary, int strategy, Headline.@Nullable SilentMiss miss) {
        List<CellSummary> cells = new ArrayList<>();
        for (int f = 0; f < summary.families().size(); f++) {
            CellSummary cell = summary.cell(f, strategy);
            if (cell.rates() != null) {
                cells.add(cell);
            }
        }
        cells.sort(java.util.Comparator.comparingDouble(cell -> {
            boolean headline = miss != null && miss.strategy() == strategy && miss.family() == cell.family();
            return headline || cell.rates() == null
                    ? -1
                    : cell.rates().inWindow().estimate();
        }));
        return cells;
    }

    List<JointPicture> pictures() {
        List<JointPicture> pictures = new ArrayList<>();
        for (Choice choice : choices) {
            pictures.add(WorstJointPicture.of(curves(choice), summary.judge(), stopsOf(choice), choice.strategy()));
        }
        return pictures;
    }

    String html(Templates templates) {
        List<Figure> figures = new ArrayList<>();
        for (int i = 0; i < choices.size(); i++) {
            figures.add(figure(i, choices.get(i)));
        }
        return templates.fill("worst", new View(heading(), "N\u00b7m", columns(), figures));
    }

    private String heading() {
        long missed = choices.stream()
                .filter(c -> recordOf(c).verdict() == Verdict.REACHED)
                .count();
        String what = choices.size() == 1
                ? "The worst joint of one strategy"
                : "The worst joints of " + (choices.size() == 2 ? "two" : "three") + " strategies";
        String done = missed == choices.size() ? "each called done" : missed + " of " + choices.size() + " called done";
        return what + ", " + done + ", and where the others stopped on them";
    }

    private Figure figure(int index, Choice choice) {
        Map<String, StopCell[]> lines = new LinkedHashMap<>();
        List<String> spoken = new ArrayList<>();
        for (TighteningRecord r : stopsOf(choice)) {
            String torque = Printed.fixed(r.clampingTorqueNm(), 0);
            String ending = r.outcome().title();
            StopCell[] cells = lines.computeIfAbsent(
                    summary.strategies().get(r.strategy()).name(),
                    name -> new StopCell[columns().size()]);
            cells[column(r.strategy())] = new StopCell(
                    Symbols.svg(names.mark(r.strategy())), torque + " " + ending, r.outcome() != Outcome.IN_WINDOW);
            spoken.add(names.strategy(r.strategy()) + " " + torque + " N\u00b7m, " + ending + ", "
                    + Printed.fixed(r.nutAngleDeg(), 1) + " degrees past snug");
        }
        List<StopLine> table = new ArrayList<>();
        lines.forEach((name, cells) -> table.add(new StopLine(
                name,
                Arrays.stream(cells).map(cell -> cell == null ? NO_STOP : cell).toList())));
        return new Figure(
                index,
                names.family(choice.family()) + ", joint " + choice.joint(),
                Cause.of(summary, names, recordOf(choice), curves(choice)),
                table,
                String.join("; ", spoken) + ".");
    }

    private List<String> columns() {
        return names.settings().isEmpty() ? List.of("") : names.settings();
    }

    private int column(int strategy) {
        return Math.max(
                0,
                columns().indexOf(summary.strategies().get(strategy).settings().title()));
    }

    private TighteningRecord recordOf(Choice choice) {
        return stopsOf(choice).stream()
                .filter(r -> r.strategy() == choice.strategy())
                .findFirst()
                .orElseThrow();
    }

    private JointCurves curves(Choice choice) {
        return new JointCurves(joints.draw(choice.family(), choice.joint()));
    }

    /** How every strategy left the joint, in the order of the matrix. */
    private List<TighteningRecord> stopsOf(Choice choice) {
        List<TighteningRecord> unordered = stops.getOrDefault(new Place(choice.family(), choice.joint()), List.of());
        List<TighteningRecord> ordered = new ArrayList<>();
        for (Standing standing : summary.ranking().standings()) {
            unordered.stream().filter(r -> r.strategy() == standing.strategy()).forEach(ordered::add);
        }
        return ordered;
    }
}
