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
import org.shutoffbench.controller.conformance.Thrown;

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
     * @throws IllegalArgumentException where a setting is unknown or out of range
     * @throws BrokenStrategyException where the factory throws, or makes nothing
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
        made(given);
    }

    public StrategyDescriptor descriptor() {
        return descriptor;
    }

    /** Channels that the tool has and that the strategy declares. */
    public Set<Channel> listensTo() {
        return listensTo;
    }

    /** Whether its class came from a jar of the user's and not with this program. */
    boolean isFromOutside() {
        return factory.getClass().getClassLoader() != StrategyFactory.class.getClassLoader();
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
        return made(values);
    }

    private ShutoffStrategy made(Map<String, Double> values) {
        Settings settings = Settings.of(descriptor.settings(), values);
        ShutoffStrategy strategy;
        try {
            strategy = factory.create(settings, provision);
        } catch (RuntimeException | AssertionError | LinkageError | StackOverflowError thrown) {
            throw new BrokenStrategyException(
                    descriptor.name(), "create() with " + settings.asMap() + " threw " + Thrown.inWords(thrown));
        }
        if (strategy == null) {
            throw new BrokenStrategyException(
                    descriptor.name(), "create() with " + settings.asMap() + " returned nothing");
        }
        return strategy;
    }
}
