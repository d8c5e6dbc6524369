package org.shutoffbench.controller.strategy;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.strategy.adaptive.AdaptiveEstimation;

/** The catalogue: every strategy of the project by the name that scenario files use. */
public final class Strategies {

    private static final Map<String, StrategyFactory> BY_NAME = catalogue();

    private Strategies() {}

    /** All factories by name, from the simplest strategy to the most elaborate; unmodifiable. */
    public static Map<String, StrategyFactory> byName() {
        return BY_NAME;
    }

    private static Map<String, StrategyFactory> catalogue() {
        Map<String, StrategyFactory> all = new LinkedHashMap<>();
        enter(all, new ElapsedTime.Factory());
        enter(all, new OperatorFeel.Factory());
        enter(all, new BlowCount.Factory());
        enter(all, new GatedBlowCount.Factory());
        enter(all, new AngleFromSnug.Factory());
        enter(all, new PulseTorqueThreshold.Factory());
        enter(all, new TorqueMinusPrevailing.Factory());
        enter(all, new TorqueGradient.Factory());
        enter(all, new EnergyPerBlow.Factory());
        enter(all, new LearnedRegression.Factory());
        enter(all, new AdaptiveEstimation());
        return Collections.unmodifiableMap(all);
    }

    private static void enter(Map<String, StrategyFactory> all, StrategyFactory factory) {
        all.put(factory.descriptor().name(), factory);
    }
}
