package org.shutoffbench.harness.scenario;

import org.shutoffbench.harness.scenario.unit.Quantity;

/**
 * What counts as reached.
 *
 * @param quantity what is judged
 * @param target in N m or N, by the quantity
 * @param window half width over the target, in (0, 1)
 * @param allowYield whether a joint may pass its yield limit
 */
public record Judgement(JudgedQuantity quantity, Quantity target, Quantity window, boolean allowYield) {

    /** Whether a value of the judged quantity lies in the window, edges included. */
    public boolean inWindow(double value) {
        return lowest() <= value && value <= highest();
    }

    /** Lower edge of the window, N m or N. */
    public double lowest() {
        return target.si() * (1 - window.si());
    }

    /** Upper edge of the window, N m or N. */
    public double highest() {
        return target.si() * (1 + window.si());
    }
}
