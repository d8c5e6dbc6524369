package org.shutoffbench.tool;

/**
 * Tool body on the operator's arm; it only disturbs what the tool measures against its own housing.
 *
 * @param inertiaKgM2 J_b
 * @param dampingNmSPerRad c_b
 * @param stiffnessNmPerRad k_b
 */
public record Housing(double inertiaKgM2, double dampingNmSPerRad, double stiffnessNmPerRad) {}
