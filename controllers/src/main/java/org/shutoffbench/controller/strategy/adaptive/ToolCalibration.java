package org.shutoffbench.controller.strategy.adaptive;

import org.shutoffbench.controller.Settings;

/**
 * What is known of the tool beforehand: energy of a blow against carrier speed, share of it that turns the nut against
 * torque, energy of the run-down, and how far a last blow at reduced drive goes. Measured on the nominal tool and on joints
 * of its own, never on joints that are judged.
 */
final class ToolCalibration {

    private static final float LEAST_NM = 0.1f;

    private final float slowestRadPerS;
    private final float perSpeedStep;
    private final float[] energyJ = new float[ToolSettings.ENERGIES];
    private final float firstBlowJ;
    private final float firstBlowSlope;
    private final float pulseNm;
    private final float pulseExponent;
    private final float twiceSocketStiffness;
    private final float rundownJs2;
    private final float[] transmission = new float[ToolSettings.TRANSMISSIONS];
    private final float[] slowTrim = new float[ToolSettings.TRIMS];
    private final float[] fastTrim = new float[ToolSettings.TRIMS];

    /** Error of the advance of a last blow at reduced drive, over that of a full one. */
    final float lastBlowSpread;

    /** Relative error of the torque that a pulse tells, a sensor's gain included. */
    final float pulseSpread;

    /** Relative error of the energy of the first blow after a run-down. */
    final float firstBlowSpread;

    /** Relative standard deviation of the run-down's energy. */
    final float rundownSpread;

    /** Transmission, and its slope over torque in 1/(N m), from the last {@link #lookUp}. */
    float share;

    float sharePerNm;

    ToolCalibration(Settings settings) {
        slowestRadPerS = settings.get(ToolSettings.SLOWEST_SPEED);
        perSpeedStep = 1 / settings.get(ToolSettings.SPEED_STEP);
        for (int i = 0; i < energyJ.length; i++) {
            energyJ[i] = settings.get(ToolSettings.energyAt(i));
        }
        firstBlowJ = settings.get(ToolSettings.FIRST_BLOW);
        firstBlowSlope = settings.get(ToolSettings.FIRST_BLOW_SLOPE);
        firstBlowSpread = settings.get(ToolSettings.FIRST_BLOW_SPREAD);
        rundownJs2 = settings.get(ToolSettings.RUNDOWN) / (ToolSettings.REFERENCE_SPEED * ToolSettings.REFERENCE_SPEED);
        rundownSpread = settings.get(ToolSettings.RUNDOWN_SPREAD);
        lastBlowSpread = settings.get(ToolSettings.LAST_BLOW_SPREAD);
        pulseNm = settings.get(ToolSettings.PULSE_TORQUE);
        pulseExponent = settings.get(ToolSettings.PULSE_EXPONENT);
        float gain = pulseExponent * settings.get(AdaptiveSettings.GAIN_SPREAD);
        float spread = settings.get(ToolSettings.PULSE_SPREAD);
        pulseSpread = (float) Math.sqrt(spread * spread + gain * gain);
        twiceSocketStiffness = 2 * settings.get(ToolSettings.SOCKET_STIFFNESS);
        for (int i = 0; i < transmission.length; i++) {
            transmission[i] = settings.get(ToolSettings.transmissionAt(i));
        }
        for (int i = 0; i < slowTrim.length; i++) {
            slowTrim[i] = settings.get(ToolSettings.trimAt(i, false));
            fastTrim[i] = settings.get(ToolSettings.trimAt(i, true));
        }
    }

    /** Energy of a blow in J from the carrier's mean speed since the blow before, rad/s. */
    float blowEnergyJ(float meanSpeedRadPerS) {
        float x = (meanSpeedRadPerS - slowestRadPerS) * perSpeedStep;
        int i = Math.max(0, Math.min(energyJ.length - 2, (int) x));
        return Math.max(0.1f, energyJ[i] + (x - i) * (energyJ[i + 1] - energyJ[i]));
    }

    /** Energy in J of a blow after a run-down, from the carrier's speed at contact, rad/s. */
    float firstBlowEnergyJ(float speedRadPerS) {
        return Math.max(0.1f, firstBlowJ + firstBlowSlope * (speedRadPerS - ToolSettings.REFERENCE_SPEED));
    }

    /** Torque in N m after a blow whose torque pulse has an area in N m s; 0 for none that says anything. */
    float pulseTorqueNm(float areaNms) {
        if (areaNms <= 0) {
            return 0;
        }
        float torque =
                pulseNm * (float) Math.exp(pulseExponent * (float) Math.log(areaNms / ToolSettings.REFERENCE_AREA));
        boolean wasCalibrated = torque > ToolSettings.LEAST_PULSE_NM && torque < ToolSettings.GREATEST_PULSE_NM;
        return wasCalibrated ? torque : 0;
    }

    /** Energy in J that a free run-down brings into the joint, from the highest carrier speed, rad/s. */
    float rundownEnergyJ(float speedRadPerS) {
        return rundownJs2 * speedRadPerS * speedRadPerS;
    }

    /** Factor from torque to tau for blows of an energy, 1/(N m). */
    float tauPerNm(float blowEnergyJ) {
        return 1 / (float) Math.sqrt(twiceSocketStiffness * blowEnergyJ);
    }

    /** Looks up {@link #share} and {@link #sharePerNm} at a torque in N m. */
    void lookUp(float torqueNm, float tauPerNm) {
        float torque = Math.max(LEAST_NM, torqueNm);
        float x = Math.min(transmission.length - 1, ToolSettings.knotOfTau(torque * tauPerNm));
        int i = Math.min(transmission.length - 2, (int) x);
        float slope = transmission[i + 1] - transmission[i];
        share = transmission[i] + slope * (x - i);
        sharePerNm = slope * x / (2 * torque);
    }

    /** Share of a full blow's advance that a last blow at the least drive level makes, carrier at a mean speed in rad/s. */
    float leastTrim(float meanSpeedRadPerS) {
        return trim(0, fastness(meanSpeedRadPerS));
    }

    /** Drive level for a last blow that makes a share of a full blow's advance; 1 where none makes so much. */
    float levelForShare(float wanted, float meanSpeedRadPerS) {
        float fastness = fastness(meanSpeedRadPerS);
        float below = trim(0, fastness);
        if (wanted <= below) {
            return ToolSettings.levelOfTrim(0);
        }
        for (int i = 1; i < slowTrim.length; i++) {
            float here = trim(i, fastness);
            if (wanted < here) {
                float inside = (wanted - below) / (here - below);
                return ToolSettings.levelOfTrim(i - 1) + inside * ToolSettings.TRIM_STEP;
            }
            below = here;
        }
        return 1;
    }

    private float fastness(float meanSpeedRadPerS) {
        return Math.max(0, Math.min(1, (meanSpeedRadPerS - slowestRadPerS) * perSpeedStep / (energyJ.length - 1)));
    }

    private float trim(int i, float fastness) {
        return slowTrim[i] + fastness * (fastTrim[i] - slowTrim[i]);
    }
}
