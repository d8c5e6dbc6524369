package org.shutoffbench.harness.study;

import org.shutoffbench.harness.run.TighteningRecord;

/** A truth at judgement that a joint can be judged by. */
public enum Quantity {
    /** kappa_on F, running and prevailing torque not counted. */
    CLAMPING_TORQUE("clamping torque", "N*m") {
        @Override
        public double of(TighteningRecord tightening) {
            return tightening.clampingTorqueNm();
        }
    },
    CLAMP_FORCE("clamp force", "N") {
        @Override
        public double of(TighteningRecord tightening) {
            return tightening.clampForceN();
        }
    };

    private final String title;
    private final String unit;

    Quantity(String title, String unit) {
        this.title = title;
        this.unit = unit;
    }

    /** As written in scenarios and reports. */
    public String title() {
        return title;
    }

    /** Unit of the values: "N*m" or "N". */
    public String unit() {
        return unit;
    }

    /** The value of this quantity in a tightening, in {@link #unit()}. */
    public abstract double of(TighteningRecord tightening);
}
