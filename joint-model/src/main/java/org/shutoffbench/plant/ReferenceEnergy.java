package org.shutoffbench.plant;

import org.shutoffbench.plant.ReferenceMode.Lug;
import org.shutoffbench.tool.Cam;

/** Kinetic and spring energy of the four bodies; the joint's own elastic energy is not counted. */
final class ReferenceEnergy {

    private ReferenceEnergy() {}

    static double storedJ(ReferenceMode mode, double[] y) {
        double gap = mode.lug == Lug.FREE ? 0 : Math.max(0, y[ReferenceMode.PSI]);
        return mode.tool.kineticEnergyJ(
                        y[ReferenceMode.CARRIER], y[ReferenceMode.HAMMER], y[ReferenceMode.ANVIL], y[ReferenceMode.NUT])
                + camJ(mode.tool.cam(), Math.abs(y[ReferenceMode.DELTA]))
                + mode.tool.hammer().lugEnergyJ(gap)
                + mode.tool.socket().energyJ(y[ReferenceMode.TWIST]);
    }

    private static double camJ(Cam cam, double reach) {
        double preload = reach < cam.seatAngleRad()
                ? cam.preloadTorqueNm() * reach * reach / (2 * cam.seatAngleRad())
                : cam.preloadTorqueNm() * (reach - cam.seatAngleRad() / 2);
        double beyond = Math.max(0, reach - cam.grooveEndRad());
        return preload
                + cam.stiffnessNmPerRad() * reach * reach / 2
                + cam.grooveStiffnessNmPerRad() * beyond * beyond / 2;
    }
}
