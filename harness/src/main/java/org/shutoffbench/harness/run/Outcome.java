package org.shutoffbench.harness.run;

/** What really happened to a joint, judged 0.5 s after the stop command acts, before embedding. First match wins. */
public enum Outcome {
    /** The plastic angle went above its limit. */
    FRACTURED("fractured"),
    /** Clamp force passed the yield limit, where the scenario does not allow yield. */
    YIELDED("yielded"),
    /** Nut angle past snug below the seating width, or the judged quantity below 10 % of its target. */
    UNSEATED("unseated"),
    LOW("low"),
    HIGH("high"),
    IN_WINDOW("in window");

    private final String title;

    Outcome(String title) {
        this.title = title;
    }

    /** As written in records and reports. */
    public String title() {
        return title;
    }
}
