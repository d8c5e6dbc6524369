package org.shutoffbench.harness.report;

import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.study.CellSummary;
import org.shutoffbench.harness.study.Judge;
import org.shutoffbench.harness.study.Quantity;
import org.shutoffbench.harness.study.QuantitySummary;

/** A quantity as it is shown: clamping torque in N·m, clamp force in kN. */
enum ShownQuantity {
    TORQUE(Quantity.CLAMPING_TORQUE, "N\u00b7m", 1),
    FORCE(Quantity.CLAMP_FORCE, "kN", 1e-3);

    final Quantity quantity;
    final String unit;
    final double factor;

    ShownQuantity(Quantity quantity, String unit, double factor) {
        this.quantity = quantity;
        this.unit = unit;
        this.factor = factor;
    }

    @Nullable
    QuantitySummary of(CellSummary cell) {
        return this == FORCE ? cell.clampForce() : cell.clampingTorque();
    }

    /** For sentences: no decimals from 10 on. */
    String round(double value) {
        double scaled = value * factor;
        return Printed.fixed(scaled, Math.abs(scaled) >= 10 || Math.abs(scaled) < 0.05 ? 0 : 1);
    }

    /** For tables. */
    String print(double value) {
        return Printed.fixed(value * factor, 1);
    }

    /** The quantity that joints are judged by. */
    static ShownQuantity judged(Judge judge) {
        return judge.quantity() == Quantity.CLAMP_FORCE ? FORCE : TORQUE;
    }
}
