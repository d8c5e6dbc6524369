package org.shutoffbench.plant;

import org.shutoffbench.tool.ImpactTool;
import org.shutoffbench.tool.Motor;

/** What a machine without drive can still do with the energy left in it: bounds, never estimates. */
final class Settling {

    private Settling() {}

    /**
     * No further blow can fall: the hammer cannot lift off to pass a lug, and where it has passed one already it cannot
     * travel the gap to the next.
     *
     * @param isBlowDue a lug has been passed since the last blow
     * @param gapRad free travel of the hammer to the anvil's lug
     */
    static boolean noBlowCanFall(ImpactTool tool, Drive drive, double energyJ, boolean isBlowDue, double gapRad) {
        if (energyJ >= tool.cam().liftOffEnergyJ()) {
            return false;
        }
        return !isBlowDue || gapRad > hammerTravelRad(tool, drive, energyJ);
    }

    private static double hammerTravelRad(ImpactTool tool, Drive drive, double energyJ) {
        double cam = Math.sqrt(2 * energyJ / tool.cam().stiffnessNmPerRad());
        double anvil = Math.sqrt(2 * energyJ / tool.socket().stiffnessNmPerRad());
        return carrierTravelRad(tool, drive, energyJ) + 2 * cam + anvil;
    }

    /** Coasting, drag eats the energy; braking, the motor eats the angular momentum in proportion to the angle turned. */
    private static double carrierTravelRad(ImpactTool tool, Drive drive, double energyJ) {
        Motor motor = tool.motor();
        if (drive == Drive.COAST) {
            return energyJ / motor.dragTorqueNm();
        }
        double damping = motor.stallTorqueNm() / motor.noLoadSpeedRadPerS();
        double fastest = Math.sqrt(2 * energyJ / motor.inertiaKgM2());
        if (damping * fastest > motor.torqueLimitNm()) {
            return Double.POSITIVE_INFINITY;
        }
        double inertia = motor.inertiaKgM2() + tool.hammer().inertiaKgM2();
        // from the greatest momentum forward to the greatest backward
        return 2 * Math.sqrt(2 * energyJ * inertia) / damping;
    }
}
