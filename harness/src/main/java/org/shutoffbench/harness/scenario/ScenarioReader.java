package org.shutoffbench.harness.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.harness.scenario.file.Overlay;
import org.shutoffbench.harness.scenario.file.Problems;
import org.shutoffbench.harness.scenario.file.ScenarioException;
import org.shutoffbench.harness.scenario.file.Section;
import org.shutoffbench.harness.scenario.file.Tree;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.harness.scenario.unit.Quantity;

/** Reads a whole scenario from its tree, key by key in the order in which the reference page lists them. */
final class ScenarioReader {

    private static final int FORMAT = 1;
    private static final Range SUPPLY = Range.of(Dimension.PURE, "0.1", "1");
    private static final Range TIME_LIMIT = Range.of(Dimension.TIME, "10 ms", "10 min");
    private static final Range WINDOW = Range.of(Dimension.PURE, "0.1 %", "99 %");
    private static final List<Level> SUPPLY_LEVELS = List.of(Level.REPEAT, Level.LOT, Level.TOOL);

    private final Problems problems = new Problems();
    private final Section root;
    private final StrategyDirectory directory;
    private final boolean withSettings;

    ScenarioReader(Tree.Branch tree, StrategyDirectory directory, boolean withSettings) {
        this.root = new Section(tree, "", problems);
        this.directory = directory;
        this.withSettings = withSettings;
    }

    /**
     * The scenario.
     *
     * @throws ScenarioException with everything that is wrong
     */
    Scenario read() {
        if (!root.has("bench")) {
            root.missing("bench", "a scenario begins with the line \"bench: 1\"");
        }
        root.wholeNumber("bench", FORMAT, FORMAT, FORMAT);
        String name = root.name("name");
        if (name == null && !root.has("name")) {
            root.missing("name", "give the scenario a name; draws depend on it");
        }
        String note = root.has("note") ? root.text("note") : "";
        Judgement judgement = judgement();
        ToolRecipe tool = new ToolReader(root).read();
        SensorRecipe sensors = new SensorReader(root).read();
        Amount supply = amount("supply", Dimension.PURE, SUPPLY, SUPPLY_LEVELS, "1");
        Amount timeLimit = amount("time_limit", Dimension.TIME, TIME_LIMIT, List.of(Level.REPEAT), "10 s");
        if (!(timeLimit instanceof Amount.Fixed)) {
            root.problem("time_limit", "one time belongs here, without scatter");
        }
        List<JointFamily> families = families();
        Map<String, SettingsTable> tables = withSettings ? new TablesReader(problems).read(root) : Map.of();
        root.take("settings");
        SettingsTable calibration = new TablesReader(problems).readCalibration(root);
        List<StrategyDescriptor> declared = new ArrayList<>();
        List<StrategyEntry> strategies = strategies(tables, calibration, sensors, declared);
        List<OperatorDraw> operator = new OperatorReader(declared).read(root);
        Grouping grouping = grouping();
        int joints = (int) root.wholeNumber("joints", 1, Scenario.MOST_JOINTS, 500);
        long seed = root.wholeNumber("seed", Long.MIN_VALUE, Long.MAX_VALUE, 1);
        AuditReader audits = new AuditReader(root);
        AuditRecipe audit = audits.audit(families);
        Costs costs = audits.costs();
        PinnedDraws pinned = pinned();
        root.finish();
        problems.throwIfAny();
        return new Scenario(
                String.valueOf(name),
                String.valueOf(note),
                judgement,
                tool,
                sensors,
                supply,
                timeLimit.median(),
                families,
                strategies,
                tables,
                calibration,
                operator,
                grouping,
                joints,
                seed,
                audit,
                costs,
                pinned);
    }

    private Judgement judgement() {
        Section judge = root.section("judge");
        if (judge == null) {
            if (!root.has("judge")) {
                root.missing("judge", "give {quantity: clamping torque, target: 84 N*m, window: 15 %}");
            }
            Quantity one = Quantity.ofSi(1, Dimension.TORQUE);
            return new Judgement(JudgedQuantity.CLAMPING_TORQUE, one, one, false);
        }
        JudgedQuantity quantity = JudgedQuantity.of(
                judge.choice("quantity", JudgedQuantity.titles(), JudgedQuantity.CLAMPING_TORQUE.title()));
        Quantity target = fixed(judge, "target", quantity.dimension(), quantity.targetRange());
        Quantity window = fixed(judge, "window", Dimension.PURE, WINDOW);
        boolean allowYield = judge.yesOrNo("allow_yield", false);
        judge.finish();
        return new Judgement(quantity, target, window, allowYield);
    }

    private Quantity fixed(Section section, String key, Dimension dimension, Range range) {
        if (!section.has(key)) {
            section.missing(key, "give " + dimension.title());
        }
        Quantity found = new AmountReader(dimension, range, List.of(Level.REPEAT), problems).readFixed(section, key);
        return found == null ? range.least() : found;
    }

