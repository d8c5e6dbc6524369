package org.shutoffbench.harness.visits;

/**
 * What leaving out the audit of every joint means for a job, in expectation.
 *
 * @param joints joints of the job, families in equal shares
 * @param savedHours labour saved, audits and the rework that they ask for
 * @param leftLowOnePass joints left low by the tool
 * @param leftLowAudited joints left low after an audit of every joint
 * @param uncaught joints that the audit would have caught and that stay low without it
 */
public record Job(long joints, Bounded savedHours, Bounded leftLowOnePass, Bounded leftLowAudited, Bounded uncaught) {}
