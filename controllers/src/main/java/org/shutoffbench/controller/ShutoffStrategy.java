package org.shutoffbench.controller;

/**
 * Decides, sample by sample, when an impact tool stops.
 *
 * <p>The sample period is fixed when the strategy is made. {@link #arm} resets everything: the same instance on the same
 * samples gives the same commands. A shutoff latches: after the first COAST or BRAKE every later command is a shutoff too.
 * {@link #onSample} never throws and never allocates; an impossible sample leads to a documented command.
 */
public interface ShutoffStrategy {

    /** Prepares for one tightening. */
    void arm(Target target);

    /** Takes one sample and answers with a command that acts from the next sample on. */
    Command onSample(SensorFrame frame);

    /** What the strategy claims of the joint; NOT_REACHED until it has stopped. */
    Verdict verdict();

    /**
     * Hands out the strategy's own view, in the order named by its descriptor; NaN where it has none yet.
     *
     * @param into receives the estimates; at least as long as the descriptor's list
     * @return how many were written
     */
    int estimates(float[] into);
}
