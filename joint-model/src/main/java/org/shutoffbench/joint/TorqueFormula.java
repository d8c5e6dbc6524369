package org.shutoffbench.joint;

import org.shutoffbench.joint.thread.ScrewThread;

/**
 * Ways to write the torque per clamp force of a nut. The plant uses {@link #LINEAR}; the others are there to compare.
 */
public enum TorqueFormula {
    /** Pitch, thread and bearing parts add up. Source key {@code Motosh1976}. */
    LINEAR {
        @Override
        public double kappaOnM(ScrewThread t, double bearingDiameterM, double threadFriction, double bearingFriction) {
            return levers(t, bearingDiameterM, threadFriction, bearingFriction).kappaOnM();
        }

        @Override
        public double kappaOffM(ScrewThread t, double bearingDiameterM, double threadFriction, double bearingFriction) {
            return levers(t, bearingDiameterM, threadFriction, bearingFriction).kappaOffM();
        }
    },
    /** The same with 1/(2 pi) and the flank term rounded to 0.16 and 0.58. Source key {@code VDI-2230}. */
    ROUNDED {
        @Override
        public double kappaOnM(ScrewThread t, double bearingDiameterM, double threadFriction, double bearingFriction) {
            return friction(t, bearingDiameterM, threadFriction, bearingFriction) + 0.16 * t.pitchM();
        }

        @Override
        public double kappaOffM(ScrewThread t, double bearingDiameterM, double threadFriction, double bearingFriction) {
            return friction(t, bearingDiameterM, threadFriction, bearingFriction) - 0.16 * t.pitchM();
        }

        private double friction(ScrewThread t, double bearingDiameterM, double threadFriction, double bearingFriction) {
            return 0.58 * t.pitchDiameterM() * threadFriction + bearingFriction * bearingDiameterM / 2;
        }
    },
    /** A wedge on the helix, tan(phi +- rho'), nothing made small. Source key {@code Shigley2011}, eq. 8-26. */
    EXACT_HELIX {
        @Override
        public double kappaOnM(ScrewThread t, double bearingDiameterM, double threadFriction, double bearingFriction) {
            return wedge(t, threadFriction, 1) + bearingFriction * bearingDiameterM / 2;
        }

        @Override
        public double kappaOffM(ScrewThread t, double bearingDiameterM, double threadFriction, double bearingFriction) {
            return wedge(t, threadFriction, -1) + bearingFriction * bearingDiameterM / 2;
        }

        private double wedge(ScrewThread t, double threadFriction, int direction) {
            double flankFriction = threadFriction / COS_FLANK_ANGLE;
            double helix = direction * t.helixTangent();
            return t.pitchDiameterM() / 2 * (helix + flankFriction) / (1 - helix * flankFriction);
        }
    };

    private static final double COS_FLANK_ANGLE = Math.sqrt(3) / 2;

    /** Torque to tighten per clamp force, m; diameters in m. */
    public abstract double kappaOnM(
            ScrewThread t, double bearingDiameterM, double threadFriction, double bearingFriction);

    /** Torque to loosen per clamp force, m; not positive where the thread is not self-locking. */
    public abstract double kappaOffM(
            ScrewThread t, double bearingDiameterM, double threadFriction, double bearingFriction);

    private static TorqueTension levers(
            ScrewThread t, double bearingDiameterM, double threadFriction, double bearingFriction) {
        return TorqueTension.of(t.pitchM(), t.pitchDiameterM(), bearingDiameterM, threadFriction, bearingFriction);
    }
}
