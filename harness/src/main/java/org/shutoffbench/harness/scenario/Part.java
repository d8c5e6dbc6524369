package org.shutoffbench.harness.scenario;

/** Parts that a joint may have or lack. A part that is present with a probability is drawn for each joint. */
public enum Part {
    PREVAILING("prevailing"),
    FOULING("fouling"),
    COATING("coating"),
    DAMAGED_THREAD("damaged_thread"),
    GALLING("galling");

    private final String key;

    Part(String key) {
        this.key = key;
    }

    /** As written in scenario files. */
    public String key() {
        return key;
    }

    /** Its name among the draws of a joint. */
    public String title() {
        return key.replace('_', ' ') + " present";
    }
}
