package org.shutoffbench.harness.record;

/**
 * What makes two runs the same: equal identities give equal bytes.
 *
 * @param version of the bench
 * @param scenarioHash of the resolved scenario, hex
 * @param seed root seed
 * @param jointsPerFamily joints in every family
 */
public record RunIdentity(String version, String scenarioHash, long seed, int jointsPerFamily) {}
