package org.shutoffbench.harness.scenario;

import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.harness.scenario.unit.Quantity;

/** A scenario written out in full. */
final class ScenarioText {

    private final StringBuilder text = new StringBuilder();

    ScenarioText(Scenario scenario) {
        line(0, "bench", "1");
        line(0, "name", quoted(scenario.name()));
        if (!scenario.note().isEmpty()) {
            line(0, "note", quoted(scenario.note()));
        }
        judge(scenario.judgement());
        tool(scenario.tool());
        sensors(scenario.sensors());
        line(0, "supply", scenario.supply().written());
        line(
                0,
                "time_limit",
                Quantity.ofSi(scenario.timeLimitS(), Dimension.TIME).text());
        open(0, "families");
        scenario.families().forEach(this::family);
        tables(scenario.tables());
        calibration(scenario.calibration());
        strategies(scenario);
        operator(scenario);
        Grouping groups = scenario.grouping();
        open(0, "groups");
        line(1, "joints_per_lot", Integer.toString(groups.jointsPerLot()));
        line(1, "repeats_per_piece", Integer.toString(groups.repeatsPerPiece()));
        line(1, "joints_per_tool", Integer.toString(groups.jointsPerTool()));
        line(0, "joints", Integer.toString(scenario.jointsPerFamily()));
        line(0, "seed", Long.toString(scenario.seed()));
        audit(scenario.audit());
        costs(scenario.costs());
        PinnedDraws pinned = scenario.pinned();
        if (pinned != null) {
            open(0, "draws");
            line(1, "seed", Long.toString(pinned.seed()));
            line(1, "scenario", quoted(pinned.scenario()));
            line(1, "family", quoted(pinned.family()));
            line(1, "joint", Integer.toString(pinned.joint()));
        }
    }

    private void judge(Judgement judgement) {
        open(0, "judge");
        line(1, "quantity", judgement.quantity().title());
        line(1, "target", judgement.target().text());
        line(1, "window", judgement.window().text());
        line(1, "allow_yield", yesOrNo(judgement.allowYield()));
    }

    private void tool(ToolRecipe tool) {
        open(0, "tool");
        line(1, "based on", tool.basis());
        tool.numbers().forEach((key, amount) -> line(1, key.key(), amount.written()));
    }

    private void sensors(SensorRecipe sensors) {
        open(0, "sensors");
        new SensorText(sensors)
                .lines()
                .forEach(line -> text.append("  ").append(line).append('\n'));
    }

    private void family(JointFamily family) {
        open(1, quoted(family.name()));
        line(2, "thread", family.thread().written());
        if (family.propertyClass() != null) {
            line(2, "class", quoted(family.propertyClass().title()));
        }
        section(family, "friction");
        own(family);
        if (family.assembly() != null) {
            family.assembly()
                    .lines()
                    .forEach(line -> text.append("    ").append(line).append('\n'));
        }
        yieldLimit(family);
        for (Part part : Part.values()) {
            Double probability = family.presence().get(part);
            if (probability != null) {
                section(family, part.key());
                line(3, "present", Double.toString(probability));
            }
            if (probability != null && part == Part.DAMAGED_THREAD) {
                line(3, "every_turn", yesOrNo(family.damageEveryTurn()));
            }
        }
    }

    private void own(JointFamily family) {
        for (JointKey key : JointKey.of("")) {
            number(2, family, key);
        }
    }

    private void section(JointFamily family, String section) {
        open(2, section);
        for (JointKey key : JointKey.of(section)) {
            number(3, family, key);
        }
    }

    private void yieldLimit(JointFamily family) {
        open(2, "yield");
        if (family.yieldRule() == YieldRule.AT_FORCE) {
            number(3, family, JointKey.YIELD_FORCE);
        } else {
            line(3, "force", family.yieldRule().title());
        }
        number(3, family, JointKey.YIELD_SLOPE);
        number(3, family, JointKey.YIELD_FRACTURE);
    }

    private void number(int depth, JointFamily family, JointKey key) {
        Amount amount = family.numbers().get(key);
        if (amount != null) {
            String written = amount.written();
            line(
                    depth,
                    key.key(),
                    switch (key) {
                        case MU_B_OVER_MU_TH -> "{mu_th times: " + written + "}";
                        case STIFFNESS_OVER_COMPUTED -> "{computed times: " + written + "}";
                        default -> written;
                    });
        }
    }

    private void tables(Map<String, SettingsTable> tables) {
        if (tables.isEmpty()) {
            return;
        }
        open(0, "settings");
        tables.forEach((name, table) -> {
            open(1, quoted(name));
            table(2, table);
        });
    }

