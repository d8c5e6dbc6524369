package org.shutoffbench.harness.study.calibrate;

import java.util.List;
import org.shutoffbench.tool.ImpactTool;

/**
 * How far a calibration is off on joints that it has not seen, blow by blow; for each figure the root mean square of the
 * relative error.
 *
 * @param joints fresh joints
 * @param blows on them
 * @param blowEnergyError of the energy from the carrier's mean speed
 * @param transmissionError of the transmission at 15 N m and above
 * @param lowTorqueTransmissionError of the transmission below 15 N m, where the nut turns for long under the motor
 */
public record CalibrationCheck(
        int joints, int blows, double blowEnergyError, double transmissionError, double lowTorqueTransmissionError) {

    private static final double LOW_TORQUE_NM = 15;

    /** Strikes joints beyond those that the calibration was made of. */
    public static CalibrationCheck of(ImpactTool tool, Calibration calibration, int joints, int skip) {
        List<StruckBlow> blows = Calibration.strike(tool, joints, skip).blows.stream()
                .filter(blow -> !blow.isFirst())
                .toList();
        double energy = 0;
        double transmission = 0;
        double low = 0;
        int lowBlows = 0;
        for (StruckBlow blow : blows) {
            double wrongEnergy = calibration.blowEnergyJ(blow.meanSpeedRadPerS()) / blow.hammerEnergyJ() - 1;
            double said = calibration.transmission(blow.tau(tool.socket().stiffnessNmPerRad()));
            double wrongShare = said / blow.transmission() - 1;
            energy += wrongEnergy * wrongEnergy;
            if (blow.torqueNm() < LOW_TORQUE_NM) {
                low += wrongShare * wrongShare;
                lowBlows++;
            } else {
                transmission += wrongShare * wrongShare;
            }
        }
        return new CalibrationCheck(
                joints,
                blows.size(),
                Math.sqrt(energy / blows.size()),
                Math.sqrt(transmission / Math.max(1, blows.size() - lowBlows)),
                Math.sqrt(low / Math.max(1, lowBlows)));
    }
}
