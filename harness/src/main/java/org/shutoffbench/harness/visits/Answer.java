package org.shutoffbench.harness.visits;

/** What can be said of leaving out the audit, the weakest first. */
public enum Answer {
    /** The rate of joints left low is such that an audit which found every one of them would pay. */
    NO("no"),
    /** Too few joints to tell. */
    NOT_YET("not yet"),
    /** The rate of joints left low lies below the threshold. */
    DEFENSIBLE("defensible from here");

    private final String title;

    Answer(String title) {
        this.title = title;
    }

    /** As written in reports. */
    public String title() {
        return title;
    }

    /**
     * The answer, where a rate and two thresholds lie between bounds. An audit that sees nothing never pays; that is no reason
     * to call a tool's misses defensible, so the perfect audit decides first.
     *
     * @param threshold p* of the audit as it is
     * @param perfect p* of an audit that finds every joint left low
     */
    static Answer of(Bounded rate, Bounded threshold, Bounded perfect) {
        if (rate.low() > perfect.high()) {
            return NO;
        }
        return rate.high() < threshold.low() ? DEFENSIBLE : NOT_YET;
    }
}
