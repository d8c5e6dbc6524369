package org.shutoffbench.harness.visits;

/**
 * One way to get joints done, per joint of the job.
 *
 * @param title for people
 * @param seconds labour and tool time
 * @param cost labour, rework, escapes
 * @param rework share of joints that are put right
 * @param leftLow share of joints that stay low or unseated and are called done
 */
public record Way(String title, Bounded seconds, Bounded cost, Bounded rework, Bounded leftLow) {}
