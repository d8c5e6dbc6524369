package org.shutoffbench.tool;

/**
 * An impact tool as four inertias: carrier with motor, hammer, anvil with half the socket, nut with the other half.
 *
 * @param motor motor through its gears, with the carrier's inertia
 * @param cam cam and preloaded spring between carrier and hammer
 * @param hammer hammer and its lugs
 * @param socket anvil, socket and nut side
 * @param housing tool body on the operator's arm
 */
public record ImpactTool(Motor motor, Cam cam, Hammer hammer, Socket socket, Housing housing) {

    /** Kinetic energy of the four inertias at their speeds in rad/s, J. */
    public double kineticEnergyJ(double carrier, double hammerSpeed, double anvil, double nut) {
        return 0.5
                * (motor.inertiaKgM2() * carrier * carrier
                        + hammer.inertiaKgM2() * hammerSpeed * hammerSpeed
                        + socket.anvilInertiaKgM2() * anvil * anvil
                        + socket.nutInertiaKgM2() * nut * nut);
    }
}
