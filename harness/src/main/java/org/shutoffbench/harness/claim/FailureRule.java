package org.shutoffbench.harness.claim;

import java.util.Arrays;
import java.util.List;

/** Which joints count as failures of a claim. */
public enum FailureRule {
    OUTSIDE("outside the tolerance", 2),
    BELOW("below the tolerance", 1),
    ABOVE("above the tolerance", 1),
    SILENT("called done below the tolerance", 1);

    private final String title;
    private final int limits;

    FailureRule(String title, int limits) {
        this.title = title;
        this.limits = limits;
    }

    /** As claim files write it. */
    public String title() {
        return title;
    }

    /** Limits that a joint can break: 1 or 2. */
    public int limits() {
        return limits;
    }

    /**
     * Whether a joint fails.
     *
     * @param value of the claimed quantity, in SI
     * @param calledDone whether the tool called it done
     */
    public boolean fails(double value, boolean calledDone, double lowest, double highest) {
        return switch (this) {
            case OUTSIDE -> value < lowest || value > highest;
            case BELOW -> value < lowest;
            case ABOVE -> value > highest;
            case SILENT -> calledDone && value < lowest;
        };
    }

    static List<String> titles() {
        return Arrays.stream(values()).map(FailureRule::title).toList();
    }

    static FailureRule of(String title) {
        return Arrays.stream(values())
                .filter(rule -> rule.title.equals(title))
                .findFirst()
                .orElse(OUTSIDE);
    }
}
