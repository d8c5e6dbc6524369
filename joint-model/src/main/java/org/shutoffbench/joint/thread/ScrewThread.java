package org.shutoffbench.joint.thread;

import java.util.Locale;

/**
 * A single-start 60 degree screw thread by its nominal sizes; every other diameter follows from the basic profile (source
 * keys {@code ISO-68-1}, {@code ISO-724}).
 *
 * @param designation how the thread is written, such as M12x1.25 or 1/2-13
 * @param form which family's stress area applies
 * @param majorDiameterM d, m; positive
 * @param pitchM P, m; positive, with 1.5 P below d
 */
public record ScrewThread(String designation, ThreadForm form, double majorDiameterM, double pitchM) {

    private static final double TRIANGLE_HEIGHT_PER_PITCH = Math.sqrt(3) / 2;

    public ScrewThread {
        if (!(majorDiameterM > 0 && majorDiameterM < Double.POSITIVE_INFINITY) || !(pitchM > 0)) {
            throw new IllegalArgumentException("thread diameter and pitch must be positive and finite");
        }
        if (!(1.5 * pitchM < majorDiameterM)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "pitch %.4g mm is too coarse for a thread of %.4g mm",
                    pitchM * 1e3,
                    majorDiameterM * 1e3));
        }
    }

    /** A metric thread of plain numbers. */
    public static ScrewThread metric(double majorDiameterM, double pitchM) {
        String designation =
                String.format(Locale.ROOT, "M%sx%s", shortest(majorDiameterM * 1e3), shortest(pitchM * 1e3));
        return new ScrewThread(designation, ThreadForm.METRIC, majorDiameterM, pitchM);
    }

    /** Height of the fundamental triangle H, m. */
    public double triangleHeightM() {
        return TRIANGLE_HEIGHT_PER_PITCH * pitchM;
    }

    /** Pitch diameter d2, m. */
    public double pitchDiameterM() {
        return majorDiameterM - 0.75 * triangleHeightM();
    }

    /** Basic minor diameter of the nut thread D1, m. */
    public double nutMinorDiameterM() {
        return majorDiameterM - 1.25 * triangleHeightM();
    }

    /** Minor diameter of the bolt at the thread root d3, m. */
    public double minorDiameterM() {
        return majorDiameterM - 17.0 / 12.0 * triangleHeightM();
    }

    /** d0 = (d2 + d3)/2, the diameter that carries the torsion of tightening, m. Source key {@code VDI-2230}. */
    public double torsionDiameterM() {
        return (pitchDiameterM() + minorDiameterM()) / 2;
    }

    /** Tensile stress area A_s, m2. Source keys {@code ISO-898-1}, {@code ASME-B1.1}. */
    public double stressAreaM2() {
        return circle(form.stressDiameterM(majorDiameterM, pitchM));
    }

    /** Area of the unthreaded shank A_N, m2. */
    public double shankAreaM2() {
        return circle(majorDiameterM);
    }

    /** Area at the thread root A_d3, m2. */
    public double rootAreaM2() {
        return circle(minorDiameterM());
    }

    /** Tangent of the helix angle at the pitch diameter, P/(pi d2). */
    public double helixTangent() {
        return pitchM / (Math.PI * pitchDiameterM());
    }

    private static double circle(double diameterM) {
        return Math.PI / 4 * diameterM * diameterM;
    }

    private static String shortest(double millimetres) {
        return new java.math.BigDecimal(millimetres)
                .round(new java.math.MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
    }
}
