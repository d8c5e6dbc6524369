package org.shutoffbench.controller.strategy;

import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.Setting.Role;
import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.signal.RandomWalkKalman;

/** Work of a blow on the nut from the carrier's speed before contact; constants learned by calibration of a tool. */
final class BlowEnergy {

    static final Setting AT_REST = new Setting(
            BlowSettings.ENERGY_AT_REST,
            "J",
            -20,
            50,
            1.096,
            "hammer energy at first contact, extrapolated to a carrier at rest",
            Role.LEARNED);

    static final Setting PER_SPEED = new Setting(
            BlowSettings.ENERGY_PER_SPEED,
            "J s/rad",
            0,
            1,
            0.0194,
            "growth of hammer energy with carrier speed just before contact",
            Role.LEARNED);

    static final Setting TRANSMISSION = new Setting(
            BlowSettings.TRANSMISSION,
            "1",
            0.05,
            1,
            0.69,
            "work on the nut over hammer energy at first contact",
            Role.LEARNED);

    private static final float LEAST_ENERGY_J = 0.05f;
    private static final float SPEED_WANDER = 1f;
    private static final float SPEED_ERROR = 4f;

    private final float atRestJ;
    private final float perSpeedJs;
    private final float transmission;
    private final RandomWalkKalman speed = new RandomWalkKalman();

    BlowEnergy(Settings settings) {
        this.atRestJ = settings.get(AT_REST.name());
        this.perSpeedJs = settings.get(PER_SPEED.name());
        this.transmission = settings.get(TRANSMISSION.name());
    }

    void reset() {
        speed.reset(0, Float.POSITIVE_INFINITY);
    }

    /** Takes the carrier's speed before a blow, rad/s. */
    void update(float carrierSpeedRadPerS) {
        speed.predict(0, SPEED_WANDER);
        speed.update(carrierSpeedRadPerS, SPEED_ERROR);
    }

    /** Carrier speed before blows, smoothed, rad/s. */
    float carrierSpeedRadPerS() {
        return speed.level();
    }

    /** Work that such a blow does on the nut, J; positive. */
    float workJ() {
        return transmission * Math.max(LEAST_ENERGY_J, atRestJ + perSpeedJs * speed.level());
    }
}
