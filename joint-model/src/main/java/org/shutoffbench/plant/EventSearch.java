package org.shutoffbench.plant;

/** Finds the earliest fall through a level that any of several series shows within one step. */
final class EventSearch {

    private final double[] scratch = Series.allocate();
    private final double[] heldCamTorque = Series.allocate();

    /** Part of the step after which the earliest event is due, or up to which the series carry. */
    double first;

    /** What is due there. */
    int event;

    /** Begins a search up to a part of the step. */
    void begin(double horizon) {
        first = horizon;
        event = Event.NONE;
    }

    /** Looks whether {@code sign * (c - level)} falls below zero before anything found so far. */
    void watch(int what, double[] c, double sign, double level) {
        double t = Series.firstFall(c, sign, level, 0, first, scratch);
        if (t <= first) {
            first = t;
            event = what;
        }
    }

    /** Looks when the cam torque overcomes the drag that holds a coasting carrier. */
    void watchHeldCarrier(MotorAndCam drive, double[] delta, double[] hammerSpeed) {
        for (int k = 0; k <= Series.ORDER; k++) {
            heldCamTorque[k] = drive.camStiffness * delta[k] - drive.camDamping * hammerSpeed[k];
        }
        heldCamTorque[0] += drive.camConstant;
        watch(Event.CARRIER_BACK, heldCamTorque, -1, drive.dragTorque());
        watch(Event.CARRIER_ON, heldCamTorque, 1, -drive.dragTorque());
    }
}
