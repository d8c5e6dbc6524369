package org.shutoffbench.tool;

/**
 * Hammer and its lugs.
 *
 * @param inertiaKgM2 J_h
 * @param lugsPerTurn N_l
 * @param lugStiffnessNmPerRad k_l
 * @param lugDampingNmSPerRad c_l
 */
public record Hammer(double inertiaKgM2, int lugsPerTurn, double lugStiffnessNmPerRad, double lugDampingNmSPerRad) {}
