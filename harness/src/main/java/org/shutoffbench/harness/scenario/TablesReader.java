package org.shutoffbench.harness.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.scenario.file.Overlay;
import org.shutoffbench.harness.scenario.file.Problem;
import org.shutoffbench.harness.scenario.file.Problems;
import org.shutoffbench.harness.scenario.file.ScenarioException;
import org.shutoffbench.harness.scenario.file.Section;
import org.shutoffbench.harness.scenario.file.Tree;
import org.shutoffbench.harness.scenario.file.TreeReader;

/** Reads settings tables: files of their own, or maps of the same shape within a scenario. */
final class TablesReader {

    private static final int FORMAT = 1;
    private static final String CALIBRATION = "calibration";

    private final Problems problems;

    TablesReader(Problems problems) {
        this.problems = problems;
    }

    /** The tables that a scenario names, by name. */
    Map<String, SettingsTable> read(Section root) {
        Map<String, SettingsTable> tables = new LinkedHashMap<>();
        Section settings = root.section("settings");
        if (settings == null) {
            return tables;
        }
        for (Tree.Entry entry : settings.entries()) {
            String path = settings.path(entry.key());
            if (entry.key().equals(StrategyEntry.GIVEN)) {
                problems.add(
                        entry.place(), path, "\"given\" names what a strategy's own line gives", "choose another name");
            }
            if (entry.value() instanceof Tree.Branch inline) {
                tables.put(entry.key(), table(entry.key(), new Section(inline, path, problems)));
            } else if (entry.value() instanceof Tree.Text file && !file.value().isEmpty()) {
                SettingsTable table = fromFile(entry.key(), file, path);
                if (table != null) {
                    tables.put(entry.key(), table);
                }
            } else {
                problems.add(
                        entry.place(),
                        path,
                        "found " + entry.value().shown(),
                        "the path of a settings table belongs here");
            }
        }
        return tables;
    }

    /** What was learned of the tool: a file of the same shape, or a map within the scenario; null where none is named. */
    @Nullable
    SettingsTable readCalibration(Section root) {
        Tree tree = root.take(CALIBRATION);
        if (tree instanceof Tree.Branch inline) {
            return table(CALIBRATION, new Section(inline, CALIBRATION, problems));
        }
        if (tree instanceof Tree.Text file && !file.value().isEmpty()) {
            return fromFile(CALIBRATION, file, CALIBRATION);
        }
        if (tree != null) {
            problems.add(tree.place(), CALIBRATION, "found " + tree.shown(), "the path of a calibration belongs here");
        }
        return null;
    }

    private @Nullable SettingsTable fromFile(String name, Tree.Text file, String path) {
        try {
            return read(name, Overlay.beside(file));
        } catch (ScenarioException e) {
            for (Problem problem : e.problems()) {
                boolean whole = problem.place().line() == 0;
                problems.add(
                        whole ? file.place() : problem.place(),
                        whole ? path : problem.key(),
                        whole ? file.value() + ": " + problem.found() : problem.found(),
                        problem.remedy());
            }
            return null;
        }
    }

    /**
     * Reads one file.
     *
     * @throws ScenarioException if it is no settings table
     */
    static SettingsTable read(String name, Path file) {
        Problems problems = new Problems();
        Section root = new Section(TreeReader.read(file), "", problems);
        if (!root.has("bench_settings")) {
            root.missing("bench_settings", "a settings table begins with the line \"bench_settings: 1\"");
        }
        root.wholeNumber("bench_settings", FORMAT, FORMAT, FORMAT);
        SettingsTable table = new TablesReader(problems).table(name, root);
        problems.throwIfAny();
        return table;
    }

    private SettingsTable table(String name, Section table) {
        Map<String, String> provenance = new LinkedHashMap<>();
        Section made = table.section("made");
        if (made != null) {
            made.entries().forEach(entry -> provenance.put(entry.key(), oneLine(entry.value())));
        }
        Map<String, Map<String, String>> values = new LinkedHashMap<>();
        Section strategies = table.section("strategies");
        if (strategies == null) {
            if (!table.has("strategies")) {
                table.missing("strategies", "give each strategy's settings, for example blow count: {blows: 7}");
            }
        } else {
            strategies.entries().forEach(entry -> values.put(entry.key(), settings(strategies, entry)));
        }
        table.finish();
        return new SettingsTable(name, provenance, values);
    }

    private Map<String, String> settings(Section strategies, Tree.Entry entry) {
        Map<String, String> settings = new LinkedHashMap<>();
        if (entry.value() instanceof Tree.Branch branch) {
            for (Tree.Entry setting : branch.entries().values()) {
                if (setting.value() instanceof Tree.Text text) {
                    settings.put(setting.key(), text.value());
                } else {
                    problems.add(
                            setting.place(),
                            strategies.path(entry.key()) + "." + setting.key(),
                            "found " + setting.value().shown(),
                            "one value belongs here");
                }
            }
        } else {
            problems.add(
                    entry.place(),
                    strategies.path(entry.key()),
                    "found " + entry.value().shown(),
                    "a map of settings belongs here");
        }
        return settings;
    }

    private static String oneLine(Tree value) {
        if (value instanceof Tree.Sequence list) {
            List<String> items = new ArrayList<>();
            list.items().forEach(item -> items.add(oneLine(item)));
            return String.join(", ", items);
        }
        return value instanceof Tree.Text text ? text.value() : "";
    }
}
