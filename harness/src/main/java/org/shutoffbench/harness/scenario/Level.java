package org.shutoffbench.harness.scenario;

/** Levels of scatter: what shares one draw. */
public enum Level {
    /** Joints from one delivery: coating, lubricant. */
    LOT("lot"),
    /** Each joint. */
    PIECE("piece"),
    /** Each tightening of a joint. */
    REPEAT("repeat"),
    /** Each tool. */
    TOOL("tool");

    private final String title;

    Level(String title) {
        this.title = title;
    }

    /** As written in scenario files. */
    public String title() {
        return title;
    }
}
