package org.shutoffbench.joint.prevailing;

import java.util.Locale;
import org.shutoffbench.joint.thread.ScrewThread;

/**
 * Kinds of prevailing-torque nuts: temperature scope (source key {@code ISO-2320}, from memory) and where along the nut the
 * locking element begins (proportions after ISO 7040 and ISO 7042, from memory and rounded).
 */
public enum LockNutKind {
    /** A polymer ring above the thread. */
    NON_METALLIC_INSERT("non-metallic insert", -50, 120, 1.2, 0.85),
    /** Top threads pressed out of round. */
    ALL_METAL("all-metal", -50, 300, 1.0, 0.7);

    private final String title;
    private final double coldestC;
    private final double hottestC;
    private final double heightPerDiameter;
    private final double elementPerDiameter;

    LockNutKind(String title, double coldestC, double hottestC, double heightPerDiameter, double elementPerDiameter) {
        this.title = title;
        this.coldestC = coldestC;
        this.hottestC = hottestC;
        this.heightPerDiameter = heightPerDiameter;
        this.elementPerDiameter = elementPerDiameter;
    }

    public String title() {
        return title;
    }

    /** Lowest temperature that the standard covers, degrees Celsius. */
    public double coldestC() {
        return coldestC;
    }

    /** Highest temperature that the standard covers, degrees Celsius. */
    public double hottestC() {
        return hottestC;
    }

    /** Whether the standard covers a temperature in degrees Celsius. */
    public boolean covers(double temperatureC) {
        return coldestC <= temperatureC && temperatureC <= hottestC;
    }

    /** Height of the nut, m. */
    public double heightM(ScrewThread thread) {
        return heightPerDiameter * thread.majorDiameterM();
    }

    /** Depth of the locking element below the bearing face, m. */
    public double elementDepthM(ScrewThread thread) {
        return elementPerDiameter * thread.majorDiameterM();
    }

    /**
     * Turns of the nut from where the bolt end reaches the locking element until the nut seats.
     *
     * @param lengthPastNutFaceM length of bolt past the bearing face of the seated nut, m
     * @throws IllegalArgumentException where the bolt end never passes the element, so that nothing locks
     */
    public double turnsBeforeSnug(ScrewThread thread, double lengthPastNutFaceM) {
        if (lengthPastNutFaceM < heightM(thread)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "bolt stands %.4g mm past the nut's bearing face, short of the %.4g mm that its locking element needs",
                    lengthPastNutFaceM * 1e3,
                    heightM(thread) * 1e3));
        }
        return (lengthPastNutFaceM - elementDepthM(thread)) / thread.pitchM();
    }
}
