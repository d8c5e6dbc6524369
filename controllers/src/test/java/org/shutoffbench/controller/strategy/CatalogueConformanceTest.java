package org.shutoffbench.controller.strategy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collection;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.conformance.ConformanceSuite;
import org.shutoffbench.controller.conformance.Finding;
import org.shutoffbench.controller.conformance.StateSize;

class CatalogueConformanceTest {

    static Collection<StrategyFactory> all() {
        return Strategies.byName().values();
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyStrategyOfTheCatalogueKeepsTheContract(StrategyFactory factory) {
        assertThat(ConformanceSuite.examine(factory))
                .as(factory.descriptor().name())
                .allMatch(Finding::passed);
    }

    @ParameterizedTest
    @MethodSource("all")
    void theDeclaredStateSizeIsTheCountedOne(StrategyFactory factory) {
        var descriptor = factory.descriptor();
        var channels = new java.util.HashSet<>(descriptor.requiredChannels());
        channels.addAll(descriptor.optionalChannels());
        var strategy =
                factory.create(Settings.of(descriptor.settings(), java.util.Map.of()), new Provision(10_000, channels));
        assertThat(descriptor.stateBytes()).as(descriptor.name()).isEqualTo(StateSize.of(strategy));
    }
}