    private void calibration(@Nullable SettingsTable calibration) {
        if (calibration != null) {
            open(0, "calibration");
            table(1, calibration);
        }
    }

    private void table(int depth, SettingsTable table) {
        if (!table.provenance().isEmpty()) {
            open(depth, "made");
            table.provenance().forEach((key, value) -> line(depth + 1, quoted(key), quoted(value)));
        }
        line(depth, "strategies", table.values().isEmpty() ? "{}" : "");
        table.values().forEach((strategy, values) -> line(depth + 1, quoted(strategy), map(values)));
    }

    private void strategies(Scenario scenario) {
        if (scenario.strategies().isEmpty()) {
            return;
        }
        open(0, "strategies");
        for (StrategyEntry entry : scenario.strategies()) {
            StrategyEntry.External external = entry.external();
            if (external == null) {
                text.append("  - name: ").append(quoted(entry.name())).append('\n');
            } else {
                text.append("  - class: ").append(quoted(external.className())).append('\n');
                line(2, "jar", quoted(external.jar()));
                line(2, "sha256", external.sha256());
            }
            line(2, "label", quoted(entry.label()));
            if (!entry.withheld().isEmpty()) {
                line(
                        2,
                        "without",
                        entry.withheld().stream()
                                .sorted()
                                .map(Channel::title)
                                .collect(Collectors.joining(", ", "[", "]")));
            }
            line(
                    2,
                    "settings",
                    entry.settings().equals(StrategyEntry.GIVEN) ? map(written(entry)) : quoted(entry.settings()));
        }
    }

    private void operator(Scenario scenario) {
        if (scenario.operator().isEmpty()) {
            return;
        }
        open(0, "operator");
        scenario.operator()
                .forEach(draw -> line(1, quoted(draw.setting()), draw.amount().written()));
    }

    private void audit(@Nullable AuditRecipe audit) {
        if (audit == null) {
            return;
        }
        open(0, "audit");
        if (audit.lowest() != null || audit.highest() != null) {
            open(1, "accept");
            optional(2, "lowest", audit.lowest());
            optional(2, "highest", audit.highest());
        }
        if (!audit.allows().isEmpty()) {
            open(1, "allows");
            audit.allows().forEach((family, torque) -> line(2, quoted(family), torque.text()));
        }
        audit.numbers().forEach((key, amount) -> line(1, key.key(), amount.written()));
        line(1, "resolution", audit.resolution().text());
        line(1, "skipped", audit.skipped().text());
    }

    private void costs(@Nullable Costs costs) {
        if (costs == null) {
            return;
        }
        open(0, "costs");
        line(1, "currency", quoted(costs.currency()));
        line(1, "per_hour", Double.toString(costs.perHour()));
        line(1, "tightening", costs.tightening().text());
        line(1, "audit", costs.audit().text());
        line(1, "rework", costs.rework().text());
        line(1, "rework_parts", Double.toString(costs.reworkParts()));
        line(1, "escape", Double.toString(costs.escape()));
        line(1, "sample", costs.sample().text());
        line(1, "lot", Integer.toString(costs.lot()));
    }

    private void optional(int depth, String key, @Nullable Quantity quantity) {
        if (quantity != null) {
            line(depth, key, quantity.text());
        }
    }

    private static Map<String, String> written(StrategyEntry entry) {
        Map<String, String> written = new TreeMap<>();
        entry.given().forEach((setting, value) -> written.put(setting, value.written()));
        return written;
    }

    private static String map(Map<String, String> values) {
        return values.entrySet().stream()
                .map(entry -> quoted(entry.getKey()) + ": " + quoted(entry.getValue()))
                .collect(Collectors.joining(", ", "{", "}"));
    }

    private static String yesOrNo(boolean yes) {
        return yes ? "yes" : "no";
    }

    private static String quoted(String words) {
        if (words.matches("[A-Za-z][A-Za-z0-9 _-]*") && !words.endsWith(" ")) {
            return words;
        }
        StringBuilder quoted = new StringBuilder("\"");
        words.chars().forEach(c -> quoted.append(isPlain(c) ? String.valueOf((char) c) : String.format("\\u%04x", c)));
        return quoted.append('"').toString();
    }

    private static boolean isPlain(int c) {
        return (c >= ' ' && c < 0x7f && c != '"' && c != '\\') || Character.isLetterOrDigit((char) c);
    }

    private void open(int depth, String key) {
        line(depth, key, "");
    }

    private void line(int depth, String key, String value) {
        text.append("  ".repeat(depth))
                .append(key)
                .append(value.isEmpty() ? ":" : ": ")
                .append(value)
                .append('\n');
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
