package org.shutoffbench.controller.strategy.adaptive;

import java.util.ArrayList;
import java.util.List;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.Setting.Role;

/** Settings that belong to the tool. The command {@code calibrate} measures them; defaults are the light reference tool's. */
final class ToolSettings {

    static final String SLOWEST_SPEED = "slowest carrier speed";
    static final String SPEED_STEP = "carrier speed step";
    static final String FIRST_BLOW = "first blow energy";
    static final String RUNDOWN = "run-down energy";
    static final String RUNDOWN_SPREAD = "run-down spread";
    static final String SOCKET_STIFFNESS = "socket stiffness";
    static final String STALL_TORQUE = "motor stall torque";
    static final String TORQUE_LIMIT = "motor torque limit";
    static final String NO_LOAD_SPEED = "motor no-load speed";
    static final String HOUSING_INERTIA = "housing inertia";
    static final String ARM_DAMPING = "arm damping";
    static final String ARM_STIFFNESS = "arm stiffness";

    /** Carrier speed to which energies of run-down and first blow are referred, rad/s. */
    static final float REFERENCE_SPEED = 150;

    /** Knots of blow energy over carrier speed. */
    static final int ENERGIES = 6;
    /** Knots of transmission over tau = T / sqrt(2 E k_s), and their distance. */
    static final int TRANSMISSIONS = 21;

    static final float TAU_STEP = 0.03f;
    /** Drive levels at which a last blow was measured, and their distance. */
    static final int TRIMS = 5;

    static final float TRIM_STEP = 0.1f;
    private static final float LEAST_LEVEL = 0.5f;

    private static final double[] ENERGY = {3.1, 3.3, 3.6, 3.8, 4.0, 4.2};
    private static final double[] TRANSMISSION = {
        0.91, 0.716, 0.678, 0.667, 0.676, 0.680, 0.638, 0.625, 0.651, 0.676, 0.694, 0.703, 0.700, 0.692, 0.680, 0.650,
        0.600, 0.56, 0.53, 0.50, 0.47
    };
    private static final double[] SLOW_TRIM = {0.16, 0.28, 0.41, 0.61, 0.80};
    private static final double[] FAST_TRIM = {0.52, 0.62, 0.74, 0.87, 0.97};

    private ToolSettings() {}

    static String energyAt(int knot) {
        return "blow energy " + knot;
    }

    static String transmissionAt(int knot) {
        return "transmission at tau " + Math.round(100 * knot * TAU_STEP) + " percent";
    }

    static float levelOfTrim(int knot) {
        return LEAST_LEVEL + knot * TRIM_STEP;
    }

    static String trimAt(int knot, boolean fast) {
        return "last blow at drive " + Math.round(100 * levelOfTrim(knot)) + " percent and " + (fast ? "fast" : "slow")
                + " carrier";
    }

    static List<Setting> all() {
        List<Setting> all = new ArrayList<>();
        add(all, SLOWEST_SPEED, "rad/s", 1, 1e4, 104, "mean carrier speed between blows at the first knot of energy");
        add(all, SPEED_STEP, "rad/s", 0.1, 1e3, 6, "distance of the knots of energy");
        for (int knot = 0; knot < ENERGIES; knot++) {
            add(all, energyAt(knot), "J", 0, 1e3, ENERGY[knot], "energy of a blow at the knot's carrier speed");
        }
        add(all, FIRST_BLOW, "J", 0, 1e3, 3.97, "energy of the first blow after a run-down, at 150 rad/s");
        add(all, RUNDOWN, "J", 0, 1e3, 2.46, "energy that a free run-down brings into the joint, at 150 rad/s");
        add(all, RUNDOWN_SPREAD, "1", 0.01, 1, 0.09, "its relative standard deviation");
        add(all, SOCKET_STIFFNESS, "N*m/rad", 10, 1e6, 9000, "socket and drive");
        for (int knot = 0; knot < TRANSMISSIONS; knot++) {
            add(
                    all,
                    transmissionAt(knot),
                    "1",
                    0,
                    2,
                    TRANSMISSION[knot],
                    "share of a blow's energy that turns the nut, at torque over sqrt(2 E k_s)");
        }
        for (int knot = 0; knot < TRIMS; knot++) {
            String meaning = "advance of a last blow at reduced drive over that of a full one";
            add(all, trimAt(knot, false), "1", 0, 1, SLOW_TRIM[knot], meaning);
            add(all, trimAt(knot, true), "1", 0, 1, FAST_TRIM[knot], meaning);
        }
        add(all, STALL_TORQUE, "N*m", 0.01, 1e3, 7.7, "of the motor at the carrier");
        add(all, TORQUE_LIMIT, "N*m", 0.01, 1e3, 3.4, "of its electronics");
        add(all, NO_LOAD_SPEED, "rad/s", 1, 1e4, 183, "of the motor at the carrier");
        add(all, HOUSING_INERTIA, "kg*m^2", 1e-4, 10, 0.02, "of the housing on the operator's arm");
        add(all, ARM_DAMPING, "N*m*s/rad", 1e-3, 1e3, 1, "of the operator's arm");
        add(all, ARM_STIFFNESS, "N*m/rad", 0.1, 1e5, 60, "of the operator's arm");
        return all;
    }

    private static void add(
            List<Setting> all,
            String name,
            String unit,
            double least,
            double greatest,
            double byDefault,
            String meaning) {
        all.add(new Setting(name, unit, least, greatest, byDefault, meaning, Role.LEARNED));
    }
}
