package org.shutoffbench.harness.scenario;

/** Where a family's bolts yield. */
public enum YieldRule {
    /** Nowhere: they stay elastic at any force. */
    OFF("off"),
    /** At the force that the property class gives under combined tension and torsion. */
    BY_CLASS("by class"),
    /** At a given force. */
    AT_FORCE("at a force");

    private final String title;

    YieldRule(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
