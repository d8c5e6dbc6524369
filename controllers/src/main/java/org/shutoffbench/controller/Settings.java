package org.shutoffbench.controller;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Values for every setting of a strategy: those given, defaults for the rest. Immutable. */
public final class Settings {

    private final Map<String, Double> values;

    private Settings(Map<String, Double> values) {
        this.values = values;
    }

    /**
     * Completes given values with defaults.
     *
     * @throws IllegalArgumentException for a name that the strategy does not have or a value outside its range
     */
    public static Settings of(List<Setting> declared, Map<String, Double> given) {
        Map<String, Double> complete = new TreeMap<>();
        for (Setting setting : declared) {
            double value = given.getOrDefault(setting.name(), setting.byDefault());
            if (!(value >= setting.minimum() && value <= setting.maximum())) {
                throw new IllegalArgumentException(setting.name() + " = " + value + " is outside " + setting.minimum()
                        + " to " + setting.maximum() + " " + setting.unit());
            }
            complete.put(setting.name(), value);
        }
        for (String name : given.keySet()) {
            if (!complete.containsKey(name)) {
                throw new IllegalArgumentException("no setting is called \"" + name + "\"");
            }
        }
        return new Settings(Map.copyOf(complete));
    }

    /** The value of a declared setting, narrowed to float. */
    public float get(String name) {
        Double value = values.get(name);
        if (value == null) {
            throw new IllegalArgumentException("no setting is called \"" + name + "\"");
        }
        return value.floatValue();
    }

    /** All values by name. */
    public Map<String, Double> asMap() {
        return values;
    }
}
