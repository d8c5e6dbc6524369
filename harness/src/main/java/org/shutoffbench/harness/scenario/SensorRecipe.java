package org.shutoffbench.harness.scenario;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.sensor.Quantity;
import org.shutoffbench.sensor.SensorPresets;
import org.shutoffbench.sensor.SensorSuite;

/**
 * What the tool senses with.
 *
 * @param basis name of the preset that it was made from
 * @param suite the sensors with all their numbers
 */
public record SensorRecipe(String basis, SensorSuite suite) {

    /** A preset as it is. */
    static SensorRecipe of(String basis) {
        SensorSuite suite = switch (basis) {
            case "ideal" -> SensorPresets.IDEAL;
            case "good" -> SensorPresets.GOOD;
            case "cheap" -> SensorPresets.CHEAP;
            default -> throw new IllegalArgumentException("no sensors are called \"" + basis + "\"");
        };
        return new SensorRecipe(basis, suite.named(basis));
    }

    /** What the tool has. */
    public Set<Channel> channels() {
        EnumSet<Channel> channels = EnumSet.noneOf(Channel.class);
        suite.quantities().forEach(quantity -> channels.add(channel(quantity)));
        return Collections.unmodifiableSet(channels);
    }

    /** The channel by which strategies get a quantity. */
    static Channel channel(Quantity quantity) {
        return Channel.valueOf(quantity.name());
    }
}
