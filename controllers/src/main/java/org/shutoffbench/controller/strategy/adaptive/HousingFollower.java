package org.shutoffbench.controller.strategy.adaptive;

import org.shutoffbench.controller.Settings;

/**
 * Follows the housing on the operator's arm under the motor's torque: J b'' + c b' + k b = -T_m, T_m from the carrier's speed
 * by the motor's line. What the tool measures against its housing is moved back by it; the arm's own sway remains.
 */
final class HousingFollower {

    /** Supply ratio that is assumed; an error shifts the housing as a whole, which no difference of angles sees. */
    private static final float ASSUMED_SUPPLY = 0.96f;

    private final float periodS;
    private final float suppliedNm;
    private final float limitNm;
    private final float torquePerSpeed;
    private final float periodPerInertia;
    private final float damping;
    private final float stiffness;

    private float angleRad;
    private float rateRadPerS;

    HousingFollower(Settings settings, float periodS) {
        this.periodS = periodS;
        float stallNm = settings.get(ToolSettings.STALL_TORQUE);
        suppliedNm = ASSUMED_SUPPLY * stallNm;
        limitNm = settings.get(ToolSettings.TORQUE_LIMIT);
        torquePerSpeed = stallNm / settings.get(ToolSettings.NO_LOAD_SPEED);
        periodPerInertia = periodS / settings.get(ToolSettings.HOUSING_INERTIA);
        damping = settings.get(ToolSettings.ARM_DAMPING);
        stiffness = settings.get(ToolSettings.ARM_STIFFNESS);
    }

    void reset() {
        angleRad = 0;
        rateRadPerS = 0;
    }

    /** Moves on by one period; the housing's angle in rad, positive = tightening. */
    float follow(float driveLevel, float carrierSpeedRadPerS) {
        float torque = suppliedNm * driveLevel - torquePerSpeed * carrierSpeedRadPerS;
        float motor = Math.max(-limitNm, Math.min(limitNm, torque));
        rateRadPerS -= periodPerInertia * (motor + damping * rateRadPerS + stiffness * angleRad);
        angleRad += periodS * rateRadPerS;
        return angleRad;
    }
}
