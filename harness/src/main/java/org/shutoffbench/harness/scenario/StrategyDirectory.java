package org.shutoffbench.harness.scenario;

import java.nio.file.Path;
import java.util.Set;
import org.shutoffbench.controller.StrategyDescriptor;

/** Where a scenario's strategies are found. */
public interface StrategyDirectory {

    /** Names of the strategies that need no jar. */
    Set<String> names();

    /** What a named strategy declares. */
    StrategyDescriptor descriptor(String name);

    /**
     * What a strategy from outside declares.
     *
     * @throws IllegalArgumentException with a message for people, where it cannot be had
     */
    StrategyDescriptor external(String className, Path jar);
}
