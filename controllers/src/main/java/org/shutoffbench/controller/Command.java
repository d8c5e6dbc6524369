package org.shutoffbench.controller;

/**
 * What a strategy asks of the motor: keep driving at a level, coast or brake. Immutable and preallocated: drive levels
 * come in steps of 1 %, as a duty-cycle register would have them.
 */
public final class Command {

    /** Kinds of command. */
    public enum Kind {
        KEEP,
        COAST,
        BRAKE
    }

    private static final int STEPS = 100;
    private static final Command[] LEVELS = levels();

    /** Keep driving at full level. */
    public static final Command FULL = LEVELS[STEPS];

    public static final Command COAST = new Command(Kind.COAST, 0);
    public static final Command BRAKE = new Command(Kind.BRAKE, 0);

    private final Kind kind;
    private final float level;

    private Command(Kind kind, float level) {
        this.kind = kind;
        this.level = level;
    }

    private static Command[] levels() {
        Command[] all = new Command[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            all[i] = new Command(Kind.KEEP, i / (float) STEPS);
        }
        return all;
    }

    /** Keep driving at the nearest 1 % step of a level; values outside [0, 1] are clipped, NaN is read as 0. */
    public static Command keep(float level) {
        int step = Math.round(level * STEPS);
        return LEVELS[Math.max(0, Math.min(STEPS, step))];
    }

    public Kind kind() {
        return kind;
    }

    /** Drive level in [0, 1]; 0 for COAST and BRAKE. */
    public float level() {
        return level;
    }

    /** True for COAST and BRAKE. */
    public boolean isShutoff() {
        return kind != Kind.KEEP;
    }

    @Override
    public String toString() {
        return kind == Kind.KEEP ? "KEEP " + Math.round(level * STEPS) + " %" : kind.name();
    }
}
