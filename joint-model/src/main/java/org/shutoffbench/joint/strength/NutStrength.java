package org.shutoffbench.joint.strength;

import org.shutoffbench.joint.thread.CustomaryUnits;
import org.shutoffbench.joint.thread.ScrewThread;

/**
 * Proof stress of regular nuts, by the class that matches a bolt's (source keys {@code ISO-898-2}, {@code ISO-3506-2},
 * {@code SAE-J995}, {@code ASTM-A563}). Typed from memory; a nut bears more in the larger sizes.
 */
enum NutStrength {
    CLASS_8(855e6, 870e6, 880e6, 920e6),
    CLASS_10(1040e6, 1040e6, 1050e6, 1060e6),
    CLASS_12(1150e6, 1160e6, 1190e6, 1200e6),
    STAINLESS_70(700e6),
    INCH_GRADE_2(90 * CustomaryUnits.KSI_PA),
    INCH_GRADE_5(120 * CustomaryUnits.KSI_PA),
    INCH_GRADE_8(150 * CustomaryUnits.KSI_PA),
    HEAVY_HEX_DH(175 * CustomaryUnits.KSI_PA);

    private final double toM7Pa;
    private final double toM10Pa;
    private final double toM16Pa;
    private final double abovePa;

    NutStrength(double toM7Pa, double toM10Pa, double toM16Pa, double abovePa) {
        this.toM7Pa = toM7Pa;
        this.toM10Pa = toM10Pa;
        this.toM16Pa = toM16Pa;
        this.abovePa = abovePa;
    }

    NutStrength(double allPa) {
        this(allPa, allPa, allPa, allPa);
    }

    static NutStrength matching(PropertyClass bolt) {
        return switch (bolt) {
            case ISO_8_8 -> CLASS_8;
            case ISO_10_9 -> CLASS_10;
            case ISO_12_9 -> CLASS_12;
            case A4_70 -> STAINLESS_70;
            case J429_GRADE_2 -> INCH_GRADE_2;
            case J429_GRADE_5 -> INCH_GRADE_5;
            case J429_GRADE_8 -> INCH_GRADE_8;
            case A325, A490 -> HEAVY_HEX_DH;
        };
    }

    double proofStressPa(ScrewThread thread) {
        double diameterMm = thread.majorDiameterM() * 1e3;
        if (diameterMm < 7.5) {
            return toM7Pa;
        }
        if (diameterMm < 11) {
            return toM10Pa;
        }
        return diameterMm < 17 ? toM16Pa : abovePa;
    }
}
