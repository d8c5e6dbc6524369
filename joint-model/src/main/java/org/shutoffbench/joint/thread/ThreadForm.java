package org.shutoffbench.joint.thread;

/**
 * Family of a 60 degree thread. Both share one basic profile (ISO 68-1, ASME B1.1) and differ in how the tensile stress
 * area is counted.
 */
public enum ThreadForm {
    /** Mean of pitch diameter and minor diameter d3: d - (0.75 + 17/12)/2 H. Source key {@code ISO-898-1}. */
    METRIC((0.75 + 17.0 / 12.0) / 2 * Math.sqrt(3) / 2),
    /** d - 0.9743 P. Source key {@code ASME-B1.1}. */
    UNIFIED(0.9743);

    private final double stressDiameterDropPerPitch;

    ThreadForm(double stressDiameterDropPerPitch) {
        this.stressDiameterDropPerPitch = stressDiameterDropPerPitch;
    }

    /** Diameter of the circle whose area is the tensile stress area, m. */
    double stressDiameterM(double majorDiameterM, double pitchM) {
        return majorDiameterM - stressDiameterDropPerPitch * pitchM;
    }
}
