package org.shutoffbench.joint;

import org.shutoffbench.joint.strength.AssemblyLimit;
import org.shutoffbench.joint.thread.ScrewThread;

/** Where a joint's bolt begins to yield. */
public sealed interface YieldLimit permits YieldLimit.Off, YieldLimit.AtForce, YieldLimit.OfMaterial {

    YieldLimit OFF = new Off();

    /** Yield and fracture for a thread and its drawn friction. */
    Yielding yielding(ScrewThread thread, double threadFriction);

    /** The bolt stays elastic at any force. */
    record Off() implements YieldLimit {
        @Override
        public Yielding yielding(ScrewThread thread, double threadFriction) {
            return Yielding.OFF;
        }
    }

    /**
     * Yield at a clamp force, whatever the friction.
     *
     * @param forceN F_y, N; positive
     */
    record AtForce(double forceN) implements YieldLimit {
        public AtForce {
            if (!(forceN > 0 && forceN < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("yield force must be positive and finite");
            }
        }

        @Override
        public Yielding yielding(ScrewThread thread, double threadFriction) {
            return Yielding.at(forceN);
        }
    }

    /**
     * Yield of the stress area under combined tension and thread torsion, so higher thread friction yields earlier.
     *
     * @param yieldStrengthPa R_p0.2, Pa; positive
     */
    record OfMaterial(double yieldStrengthPa) implements YieldLimit {
        public OfMaterial {
            if (!(yieldStrengthPa > 0 && yieldStrengthPa < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("yield strength must be positive and finite");
            }
        }

        @Override
        public Yielding yielding(ScrewThread thread, double threadFriction) {
            return Yielding.at(new AssemblyLimit(thread, yieldStrengthPa, threadFriction).yieldForceN());
        }
    }
}
