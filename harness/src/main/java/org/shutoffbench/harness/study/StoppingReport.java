package org.shutoffbench.harness.study;

/**
 * Which rule ended the run.
 *
 * @param rule "fixed number of joints", "interval narrow enough" or "ranking decided"
 * @param reason in words
 * @param looks times the rule looked at the data
 * @param finished false where the run was interrupted before its rule was met
 */
public record StoppingReport(String rule, String reason, int looks, boolean finished) {}
