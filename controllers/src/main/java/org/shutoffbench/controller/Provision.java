package org.shutoffbench.controller;

import java.util.Set;

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

    public float periodS() {
        return 1.0f / sampleRateHz;
    }
}
