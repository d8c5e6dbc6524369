package org.shutoffbench.tool;

/**
 * Anvil, socket and nut side.
 *
 * @param anvilInertiaKgM2 J_a, anvil with half the socket
 * @param nutInertiaKgM2 J_n, nut with the other half
 * @param stiffnessNmPerRad k_s
 * @param dampingNmSPerRad c_s
 */
public record Socket(
        double anvilInertiaKgM2, double nutInertiaKgM2, double stiffnessNmPerRad, double dampingNmSPerRad) {}
