package org.shutoffbench.controller.conformance;

/**
 * What one check of the conformance suite found, for a person to read.
 *
 * @param check name of the check, lower case words
 * @param result whether the strategy kept this part of the contract
 * @param found what was seen, one sentence
 * @param remedy what to change; empty where the check passed
 */
public record Finding(String check, Result result, String found, String remedy) {

    /** How a check ended. */
    public enum Result {
        PASSED,
        FAILED,
        /** An earlier failure left nothing to judge. */
        NOT_JUDGED
    }

    static Finding passed(String check, String found) {
        return new Finding(check, Result.PASSED, found, "");
    }

    static Finding failed(String check, String found, String remedy) {
        return new Finding(check, Result.FAILED, found, remedy);
    }

    static Finding notJudged(String check, String why) {
        return new Finding(check, Result.NOT_JUDGED, why, "Repair the failed checks first.");
    }

    /** True where the check passed. */
    public boolean passed() {
        return result == Result.PASSED;
    }
}
