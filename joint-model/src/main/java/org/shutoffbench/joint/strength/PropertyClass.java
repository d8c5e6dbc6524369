package org.shutoffbench.joint.strength;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.shutoffbench.joint.thread.CustomaryUnits;
import org.shutoffbench.joint.thread.ScrewThread;

/**
 * Property classes and grades of bolts with their nominal strength, and the proof stress of the nut that goes with each.
 *
 * <p>Steel classes after ISO 898-1, stainless after ISO 3506-1, inch grades after SAE J429, structural bolts after ASTM
 * A325 and A490 (source keys {@code ISO-898-1}, {@code ISO-3506-1}, {@code SAE-J429}, {@code ASTM-F3125}).
 */
public enum PropertyClass {
    ISO_8_8("8.8", "ISO-898-1", Strength.megapascal(580, 640, 800), 16e-3, Strength.megapascal(600, 660, 830)),
    ISO_10_9("10.9", "ISO-898-1", Strength.megapascal(830, 940, 1040)),
    ISO_12_9("12.9", "ISO-898-1", Strength.megapascal(970, 1100, 1220)),
    /** Rp0.2 serves as proof stress. From memory. */
    A4_70("A4-70", "ISO-3506-1", Strength.megapascal(450, 450, 700)),
    /** From memory. */
    J429_GRADE_2("grade 2", "SAE-J429", Strength.ksi(55, 57, 74), inch(0.75), Strength.ksi(33, 36, 60)),
    J429_GRADE_5("grade 5", "SAE-J429", Strength.ksi(85, 92, 120), inch(1), Strength.ksi(74, 81, 105)),
    J429_GRADE_8("grade 8", "SAE-J429", Strength.ksi(120, 130, 150)),
    /** Sizes to 1 in. */
    A325("A325", "ASTM-F3125", Strength.ksi(85, 92, 120)),
    A490("A490", "ASTM-F3125", Strength.ksi(120, 130, 150));

    private static final double SIZE_TOLERANCE_M = 1e-6;

    private final String title;
    private final String sourceKey;
    private final double proofPa;
    private final double yieldPa;
    private final double tensilePa;
    private final double smallUpToM;
    private final double largeProofPa;
    private final double largeYieldPa;
    private final double largeTensilePa;

    PropertyClass(String title, String sourceKey, Strength all) {
        this(title, sourceKey, all, Double.POSITIVE_INFINITY, all);
    }

    PropertyClass(String title, String sourceKey, Strength small, double smallUpToM, Strength large) {
        this.title = title;
        this.sourceKey = sourceKey;
        this.proofPa = small.proofPa();
        this.yieldPa = small.yieldPa();
        this.tensilePa = small.tensilePa();
        this.smallUpToM = smallUpToM;
        this.largeProofPa = large.proofPa();
        this.largeYieldPa = large.yieldPa();
        this.largeTensilePa = large.tensilePa();
    }

    /**
     * The class that a title names, such as 8.8, A4-70 or grade 5.
     *
     * @throws IllegalArgumentException with the titles allowed
     */
    public static PropertyClass named(String text) {
        return Arrays.stream(values())
                .filter(c -> c.title.equalsIgnoreCase(text.strip()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("\"" + text + "\" is no property class; known are "
                        + Arrays.stream(values()).map(PropertyClass::title).collect(Collectors.joining(", "))));
    }

    /** As written on drawings and in scenario files. */
    public String title() {
        return title;
    }

    /** Key into docs/references.md. */
    public String sourceKey() {
        return sourceKey;
    }

    /** Nominal strength at a thread size. */
    public Strength strength(ScrewThread thread) {
        return thread.majorDiameterM() <= smallUpToM + SIZE_TOLERANCE_M
                ? new Strength(proofPa, yieldPa, tensilePa)
                : new Strength(largeProofPa, largeYieldPa, largeTensilePa);
    }

    /** Proof load of the bolt, N. */
    public double proofLoadN(ScrewThread thread) {
        return strength(thread).proofPa() * thread.stressAreaM2();
    }

    /** Proof load of the matching regular nut, N: stripping is to be feared where the bolt can be tightened beyond it. */
    public double nutProofLoadN(ScrewThread thread) {
        return NutStrength.matching(this).proofStressPa(thread) * thread.stressAreaM2();
    }

    private static double inch(double inches) {
        return inches * CustomaryUnits.INCH_M;
    }
}
