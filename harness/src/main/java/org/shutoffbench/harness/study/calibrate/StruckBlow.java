package org.shutoffbench.harness.study.calibrate;

/**
 * One blow on the calibration bench, from rest to rest.
 *
 * @param meanSpeedRadPerS mean carrier speed since the blow before
 * @param contactSpeedRadPerS carrier speed at contact: mean over the next 3.5 ms, while it stays
 * @param hammerEnergyJ J_h omega_h^2 / 2 at first contact
 * @param workJ work that turned the nut
 * @param torqueNm torque to move the nut, mean of before and after
 * @param isFirst whether it is the first that found the nut at rest
 * @param isAfterRundown whether the nut had run freely into snug before it
 * @param torqueAfterNm torque to move the nut after it
 * @param pulseAreaNms area of its first torque pulse as a sensor of 2 kHz reads it; 0 if none was seen
 */
record StruckBlow(
        double meanSpeedRadPerS,
        double contactSpeedRadPerS,
        double hammerEnergyJ,
        double workJ,
        double torqueNm,
        boolean isFirst,
        boolean isAfterRundown,
        double torqueAfterNm,
        double pulseAreaNms) {

    double transmission() {
        return workJ / hammerEnergyJ;
    }

    /** tau = T / sqrt(2 E k_s). */
    double tau(double socketStiffnessNmPerRad) {
        return torqueNm / Math.sqrt(2 * hammerEnergyJ * socketStiffnessNmPerRad);
    }
}
