package org.shutoffbench.controller.strategy;

/** Names of the settings that strategies without curves learn from the calibration of a tool. */
public final class BlowSettings {

    /** Hammer energy at first contact, extrapolated to a carrier at rest, J. */
    public static final String ENERGY_AT_REST = "blow energy at rest";

    /** Growth of that energy with the carrier's speed, J s/rad. */
    public static final String ENERGY_PER_SPEED = "blow energy per speed";

    /** Work on the nut over that energy. */
    public static final String TRANSMISSION = "transmission";

    /** Work that a blow at full drive does on the nut, J. */
    public static final String WORK = "blow work";

    private BlowSettings() {}
}
