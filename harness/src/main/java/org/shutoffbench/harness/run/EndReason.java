package org.shutoffbench.harness.run;

/** Why a tightening ended. */
public enum EndReason {
    SHUTOFF("shutoff"),
    TIME_LIMIT("time limit"),
    FRACTURE("fracture"),
    BATTERY("battery"),
    FAULT("fault");

    private final String title;

    EndReason(String title) {
        this.title = title;
    }

    /** As written in records and reports. */
    public String title() {
        return title;
    }
}
