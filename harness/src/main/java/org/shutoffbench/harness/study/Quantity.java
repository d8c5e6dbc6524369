package org.shutoffbench.harness.study;

import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.statistics.FixedPoint;

/** A truth at judgement that a joint can be judged by. */
public enum Quantity {
    /** kappa_on F, running and prevailing torque not counted. */
    CLAMPING_TORQUE("clamping torque", "N*m", 1e6) {
        @Override
        public double of(TighteningRecord tightening) {
            return tightening.clampingTorqueNm();
        }
    },
    CLAMP_FORCE("clamp force", "N", 1e3) {
        @Override
        public double of(TighteningRecord tightening) {
            return tightening.clampForceN();
        }
    };

    private final String title;
    private final String unit;
    private final double stepsPerUnit;

    Quantity(String title, String unit, double stepsPerUnit) {
        this.title = title;
        this.unit = unit;
        this.stepsPerUnit = stepsPerUnit;
    }

    /** As written in scenarios and reports. */
    public String title() {
        return title;
    }

    /** Unit of the values: "N*m" or "N". */
    public String unit() {
        return unit;
    }

    /** The steps in which it is summed: 1e-6 N m, 1e-3 N. */
    FixedPoint counted() {
        return new FixedPoint(stepsPerUnit);
    }

    /** The value of this quantity in a tightening, in {@link #unit()}. */
    public abstract double of(TighteningRecord tightening);
}
