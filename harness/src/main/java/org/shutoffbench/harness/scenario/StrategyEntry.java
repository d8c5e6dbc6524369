package org.shutoffbench.harness.scenario;

import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.controller.Channel;

/**
 * One strategy under one set of settings, as it is run.
 *
 * @param label as records and reports call it; unique together with the settings' name
 * @param name of the strategy
 * @param external where its class is, for a strategy from outside; null for one of ours
 * @param settings name of the settings: {@code home}, {@code all} or another table's, or {@code given}
 * @param given values by setting; other settings keep their defaults
 * @param withheld channels that the tool has and this strategy does not get
 */
public record StrategyEntry(
        String label,
        String name,
        @Nullable External external,
        String settings,
        Map<String, Value> given,
        Set<Channel> withheld) {

    /** Name of settings that the scenario itself gives, or leaves at their defaults. */
    public static final String GIVEN = "given";

    public StrategyEntry {
        given = Collections.unmodifiableMap(new TreeMap<>(given));
        withheld = Set.copyOf(withheld);
    }

    /** The given settings in the units that the strategy declares. */
    public Map<String, Double> values() {
        Map<String, Double> values = new TreeMap<>();
        given.forEach((setting, value) -> values.put(setting, value.inOwnUnit()));
        return values;
    }

    /** The same with its class taken from another place. */
    StrategyEntry from(External place) {
        return new StrategyEntry(label, name, place, settings, given, withheld);
    }

    /**
     * The value of a setting.
     *
     * @param inOwnUnit in the unit that the strategy declares
     * @param written as a file writes it
     */
    public record Value(double inOwnUnit, String written) {}

    /**
     * A strategy from outside.
     *
     * @param className its factory
     * @param jar path of the jar as written, seen from the file that names it
     * @param file the same path as this process sees it
     * @param sha256 of the jar's bytes, so that another jar under the same name is another scenario
     */
    public record External(String className, String jar, Path file, String sha256) {}
}