    private Amount amount(String key, Dimension dimension, Range range, List<Level> levels, String byDefault) {
        Amount found = new AmountReader(dimension, range, levels, problems).read(root, key);
        return found == null ? new Amount.Fixed(Quantity.parse(byDefault, dimension)) : found;
    }

    private List<JointFamily> families() {
        Section families = root.section("families");
        Section every = root.section("every_family");
        List<JointFamily> read = new ArrayList<>();
        Tree tree = root.take("families");
        if (families == null
                || !(tree instanceof Tree.Branch branch)
                || branch.entries().isEmpty()) {
            if (families != null || tree == null) {
                root.missing("families", "give at least one family of joints by name");
            }
            return read;
        }
        Tree.Branch overAll = every != null && root.take("every_family") instanceof Tree.Branch b ? b : null;
        PresetUnderlay presets = new PresetUnderlay(problems);
        Overlay.families(branch, overAll, problems).forEach((name, family) -> {
            if (!Section.isName(name)) {
                problems.add(family.place(), families.path(name), "is no name of a family", Section.NAME_RULE);
            }
            JointFamily found = new FamilyReader(
                            new Section(presets.under(family, families.path(name)), families.path(name), problems))
                    .read(name);
            if (found != null) {
                read.add(found);
            }
        });
        return read;
    }

    private List<StrategyEntry> strategies(
            Map<String, SettingsTable> tables,
            @Nullable SettingsTable calibration,
            SensorRecipe sensors,
            List<StrategyDescriptor> declared) {
        List<StrategyEntry> entries = new ArrayList<>();
        Tree value = root.take("strategies");
        if (value == null) {
            return entries;
        }
        if (!(value instanceof Tree.Sequence list)) {
            root.problem(
                    "strategies", "a list of strategies belongs here: [" + String.join(", ", directory.names()) + "]");
            return entries;
        }
        StrategyReader reader = new StrategyReader(directory, tables, calibration, sensors.channels(), problems);
        Set<String> labels = new HashSet<>();
        for (Tree line : list.items()) {
            String path = "strategies[" + list.items().indexOf(line) + "]";
            StrategyReader.Found found = reader.read(line, path);
            if (found != null) {
                declared.add(found.descriptor());
                entries.addAll(found.entries());
                requireNew(found, labels, line, path);
            }
        }
        if (calibration != null) {
            requireKnown(calibration, declared, list);
        }
        return entries;
    }

    private void requireKnown(SettingsTable calibration, List<StrategyDescriptor> declared, Tree list) {
        Set<String> known = new TreeSet<>(directory.names());
        declared.forEach(descriptor -> known.add(descriptor.name()));
        for (String name : calibration.values().keySet()) {
            if (!known.contains(name)) {
                problems.add(
                        list.place(),
                        "calibration." + name,
                        "no strategy is called \"" + name + "\"",
                        "strategies are " + String.join(", ", known));
            }
        }
    }

    private void requireNew(StrategyReader.Found found, Set<String> labels, Tree line, String path) {
        for (StrategyEntry entry : found.entries()) {
            if (!labels.add(entry.label() + "\n" + entry.settings())) {
                problems.add(
                        line.place(),
                        path,
                        "\"" + entry.label() + "\" stands in the list twice with settings \"" + entry.settings() + "\"",
                        "give one of them a label of its own");
            }
        }
    }

    private Grouping grouping() {
        Section groups = root.section("groups");
        if (groups == null) {
            return Grouping.NONE;
        }
        int perLot = (int) groups.wholeNumber("joints_per_lot", 1, Scenario.MOST_JOINTS, 1);
        int repeats = (int) groups.wholeNumber("repeats_per_piece", 1, Scenario.MOST_JOINTS, 1);
        int perTool = (int) groups.wholeNumber("joints_per_tool", 1, Scenario.MOST_JOINTS, 1);
        groups.finish();
        if (perLot % repeats != 0) {
            if (groups.has("joints_per_lot")) {
                groups.problem(
                        "joints_per_lot", "a lot holds whole pieces: a multiple of repeats_per_piece belongs here");
                return Grouping.NONE;
            }
            return new Grouping(repeats, repeats, perTool);
        }
        return new Grouping(perLot, repeats, perTool);
    }

    private @Nullable PinnedDraws pinned() {
        Section draws = root.section("draws");
        if (draws == null) {
            return null;
        }
        for (String key : List.of("seed", "scenario", "family", "joint")) {
            if (!draws.has(key)) {
                draws.missing(key, "draws are pinned by seed, scenario, family and joint together");
            }
        }
        long seed = draws.wholeNumber("seed", Long.MIN_VALUE, Long.MAX_VALUE, 1);
        String scenario = draws.text("scenario");
        String family = draws.text("family");
        int joint = (int) draws.wholeNumber("joint", 0, Scenario.MOST_JOINTS, 0);
        draws.finish();
        return scenario == null || family == null ? null : new PinnedDraws(seed, scenario, family, joint);
    }
}
