package org.shutoffbench.harness.scenario;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

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
}
