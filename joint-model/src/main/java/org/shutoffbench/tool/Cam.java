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
        double grooveDampingNmSPerRad) {

    public Cam {
        ToolChecks.notNegative("T_0", preloadTorqueNm);
        ToolChecks.positive("k_c", stiffnessNmPerRad);
        ToolChecks.notNegative("c_c", dampingNmSPerRad);
        ToolChecks.positive("delta_0", seatAngleRad);
        ToolChecks.notNegative("groove stiffness", grooveStiffnessNmPerRad);
        ToolChecks.notNegative("groove damping", grooveDampingNmSPerRad);
        if (!(seatAngleRad < liftOffAngleRad && liftOffAngleRad < grooveEndRad && grooveEndRad < 100)) {
            throw new IllegalArgumentException("cam angles must rise: delta_0 < delta_dis < delta_max");
        }
    }

    /** Spring energy at lift-off: with less than this in the whole machine the hammer passes no more lugs, J. */
    public double liftOffEnergyJ() {
        return preloadTorqueNm * (liftOffAngleRad - seatAngleRad / 2)
                + stiffnessNmPerRad * liftOffAngleRad * liftOffAngleRad / 2;
    }
}
