package org.shutoffbench.tool;

/**
 * Cam with preloaded spring; delta = carrier angle - hammer angle.
 *
 * @param preloadTorqueNm T_0
 * @param stiffnessNmPerRad k_c
 * @param dampingNmSPerRad c_c
 * @param seatAngleRad delta_0, over which the preload turns round
 * @param liftOffAngleRad delta_dis, beyond which the hammer lifts off
 * @param grooveEndRad delta_max, end of the groove
 * @param grooveStiffnessNmPerRad stiffness beyond the groove end
 * @param grooveDampingNmSPerRad damping beyond the groove end
 */
public record Cam(
        double preloadTorqueNm,
        double stiffnessNmPerRad,
        double dampingNmSPerRad,
        double seatAngleRad,
        double liftOffAngleRad,
        double grooveEndRad,
        double grooveStiffnessNmPerRad,
        double grooveDampingNmSPerRad) {}
