package org.shutoffbench.joint.assembly;

import org.shutoffbench.joint.thread.CustomaryUnits;
import org.shutoffbench.joint.thread.ScrewThread;
import org.shutoffbench.joint.thread.ThreadForm;

/**
 * Length of a bolt from under its head, and how much of it is thread.
 *
 * @param lengthM L, m; positive
 * @param threadLengthM b, m; positive, at most L
 */
public record BoltLength(double lengthM, double threadLengthM) {

    /** Threads that stand out of the nut at least (common practice, no source). */
    private static final double PROTRUDING_PITCHES = 2;

    public BoltLength {
        if (!(lengthM > 0 && lengthM < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("bolt length must be positive and finite");
        }
        if (!(threadLengthM > 0 && threadLengthM <= lengthM)) {
            throw new IllegalArgumentException("thread length must be positive and at most the bolt length");
        }
    }

    /** A bolt of this length with the thread length of its standard. Source keys {@code ISO-888}, {@code ASME-B18.2}. */
    public static BoltLength standard(ScrewThread thread, double lengthM) {
        double d = thread.majorDiameterM();
        double threadM = thread.form() == ThreadForm.METRIC
                ? 2 * d + (lengthM <= 125e-3 ? 6e-3 : lengthM <= 200e-3 ? 12e-3 : 25e-3)
                : 2 * d + (lengthM <= 6 * CustomaryUnits.INCH_M ? 0.25 : 0.5) * CustomaryUnits.INCH_M;
        return new BoltLength(lengthM, Math.min(threadM, lengthM));
    }

    /** The shortest usual length that reaches through grip and nut: steps of 5 mm, 10 mm above 80 mm, or 1/4 in. */
    public static BoltLength shortestFor(ScrewThread thread, double gripM, double nutHeightM) {
        double needed = gripM + nutHeightM + PROTRUDING_PITCHES * thread.pitchM();
        double step = thread.form() == ThreadForm.UNIFIED ? CustomaryUnits.INCH_M / 4 : needed <= 80e-3 ? 5e-3 : 10e-3;
        return standard(thread, Math.ceil(needed / step - 1e-9) * step);
    }

    /** Unthreaded length, m. */
    public double shankM() {
        return lengthM - threadLengthM;
    }
}
