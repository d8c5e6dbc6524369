package org.shutoffbench.harness.scenario;

import java.util.Set;
import org.shutoffbench.controller.Channel;

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
}
