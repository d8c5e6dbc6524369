package org.shutoffbench.joint.strength;

import org.shutoffbench.joint.thread.CustomaryUnits;
import org.shutoffbench.joint.thread.ScrewThread;

/** Minimum pretension of structural bolts: 70 % of tensile strength, in whole kips (source keys {@code RCSC-2014}, {@code AISC-360-05}). */
public final class StructuralPretension {

    private static final double SHARE_OF_TENSILE = 0.70;

    private StructuralPretension() {}

    /** Minimum pretension, N, of a bolt of A325 or A490; the rule is written for these alone. */
    public static double minimumN(PropertyClass propertyClass, ScrewThread thread) {
        if (propertyClass != PropertyClass.A325 && propertyClass != PropertyClass.A490) {
            throw new IllegalArgumentException(
                    "minimum pretension is written for A325 and A490, not for " + propertyClass.title());
        }
        double exactN = SHARE_OF_TENSILE * propertyClass.strength(thread).tensilePa() * printedAreaM2(thread);
        return Math.rint(exactN / CustomaryUnits.KIP_N) * CustomaryUnits.KIP_N;
    }

    /** The stress area as tables print it, to 0.001 in2: 7/8 in A490 comes to 49 kip from it and to 48 from the formula. */
    private static double printedAreaM2(ScrewThread thread) {
        double squareInch = CustomaryUnits.INCH_M * CustomaryUnits.INCH_M;
        return Math.rint(thread.stressAreaM2() / squareInch * 1000) / 1000 * squareInch;
    }
}
