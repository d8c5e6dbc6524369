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
        double dragTorqueNm) {}
