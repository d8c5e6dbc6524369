package org.shutoffbench.controller.strategy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.conformance.OperationCount;
import org.shutoffbench.controller.conformance.StateSize;

/** docs/strategies.md says of every strategy what the strategy itself declares, and the state and work that are counted. */
class StrategiesPageTest {

    private static final int RATE_HZ = 10_000;

    static Collection<StrategyFactory> strategies() {
        return Strategies.byName().values();
    }

    @ParameterizedTest
    @MethodSource("strategies")
    void theCardIsWhatTheStrategyDeclaresAndWhatIsCounted(StrategyFactory factory)
            throws IOException, ReflectiveOperationException {
        assertThat(Files.readAllLines(Path.of("../docs/strategies.md"))).contains(card(factory));
    }

    @ParameterizedTest
    @MethodSource("strategies")
    void everyStrategyHasASection(StrategyFactory factory) throws IOException {
        String title = factory.descriptor().name();
        assertThat(Files.readAllLines(Path.of("../docs/strategies.md")))
                .contains("## " + title.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + title.substring(1));
    }

    private static String card(StrategyFactory factory) throws ReflectiveOperationException {
        StrategyDescriptor descriptor = factory.descriptor();
        Provision everything = new Provision(RATE_HZ, EnumSet.allOf(Channel.class));
        int bytes = StateSize.of(factory.create(Settings.of(descriptor.settings(), Map.of()), everything));
        OperationCount operations = OperationCount.of(factory.getClass());
        return "| "
                + String.join(
                        " | ",
                        List.of(
                                descriptor.name(),
                                channels(descriptor.requiredChannels()),
                                channels(descriptor.optionalChannels()),
                                names(descriptor, Setting.Role.TUNED),
                                others(descriptor),
                                Integer.toString(bytes),
                                Long.toString(operations.worstTick()),
                                Long.toString(operations.perBlow())))
                + " |";
    }

    private static String channels(Collection<Channel> channels) {
        String titles = channels.stream().sorted().map(Channel::title).collect(Collectors.joining(", "));
        return titles.isEmpty() ? "none" : titles;
    }

    private static String names(StrategyDescriptor descriptor, Setting.Role role) {
        return joined(descriptor.settings().stream().filter(setting -> setting.role() == role));
    }

    /** Names of the settings that tuning leaves alone; a row of numbered ones by its count. */
    private static String others(StrategyDescriptor descriptor) {
        List<Setting> others = descriptor.settings().stream()
                .filter(setting -> setting.role() != Setting.Role.TUNED)
                .toList();
        return others.size() > 6 ? others.size() + " settings" : joined(others.stream());
    }

    private static String joined(Stream<Setting> settings) {
        String names = settings.map(Setting::name).collect(Collectors.joining(", "));
        return names.isEmpty() ? "none" : names;
    }
}
