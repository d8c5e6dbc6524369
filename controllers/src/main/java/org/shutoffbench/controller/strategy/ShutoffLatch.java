package org.shutoffbench.controller.strategy;

import org.shutoffbench.controller.Command;
import org.shutoffbench.controller.Target;
import org.shutoffbench.controller.Verdict;

/**
 * The end of a drive: full drive until shut, then one stop command and one verdict that stay.
 *
 * <p>A target of 0 N m is reached before anything moves: strategies brake at the first sample and say REACHED.
 */
public final class ShutoffLatch {

    private Command command = Command.FULL;
    private Verdict verdict = Verdict.NOT_REACHED;
    private boolean nothingToReach;

    /** Opens the latch for one tightening. */
    public void arm(Target target) {
        command = Command.FULL;
        verdict = Verdict.NOT_REACHED;
        nothingToReach = target.clampingTorqueNm() == 0;
    }

    /** True where the target is 0 N m. */
    public boolean hasNothingToReach() {
        return nothingToReach;
    }

    /** True until shut. */
    public boolean isOpen() {
        return !command.isShutoff();
    }

    /** Brakes; the first call counts, later ones change nothing. */
    public void shut(Verdict claim) {
        if (isOpen()) {
            command = Command.BRAKE;
            verdict = claim;
        }
    }

    /** Full drive while open, then the stop command. */
    public Command command() {
        return command;
    }

    /** NOT_REACHED while open, then the claim it was shut with. */
    public Verdict verdict() {
        return verdict;
    }
}
