package org.shutoffbench.harness.scenario;

import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.harness.scenario.unit.Quantity;

/** What a number may be, ends included. */
public record Range(Quantity least, Quantity most) {

    public static Range of(Dimension dimension, String least, String most) {
        return new Range(Quantity.parse(least, dimension), Quantity.parse(most, dimension));
    }

    /** True for a value in SI within the range; false for NaN. */
    public boolean holds(double si) {
        return least.si() <= si && si <= most.si();
    }

    @Override
    public String toString() {
        return least + " to " + most;
    }
}
