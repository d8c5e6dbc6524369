package org.shutoffbench.harness.run;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.controller.StrategyFactory;

/**
 * A strategy as it enters the bench: its factory, the settings it got, and the channels it may listen to. Immutable; makes
 * the instances.
 */
public final class Contestant {

    private final StrategyFactory factory;
    private final StrategyDescriptor descriptor;
    private final Map<String, Double> given;
    private final Provision provision;
    private final Set<Channel> listensTo;
    private final Set<String> operatorSettings;

    /**
     * @param given settings by name in the unit that the strategy declares; the others keep their defaults
     * @param provision rate, and the channels that the tool has and this strategy may use
     * @throws IllegalArgumentException where a setting is unknown or out of range, or a required channel is missing
     */
    public Contestant(StrategyFactory factory, Map<String, Double> given, Provision provision) {
        this.factory = factory;
        this.descriptor = factory.descriptor();
        this.given = Map.copyOf(given);
        this.provision = provision;
        this.listensTo = provision.channels().stream()
                .filter(c -> descriptor.requiredChannels().contains(c)
                        || descriptor.optionalChannels().contains(c))
                .collect(Collectors.toUnmodifiableSet());
        this.operatorSettings = descriptor.settings().stream()
                .filter(s -> s.role() == Setting.Role.OPERATOR)
                .map(Setting::name)
                .collect(Collectors.toUnmodifiableSet());
        factory.create(Settings.of(descriptor.settings(), given), provision);
    }

    public StrategyDescriptor descriptor() {
        return descriptor;
    }

    /** Channels that the tool has and that the strategy declares. */
    public Set<Channel> listensTo() {
        return listensTo;
    }

    /** Whether some of its settings belong to the person at the tool and are drawn anew for every tightening. */
    public boolean dependsOnOperator() {
        return !operatorSettings.isEmpty();
    }

    /** Names of its settings that belong to the person at the tool. */
    public Set<String> operatorSettings() {
        return operatorSettings;
    }

    /**
     * A new instance.
     *
     * @param operator drawn settings of the person at the tool, in the unit that the strategy declares; those that this
     *     strategy does not have are passed over
     */
    public ShutoffStrategy create(Map<String, Double> operator) {
        Map<String, Double> values = new TreeMap<>(given);
        operator.forEach((name, value) -> {
            if (operatorSettings.contains(name)) {
                values.put(name, value);
            }
        });
        return factory.create(Settings.of(descriptor.settings(), values), provision);
    }
}
