package org.shutoffbench.sensor;

import java.util.Collection;

/** What can be sensed. A set of quantities is also written as a mask of their bits, so that a run can be started freely. */
public enum Quantity {
    /** Carrier angle from rotor poles and gear ratio, rad. */
    CARRIER_ANGLE(0, "carrier angle", "rad"),
    /** Carrier speed, rad/s. */
    CARRIER_SPEED(1, "carrier speed", "rad/s"),
    /** Motor current, A. */
    MOTOR_CURRENT(2, "motor current", "A"),
    /** Supply voltage over nominal, 1. */
    SUPPLY_VOLTAGE(3, "supply voltage", "1"),
    /** Housing acceleration, m/s^2. */
    HOUSING_ACCELERATION(4, "housing acceleration", "m/s^2"),
    /** Blows reported since the last sample. */
    BLOWS(5, "blow detection", "1"),
    /** Anvil angle against the housing, rad. */
    ANVIL_ANGLE(6, "anvil angle", "rad"),
    /** Housing turning rate, rad/s. */
    HOUSING_RATE(7, "housing rate", "rad/s"),
    /** Torque at the anvil, N m. */
    TORQUE(8, "torque at the anvil", "N m");

    private final int code;
    private final String title;
    private final String unit;

    Quantity(int code, String title, String unit) {
        this.code = code;
        this.title = title;
        this.unit = unit;
    }

    /** The name that scenario files and reports use. */
    public String title() {
        return title;
    }

    /** Unit of the readings. */
    public String unit() {
        return unit;
    }

    /** Place in arrays, in draws and in noise keys; never changes, or old results could not be had again. */
    int code() {
        return code;
    }

    /** This quantity's bit in a mask. */
    public int bit() {
        return 1 << code;
    }

    /** Mask of several quantities. */
    public static int mask(Collection<Quantity> quantities) {
        int mask = 0;
        for (Quantity quantity : quantities) {
            mask |= quantity.bit();
        }
        return mask;
    }
}
