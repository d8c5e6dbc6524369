package org.shutoffbench.controller;

/** What a tool's electronics can offer to a strategy at each sample. */
public enum Channel {
    /** Carrier angle from rotor poles and gear ratio, rad. */
    CARRIER_ANGLE("carrier angle"),
    /** Carrier speed, rad/s. */
    CARRIER_SPEED("carrier speed"),
    /** Motor current, A. */
    MOTOR_CURRENT("motor current"),
    /** Supply voltage over nominal, 1. */
    SUPPLY_VOLTAGE("supply voltage"),
    /** Housing acceleration, m/s^2. */
    HOUSING_ACCELERATION("housing acceleration"),
    /** Blows reported by the blow detector since the last sample, a small whole number. */
    BLOWS("blow detection"),
    /** Anvil angle against the housing, rad. */
    ANVIL_ANGLE("anvil angle"),
    /** Housing turning rate, rad/s. */
    HOUSING_RATE("housing rate"),
    /** Torque at the anvil, N m. */
    TORQUE("torque at the anvil");

    private final String title;

    Channel(String title) {
        this.title = title;
    }

    /** The name that scenario files and reports use. */
    public String title() {
        return title;
    }
}
