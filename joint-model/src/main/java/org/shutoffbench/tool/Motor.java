package org.shutoffbench.tool;

/**
 * Motor through its gears: T_m = T_st (u v - omega / omega_0), clipped to +-T_lim.
 *
 * @param inertiaKgM2 J_m of carrier and motor seen at the carrier
 * @param stallTorqueNm T_st at full drive and full supply
 * @param torqueLimitNm T_lim of the electronics
 * @param noLoadSpeedRadPerS omega_0 at full drive and full supply
 * @param dragTorqueNm T_d when coasting
 */
public record Motor(
        double inertiaKgM2,
        double stallTorqueNm,
        double torqueLimitNm,
        double noLoadSpeedRadPerS,
        double dragTorqueNm) {

    /** Motor drag when coasting, N m (assumed, not measured). */
    public static final double ASSUMED_DRAG_TORQUE_NM = 0.05;

    public Motor {
        ToolChecks.positive("J_m", inertiaKgM2);
        ToolChecks.positive("T_st", stallTorqueNm);
        ToolChecks.positive("T_lim", torqueLimitNm);
        ToolChecks.positive("omega_0", noLoadSpeedRadPerS);
        ToolChecks.notNegative("T_d", dragTorqueNm);
    }
}
