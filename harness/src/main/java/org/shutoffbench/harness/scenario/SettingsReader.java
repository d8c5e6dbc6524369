package org.shutoffbench.harness.scenario;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.harness.scenario.file.NearestKey;
import org.shutoffbench.harness.scenario.file.Place;
import org.shutoffbench.harness.scenario.file.Problems;
import org.shutoffbench.harness.scenario.file.Tree;

/** Reads values for a strategy's settings and turns them into the units that it declares. */
final class SettingsReader {

    private final StrategyDescriptor descriptor;
    private final Problems problems;

    SettingsReader(StrategyDescriptor descriptor, Problems problems) {
        this.descriptor = descriptor;
        this.problems = problems;
    }

    Map<String, StrategyEntry.Value> read(Tree.Branch given, String path) {
        Map<String, StrategyEntry.Value> values = new LinkedHashMap<>();
        for (Tree.Entry entry : given.entries().values()) {
            if (entry.value() instanceof Tree.Text text) {
                put(values, entry.key(), text.value(), entry.place(), path);
            } else {
                problems.add(
                        entry.place(),
                        path + "." + entry.key(),
                        "found " + entry.value().shown(),
                        "one value belongs here");
            }
        }
        return values;
    }

    Map<String, StrategyEntry.Value> read(Map<String, String> given, Place place, String path) {
        Map<String, StrategyEntry.Value> values = new LinkedHashMap<>();
        given.forEach((name, text) -> put(values, name, text, place, path));
        return values;
    }

    private void put(Map<String, StrategyEntry.Value> values, String name, String text, Place place, String path) {
        Optional<Setting> setting = descriptor.settings().stream()
                .filter(candidate -> Tree.plain(candidate.name()).equals(Tree.plain(name)))
                .findFirst();
        if (setting.isEmpty()) {
            List<String> names =
                    descriptor.settings().stream().map(Setting::name).toList();
            problems.add(
                    place,
                    path + "." + name,
                    "is not a setting of \"" + descriptor.name() + "\"",
                    NearestKey.remedy(name, names));
            return;
        }
        Setting known = setting.get();
        try {
            double value = SettingUnit.of(known).parse(text);
            if (known.minimum() <= value && value <= known.maximum()) {
                values.put(known.name(), new StrategyEntry.Value(value, text));
                return;
            }
            SettingUnit unit = SettingUnit.of(known);
            problems.add(
                    place,
                    path + "." + name,
                    "found \"" + text + "\"",
                    "allowed: " + unit.write(known.minimum()) + " to " + unit.write(known.maximum()));
        } catch (IllegalArgumentException e) {
            problems.add(place, path + "." + name, "found \"" + text + "\"", String.valueOf(e.getMessage()));
        }
    }
}
