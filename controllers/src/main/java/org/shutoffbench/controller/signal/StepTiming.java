package org.shutoffbench.controller.signal;

/**
 * When the anvil is at rest around a blow, seen from the moment a detector reports it.
 *
 * @param settleS from the report until the step can be measured
 * @param afterS how far back the window after the blow reaches at that moment
 * @param skipS how far back the window before the blow ends
 * @param beforeS how far back the window before the blow begins
 */
record StepTiming(float settleS, float afterS, float skipS, float beforeS) {

    /**
     * For detectors that report at first contact, up to a millisecond late: rest from 5 to 1.2 ms before the report and
     * from 2 to 4 ms after it. Below 8 N m the nut still turns 2 ms after contact, and a step comes out a little short.
     */
    static final StepTiming AT_CONTACT = new StepTiming(4e-3f, 2e-3f, 5.2e-3f, 9e-3f);

    /** For the dip of the carrier's speed, 6 to 6.5 ms after contact: the step can be measured at once. */
    static final StepTiming AT_DIP = new StepTiming(0, 3e-3f, 7.4e-3f, 11.2e-3f);
}
