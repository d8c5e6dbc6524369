package org.shutoffbench.controller.conformance;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.Target;

/** The strategy under examination and the ways in which the suite makes it. */
final class Subject {

    /** Sample rate of every recording of the suite, samples per second. */
    static final int RATE_HZ = 10_000;

    static final Target USUAL_TARGET = new Target(84f, 0.15f);
    static final Target OTHER_TARGET = new Target(40f, 0.15f);
    static final Target NO_TARGET = new Target(0f, 0.15f);

    final StrategyFactory factory;
    final StrategyDescriptor descriptor;

    Subject(StrategyFactory factory) {
        this.factory = factory;
        this.descriptor = factory.descriptor();
    }

    /** All channels that the strategy declares. */
    Set<Channel> declaredChannels() {
        Set<Channel> declared = EnumSet.noneOf(Channel.class);
        declared.addAll(descriptor.requiredChannels());
        declared.addAll(descriptor.optionalChannels());
        return declared;
    }

    /** The channel sets it must work with: all it declares, and only those it requires. */
    List<Set<Channel>> channelSets() {
        List<Set<Channel>> sets = new ArrayList<>();
        sets.add(declaredChannels());
        if (!descriptor.optionalChannels().isEmpty()) {
            sets.add(descriptor.requiredChannels());
        }
        return sets;
    }

    /** A fresh instance with default settings and all declared channels. */
    ShutoffStrategy create() {
        return create(declaredChannels());
    }

    /** A fresh instance with default settings. */
    ShutoffStrategy create(Set<Channel> channels) {
        return factory.create(Settings.of(descriptor.settings(), Map.of()), new Provision(RATE_HZ, channels));
    }
}
