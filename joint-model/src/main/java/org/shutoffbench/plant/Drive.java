package org.shutoffbench.plant;

/** What the electronics do with the motor. */
public enum Drive {
    /** Powered at a drive level u in [0, 1]. */
    KEEP,
    /** Switched off: only drag. */
    COAST,
    /** Powered with u = 0: the motor brakes itself. */
    BRAKE
}
