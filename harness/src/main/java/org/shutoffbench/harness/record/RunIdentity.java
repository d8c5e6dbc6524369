package org.shutoffbench.harness.record;

/**
 * What makes two runs the same: equal identities give equal bytes.
 *
 * @param version of the bench
 * @param scenarioHash of the resolved scenario, hex
 * @param seed root seed
 * @param jointsPerFamily joints in every family, the most of them where a rule may end the run before
 * @param stop rule that ends the run
 */
public record RunIdentity(String version, String scenarioHash, long seed, int jointsPerFamily, String stop) {}
