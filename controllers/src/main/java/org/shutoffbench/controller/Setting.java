package org.shutoffbench.controller;

/**
 * One number that a user, a tuning run or the harness can set.
 *
 * @param name as written in files: lower case words
 * @param unit of the value, "1" for a pure number
 * @param minimum least allowed value
 * @param maximum greatest allowed value
 * @param byDefault value where none is given
 * @param meaning one line for people
 * @param role who is expected to give it
 */
public record Setting(
        String name, String unit, double minimum, double maximum, double byDefault, String meaning, Role role) {

    /** Who gives a setting. */
    public enum Role {
        /** Set per target; tuned by {@code tune}. */
        TUNED,
        /** Decides between verdicts only; tuned in a second pass. */
        VERDICT,
        /** Known of the tool or learned elsewhere (calibration, training); never tuned on judged joints. */
        LEARNED,
        /** Drawn by the harness for every joint: reaction time, judgement. */
        OPERATOR,
        /** A choice of the user that tuning leaves alone. */
        FIXED
    }

    public Setting {
        if (!(minimum <= byDefault && byDefault <= maximum)) {
            throw new IllegalArgumentException(
                    name + ": default " + byDefault + " is outside " + minimum + " to " + maximum + " " + unit);
        }
    }
}
