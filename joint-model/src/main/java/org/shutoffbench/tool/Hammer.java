package org.shutoffbench.tool;

/**
 * Hammer and its lugs.
 *
 * @param inertiaKgM2 J_h
 * @param lugsPerTurn N_l
 * @param lugStiffnessNmPerRad k_l
 * @param lugDampingNmSPerRad c_l
 */
public record Hammer(double inertiaKgM2, int lugsPerTurn, double lugStiffnessNmPerRad, double lugDampingNmSPerRad) {

    public Hammer {
        ToolChecks.positive("J_h", inertiaKgM2);
        ToolChecks.positive("N_l", lugsPerTurn);
        ToolChecks.positive("k_l", lugStiffnessNmPerRad);
        ToolChecks.notNegative("c_l", lugDampingNmSPerRad);
    }

    /** Angle from lug to lug, rad. */
    public double lugPitchRad() {
        return 2 * Math.PI / lugsPerTurn;
    }

    /** Energy of lugs pressed into each other by an angle, J. */
    public double lugEnergyJ(double gapRad) {
        return 0.5 * lugStiffnessNmPerRad * gapRad * gapRad;
    }
}
