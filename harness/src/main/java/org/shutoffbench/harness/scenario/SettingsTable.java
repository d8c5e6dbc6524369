package org.shutoffbench.harness.scenario;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.shutoffbench.controller.Setting;

/**
 * Settings of many strategies under one name.
 *
 * @param name {@code home}, {@code all} or another
 * @param provenance how it was made: short texts by key
 * @param values for each strategy, by label or name, its settings as written: {@code 7}, {@code 40 deg}
 */
public record SettingsTable(String name, Map<String, String> provenance, Map<String, Map<String, String>> values) {

    public SettingsTable {
        provenance = Collections.unmodifiableMap(new LinkedHashMap<>(provenance));
        Map<String, Map<String, String>> copy = new LinkedHashMap<>();
        values.forEach(
                (strategy, settings) -> copy.put(strategy, Collections.unmodifiableMap(new LinkedHashMap<>(settings))));
        values = Collections.unmodifiableMap(copy);
    }

    /** A value as a table writes it, with the setting's unit; it reads back as exactly the same value. */
    public static String written(Setting setting, double value) {
        return SettingUnit.of(setting).write(value);
    }

    /** The table as a file. */
    public String text() {
        StringBuilder text = new StringBuilder("bench_settings: 1\n");
        if (!provenance.isEmpty()) {
            text.append("made:\n");
            provenance.forEach((key, value) -> text.append("  ")
                    .append(quoted(key))
                    .append(": ")
                    .append(quoted(value))
                    .append('\n'));
        }
        text.append(values.isEmpty() ? "strategies: {}\n" : "strategies:\n");
        values.forEach((strategy, settings) -> {
            text.append("  ").append(quoted(strategy)).append(settings.isEmpty() ? ": {}\n" : ":\n");
            settings.forEach((name, value) -> text.append("    ")
                    .append(quoted(name))
                    .append(": ")
                    .append(value)
                    .append('\n'));
        });
        return text.toString();
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
