package org.shutoffbench.harness.scenario;

import java.util.Set;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.sensor.Quantity;
import org.shutoffbench.sensor.SensorPresets;
import org.shutoffbench.sensor.SensorSuite;

/**
 * What the tool senses with.
 *
 * @param basis name of the preset that it was made from
 * @param channels what the tool has
 */
public record SensorRecipe(String basis, Set<Channel> channels) {

    public SensorRecipe {
        channels = Set.copyOf(channels);
    }

    /** What each preset can have at most, by name. */
    static SensorSuite fullest(String preset) {
        return switch (preset) {
            case "ideal" -> SensorPresets.IDEAL;
            case "good" -> SensorPresets.GOOD_WITH_TORQUE;
            case "cheap" -> SensorPresets.CHEAP;
            default -> throw new IllegalArgumentException("no sensors are called \"" + preset + "\"");
        };
    }

    /** The sensors: the preset's, as far as the tool has the channel. */
    public SensorSuite suite() {
        SensorSuite suite = fullest(basis);
        for (Quantity quantity : suite.quantities()) {
            if (!channels.contains(Channel.valueOf(quantity.name()))) {
                suite = suite.without(quantity);
            }
        }
        return suite.named(basis);
    }
}
