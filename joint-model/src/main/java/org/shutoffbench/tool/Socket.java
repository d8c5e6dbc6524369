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
        double anvilInertiaKgM2, double nutInertiaKgM2, double stiffnessNmPerRad, double dampingNmSPerRad) {

    public Socket {
        ToolChecks.positive("J_a", anvilInertiaKgM2);
        ToolChecks.positive("J_n", nutInertiaKgM2);
        ToolChecks.positive("k_s", stiffnessNmPerRad);
        ToolChecks.notNegative("c_s", dampingNmSPerRad);
    }

    /** Energy of the socket wound up by an angle, J. */
    public double energyJ(double twistRad) {
        return 0.5 * stiffnessNmPerRad * twistRad * twistRad;
    }

    /** Most torque that an energy can bring on a nut at rest: spring and damper at their worst together, N m. */
    public double greatestTorqueNm(double energyJ) {
        return Math.sqrt(2 * energyJ * (stiffnessNmPerRad + dampingNmSPerRad * dampingNmSPerRad / anvilInertiaKgM2));
    }
}
