package org.shutoffbench.harness.scenario;

/**
 * Draws taken from another population: joint 0 of this scenario draws what the named joint draws there, joint 1 what the
 * next one does, and so on.
 *
 * @param seed root seed there
 * @param scenario name of the scenario there
 * @param family name of the family there
 * @param joint joint number there
 */
public record PinnedDraws(long seed, String scenario, String family, int joint) {}
