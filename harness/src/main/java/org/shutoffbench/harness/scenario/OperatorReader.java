package org.shutoffbench.harness.scenario;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.harness.scenario.file.NearestKey;
import org.shutoffbench.harness.scenario.file.Section;
import org.shutoffbench.harness.scenario.file.Tree;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.harness.scenario.unit.Quantity;

/** Reads what is drawn of the person at the tool: settings that the strategies declare as the operator's. */
final class OperatorReader {

    private static final List<Level> LEVELS = List.of(Level.REPEAT, Level.TOOL);

    private final Map<String, Setting> settings = new LinkedHashMap<>();

    OperatorReader(Collection<StrategyDescriptor> strategies) {
        for (StrategyDescriptor strategy : strategies) {
            for (Setting setting : strategy.settings()) {
                if (setting.role() == Setting.Role.OPERATOR) {
                    settings.putIfAbsent(Tree.plain(setting.name()), setting);
                }
            }
        }
    }

    List<OperatorDraw> read(Section root) {
        List<OperatorDraw> draws = new ArrayList<>();
        Section operator = root.section("operator");
        if (operator == null) {
            return draws;
        }
        for (Tree.Entry entry : operator.entries()) {
            Setting setting = settings.get(Tree.plain(entry.key()));
            if (setting == null) {
                root.problems()
                        .add(
                                entry.place(),
                                operator.path(entry.key()),
                                "no strategy of this scenario leaves this to the operator",
                                settings.isEmpty()
                                        ? "leave it out"
                                        : NearestKey.remedy(entry.key(), settings.keySet()));
                continue;
            }
            Amount amount = reader(setting, root).read(entry.value(), operator.path(entry.key()));
            if (amount != null) {
                SettingUnit unit = SettingUnit.of(setting);
                draws.add(new OperatorDraw(setting.name(), unit.written(), unit.siOfOne(), amount));
            }
        }
        return draws;
    }

    private static AmountReader reader(Setting setting, Section root) {
        SettingUnit unit = SettingUnit.of(setting);
        Dimension dimension = unit.dimension() == null ? Dimension.PURE : unit.dimension();
        Range range = new Range(
                new Quantity(setting.minimum() * unit.siOfOne(), unit.write(setting.minimum())),
                new Quantity(setting.maximum() * unit.siOfOne(), unit.write(setting.maximum())));
        return new AmountReader(dimension, range, LEVELS, root.problems());
    }
}
