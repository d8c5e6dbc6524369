package org.shutoffbench.controller.strategy.adaptive;

import java.util.ArrayList;
import java.util.List;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.Setting.Role;

/**
 * Settings of adaptive estimation that belong to the tool: their names, and where their knots lie. The command
 * {@code calibrate} measures them; defaults are its figures for the light reference tool.
 */
public final class ToolSettings {

    public static final String SLOWEST_SPEED = "slowest carrier speed";
    public static final String SPEED_STEP = "carrier speed step";
    public static final String FIRST_BLOW = "first blow energy";
    public static final String FIRST_BLOW_SLOPE = "first blow energy per carrier speed";
    public static final String FIRST_BLOW_SPREAD = "first blow spread";
    public static final String RUNDOWN = "run-down energy";
    public static final String RUNDOWN_SPREAD = "run-down spread";
    public static final String SOCKET_STIFFNESS = "socket stiffness";
    public static final String PULSE_TORQUE = "pulse torque";
    public static final String PULSE_EXPONENT = "pulse exponent";
    public static final String PULSE_SPREAD = "pulse spread";
    public static final String LAST_BLOW_SPREAD = "last blow spread";
    public static final String STALL_TORQUE = "motor stall torque";
    public static final String TORQUE_LIMIT = "motor torque limit";
    public static final String NO_LOAD_SPEED = "motor no-load speed";
    public static final String HOUSING_INERTIA = "housing inertia";
    public static final String ARM_DAMPING = "arm damping";
    public static final String ARM_STIFFNESS = "arm stiffness";

    /** Carrier speed to which energies of run-down and first blow are referred, rad/s. */
    public static final float REFERENCE_SPEED = 150;

    /** Area of a torque pulse to which {@link #PULSE_TORQUE} is referred, N m s. */
    public static final float REFERENCE_AREA = 0.03f;
    /** Torques after a blow between which its pulse says something, N m. */
    public static final float LEAST_PULSE_NM = 30;

    public static final float GREATEST_PULSE_NM = 120;

    /** Knots of blow energy over carrier speed. */
    public static final int ENERGIES = 6;
    /**
     * Knots of transmission over tau = T / sqrt(2 E k_s): evenly spaced in the root of tau, because it changes fastest at
     * little torque.
     */
    public static final int TRANSMISSIONS = 25;
    /** tau of the last knot. */
    public static final float GREATEST_TAU = 0.6f;
    /** Drive levels at which a last blow was measured, and their distance. */
    public static final int TRIMS = 5;

    static final float TRIM_STEP = 0.1f;
    private static final float LEAST_LEVEL = 0.5f;

    private static final double[] ENERGY = {3.233, 3.65, 3.766, 3.915, 4.042, 4.188};
    private static final double[] TRANSMISSION = {
        1.307, 1.163, 1.02, 0.8765, 0.7867, 0.7236, 0.6893, 0.6776, 0.6711, 0.6605, 0.6652, 0.6811, 0.6676, 0.6286,
        0.6195, 0.645, 0.6703, 0.6898, 0.6986, 0.694, 0.673, 0.6329, 0.5763, 0.4922, 0.3913
    };
    private static final double[] SLOW_TRIM = {0.1116, 0.2683, 0.4384, 0.6092, 0.7977};
    private static final double[] FAST_TRIM = {0.5651, 0.6695, 0.7856, 0.9136, 1.0};

    private ToolSettings() {}

    /** Name of the blow energy at a knot, 0 to {@link #ENERGIES} - 1. */
    public static String energyAt(int knot) {
        return "blow energy " + knot;
    }

    /** Name of the transmission at a knot, 0 to {@link #TRANSMISSIONS} - 1. */
    public static String transmissionAt(int knot) {
        return "transmission " + knot;
    }

    /** Place of a tau among the knots of transmission, 0 for the first. */
    public static float knotOfTau(float tau) {
        return (TRANSMISSIONS - 1) * (float) Math.sqrt(tau * (1 / GREATEST_TAU));
    }

    /** Drive level of a knot, 0 to {@link #TRIMS} - 1. */
    public static float levelOfTrim(int knot) {
        return LEAST_LEVEL + knot * TRIM_STEP;
    }

    /** Name of the share that a last blow makes at a drive level's knot, with a fast or a slow carrier. */
    public static String trimAt(int knot, boolean fast) {
        return "last blow at drive " + Math.round(100 * levelOfTrim(knot)) + " percent and " + (fast ? "fast" : "slow")
                + " carrier";
    }

    static List<Setting> all() {
        List<Setting> all = new ArrayList<>();
        add(all, SLOWEST_SPEED, "rad/s", 1, 1e4, 113.5, "mean carrier speed between blows at the first knot of energy");
        add(all, SPEED_STEP, "rad/s", 0.1, 1e3, 6.204, "distance of the knots of energy");
        for (int knot = 0; knot < ENERGIES; knot++) {
            add(all, energyAt(knot), "J", 0, 1e3, ENERGY[knot], "energy of a blow at the knot's carrier speed");
        }
        add(all, FIRST_BLOW, "J", 0, 1e3, 4.123, "energy of the first blow after a run-down, at 150 rad/s");
        add(all, FIRST_BLOW_SLOPE, "J*s/rad", 0, 10, 0.02441, "more of it for each rad/s of carrier speed at contact");
        add(all, FIRST_BLOW_SPREAD, "1", 1e-3, 1, 0.01459, "its relative error");
        add(all, RUNDOWN, "J", 0, 1e3, 2.501, "energy that a free run-down brings into the joint, at 150 rad/s");
        add(all, RUNDOWN_SPREAD, "1", 0.01, 1, 0.07852, "its relative standard deviation");
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
        add(
                all,
                PULSE_TORQUE,
                "N*m",
                1,
                1e3,
                75.43,
                "torque after a blow whose torque pulse has an area of 0.03 N m s");
        add(all, PULSE_EXPONENT, "1", 0.1, 5, 1.396, "power of the area with which that torque goes");
        add(
                all,
                PULSE_SPREAD,
                "1",
                0.005,
                1,
                0.04734,
                "relative error of that torque, the same for all blows on a joint");
        add(all, LAST_BLOW_SPREAD, "1", 1e-3, 1, 0.05785, "error of a last blow's advance, over that of a full one");
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
