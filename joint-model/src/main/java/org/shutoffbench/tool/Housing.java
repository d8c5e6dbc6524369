package org.shutoffbench.tool;

/**
 * Tool body on the operator's arm; it only disturbs what the tool measures against its own housing.
 *
 * @param inertiaKgM2 J_b
 * @param dampingNmSPerRad c_b
 * @param stiffnessNmPerRad k_b
 */
public record Housing(double inertiaKgM2, double dampingNmSPerRad, double stiffnessNmPerRad) {

    public Housing {
        ToolChecks.positive("J_b", inertiaKgM2);
        ToolChecks.notNegative("c_b", dampingNmSPerRad);
        ToolChecks.notNegative("k_b", stiffnessNmPerRad);
    }
}
