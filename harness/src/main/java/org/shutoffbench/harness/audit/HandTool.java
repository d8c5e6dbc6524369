package org.shutoffbench.harness.audit;

/**
 * The hand tool of one audit.
 *
 * @param gain its deviation, as a share of the torque
 * @param repeatError error of this reading, as a share of the torque
 * @param resolutionNm step of its scale, N m; 0 for none
 */
record HandTool(double gain, double repeatError, double resolutionNm) {

    /** What it shows for a torque, N m; not below 0. */
    double readingNm(double torqueNm) {
        double shown = Math.max(0, torqueNm * (1 + gain + repeatError));
        return resolutionNm > 0 ? resolutionNm * Math.rint(shown / resolutionNm) : shown;
    }
}
