package org.shutoffbench.controller.strategy;

import java.util.List;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.Settings;

/**
 * What a blow past snug looks like in a few numbers: the energy balance and what it was made from. Training and the strategy
 * calculate them with this one class, so that they cannot differ.
 */
public final class BlowFeatures {

    /** Names and units, in the order of {@link #value}. */
    public static final List<String> NAMES = List.of(
            "clamping torque by energy balance [N m]",
            "clamping torque after the next blow by energy balance [N m]",
            "running torque [N m]",
            "torque rate [N m/rad]",
            "carrier speed before contact [rad/s]",
            "work over last advance [N m]",
            "angle past snug [rad]",
            "blows past snug [1]",
            "work over angle past snug [N m]");

    /** Number of features. */
    public static final int COUNT = NAMES.size();

    /** Settings that the features depend on. */
    static final List<Setting> SETTINGS =
            List.of(BlowEnergy.AT_REST, BlowEnergy.PER_SPEED, BlowEnergy.TRANSMISSION, SnugSettings.SLOWEST_SEATING);

    private static final float LEAST_ADVANCE_RAD = 0.005f;

    private final BlowSource blows;
    private final BlowEnergy energy;
    private final ClampingTorque clamping;
    private final float[] values = new float[COUNT];
    private float workPastSnugJ;
    private int blowsPastSnug;

    private BlowFeatures(BlowSource blows, BlowEnergy energy, ClampingTorque clamping) {
        this.blows = blows;
        this.energy = energy;
        this.clamping = clamping;
    }

    /** Features of a tool's blows; settings that are not needed are passed over. */
    public static BlowFeatures of(Settings settings, Provision provision) {
        return new BlowFeatures(
                BlowSource.of(provision),
                new BlowEnergy(settings),
                new ClampingTorque(settings.get(SnugSettings.SLOWEST_SEATING.name())));
    }

    /** Forgets the last joint. */
    public void reset() {
        blows.reset();
        energy.reset();
        clamping.reset();
        workPastSnugJ = 0;
        blowsPastSnug = 0;
    }

    /** Takes a sample; true where the features of one more blow past snug are there and all of them are finite. */
    public boolean update(SensorFrame frame) {
        if (!blows.update(frame)) {
            return false;
        }
        energy.update(blows.carrierSpeedRadPerS());
        float workJ = energy.workJ();
        clamping.update(blows.beforeRad(), blows.afterRad(), workJ);
        if (!clamping.isSnug()) {
            return false;
        }
        workPastSnugJ += workJ;
        blowsPastSnug++;
        float pastSnugRad = Math.max(LEAST_ADVANCE_RAD, blows.afterRad() - clamping.snugAngleRad());
        values[0] = clamping.nowNm();
        values[1] = clamping.afterNextBlowNm(workJ);
        values[2] = clamping.runningTorqueNm();
        values[3] = clamping.rateNmPerRad();
        values[4] = energy.carrierSpeedRadPerS();
        values[5] = workJ / Math.max(LEAST_ADVANCE_RAD, blows.afterRad() - blows.beforeRad());
        values[6] = pastSnugRad;
        values[7] = blowsPastSnug;
        values[8] = workPastSnugJ / pastSnugRad;
        return areFinite();
    }

    private boolean areFinite() {
        for (float value : values) {
            if (!Float.isFinite(value)) {
                return false;
            }
        }
        return true;
    }

    /** A feature of the last blow, in the order of {@link #NAMES}. */
    public float value(int feature) {
        return values[feature];
    }

    /** All features of the last blow; read only. */
    float[] values() {
        return values;
    }

    /** What the energy balance alone says of the middle between clamping torque now and after the next blow, N m. */
    public float balanceNm() {
        return (values[0] + values[1]) / 2;
    }

    /** Anvil angle where the joint began to clamp, rad; NaN before it is known. */
    float snugAngleRad() {
        return clamping.snugAngleRad();
    }
}
