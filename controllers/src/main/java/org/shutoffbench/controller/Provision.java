package org.shutoffbench.controller;

import java.util.EnumSet;
import java.util.Set;
import java.util.StringJoiner;

/**
 * What the tool provides to a strategy: fixed when the strategy is made.
 *
 * @param sampleRateHz samples per second
 * @param channels channels that the tool has
 */
public record Provision(int sampleRateHz, Set<Channel> channels) {

    public Provision {
        if (sampleRateHz <= 0) {
            throw new IllegalArgumentException("sample rate must be positive");
        }
        channels = Set.copyOf(channels);
    }

    /**
     * Checks that the tool has every channel that a strategy requires.
     *
     * @throws IllegalArgumentException naming the strategy and the missing channels
     */
    public void demand(StrategyDescriptor descriptor) {
        Set<Channel> missing = EnumSet.noneOf(Channel.class);
        missing.addAll(descriptor.requiredChannels());
        missing.removeAll(channels);
        if (!missing.isEmpty()) {
            StringJoiner titles = new StringJoiner(", ");
            missing.forEach(channel -> titles.add(channel.title()));
            throw new IllegalArgumentException(
                    "\"" + descriptor.name() + "\" needs channels that the tool lacks: " + titles);
        }
    }

    public float periodS() {
        return 1.0f / sampleRateHz;
    }
}
