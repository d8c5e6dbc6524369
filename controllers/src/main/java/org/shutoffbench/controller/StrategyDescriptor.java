package org.shutoffbench.controller;

import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * What a strategy declares of itself.
 *
 * @param name as written in scenario files, lower case words
 * @param idea one line for people
 * @param requiredChannels channels without which it cannot run
 * @param optionalChannels channels that it uses where present
 * @param settings its settings
 * @param estimates names and units of what {@code estimates()} hands out, in order
 * @param stateBytes size of its state as a C struct, bytes
 */
public record StrategyDescriptor(
        String name,
        String idea,
        Set<Channel> requiredChannels,
        Set<Channel> optionalChannels,
        List<Setting> settings,
        List<String> estimates,
        int stateBytes) {

    /** Refuses a part that is missing and a name that says nothing. */
    public StrategyDescriptor {
        Objects.requireNonNull(idea, "the descriptor has no idea");
        Objects.requireNonNull(requiredChannels, "the descriptor has no set of required channels");
        Objects.requireNonNull(optionalChannels, "the descriptor has no set of optional channels");
        Objects.requireNonNull(settings, "the descriptor has no list of settings");
        Objects.requireNonNull(estimates, "the descriptor has no list of estimates");
        if (Objects.requireNonNull(name, "the descriptor has no name").isBlank()) {
            throw new IllegalArgumentException("the descriptor has no name");
        }
        requiredChannels = Set.copyOf(requiredChannels);
        optionalChannels = Set.copyOf(optionalChannels);
        settings = List.copyOf(settings);
        estimates = List.copyOf(estimates);
    }
}
