package org.shutoffbench.harness.scenario;

/**
 * A setting that belongs to the person at the tool and is drawn anew for every tightening.
 *
 * @param setting name of the strategies' setting
 * @param unit the unit in which strategies get it, "1" for a pure number
 * @param siPerUnit one of that unit in SI
 * @param amount in SI
 */
public record OperatorDraw(String setting, String unit, double siPerUnit, Amount amount) {

    /** Its name among all draws, for example {@code operator reaction time}. */
    public String title() {
        return "operator " + setting;
    }
}
