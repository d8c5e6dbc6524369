package org.shutoffbench.harness.study.calibrate;

import org.shutoffbench.plant.Drive;
import org.shutoffbench.plant.FastPlant;

/** Strikes one last blow at reduced drive on a copy of a plant. */
final class TrimBench {

    /** Drive is reduced this long after the contact before, s. */
    private static final double REDUCED_AFTER_S = 6e-3;
    /** A blow that has not come by then does not come, s. */
    private static final double WAIT_S = 0.1;

    private static final double RUN_ON_S = 0.5;

    private final FastPlant copy = new FastPlant();
    private double plannedS;

    /** Advance of the nut in the next blow if drive is reduced and then stopped, rad; 0 if no blow comes. */
    double advanceRad(FastPlant original, double originalPlannedS, double contactS, double level) {
        copy.copyFrom(original);
        plannedS = originalPlannedS;
        double reduceS = contactS + REDUCED_AFTER_S;
        until(reduceS);
        copy.commitAt(reduceS);
        int next = copy.state().blows + 1;
        double restRad = copy.state().nutAngleRad;
        command(Drive.KEEP, level);
        double limitS = reduceS + WAIT_S;
        while (copy.state().blows < next && plannedS < limitS) {
            commit();
        }
        command(Drive.BRAKE, 0);
        double settledS = copy.state().timeS + RUN_ON_S;
        while (!copy.isSettled() && plannedS < settledS) {
            commit();
        }
        return copy.state().nutAngleRad - restRad;
    }

    private void command(Drive drive, double level) {
        copy.command(drive, level);
        plannedS = copy.plan();
    }

    private void until(double timeS) {
        while (plannedS < timeS) {
            commit();
        }
    }

    private void commit() {
        copy.commit();
        plannedS = copy.plan();
    }
}
