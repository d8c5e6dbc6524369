package org.shutoffbench.joint.stiffness;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.shutoffbench.joint.thread.ScrewThread;

/** How the compliance of the clamped parts is counted. */
public enum PartsMethod {
    /**
     * Cone of VDI 2230 for a through bolt, tan phi = 0.362 + 0.032 ln(l/(2 d_w)) + 0.153 ln(D_A/d_w), sleeve beyond the
     * limit diameter. The default.
     */
    VDI_CONE("cone", "VDI-2230") {
        @Override
        public double complianceMPerN(LayerStack stack, ScrewThread thread) {
            return new PressureCone(stack, coneTangent(stack)).complianceMPerN();
        }
    },
    /** Frusta of 30 degrees half angle, layer by layer. */
    FRUSTA("frusta", "Shigley2011") {
        @Override
        public double complianceMPerN(LayerStack stack, ScrewThread thread) {
            return new PressureCone(stack, Math.tan(Math.PI / 6)).complianceMPerN();
        }
    },
    /** Exponential fit of Wileman, Choudhury and Green; parts of one material only. */
    EXPONENTIAL_FIT("exponential fit", "Wileman1991") {
        @Override
        public double complianceMPerN(LayerStack stack, ScrewThread thread) {
            if (!stack.isUniform()) {
                throw new IllegalArgumentException(
                        "the exponential fit holds for parts of one material; choose cone or frusta for several");
            }
            double modulus = stack.layers().get(0).elasticModulusPa();
            return 1 / ExponentialFit.of(modulus).stiffnessNPerM(modulus, thread.majorDiameterM(), stack.gripM());
        }
    };

    /** Widest part, over the bearing face, that the fitted cone angle is used for (assumed): wider parts change nothing. */
    private static final double WIDEST_RATIO = 10;

    private final String title;
    private final String sourceKey;

    PartsMethod(String title, String sourceKey) {
        this.title = title;
        this.sourceKey = sourceKey;
    }

    /** Compliance of the parts, m/N. */
    public abstract double complianceMPerN(LayerStack stack, ScrewThread thread);

    public String title() {
        return title;
    }

    /** Key into docs/references.md. */
    public String sourceKey() {
        return sourceKey;
    }

    /**
     * The method that a title names.
     *
     * @throws IllegalArgumentException with the titles allowed
     */
    public static PartsMethod named(String text) {
        return Arrays.stream(values())
                .filter(m -> m.title.equalsIgnoreCase(text.strip()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("\"" + text + "\" is no stiffness method; known are "
                        + Arrays.stream(values()).map(PartsMethod::title).collect(Collectors.joining(", "))));
    }

    /** Tangent of the cone's half angle. */
    static double coneTangent(LayerStack stack) {
        double face = stack.bearingFaceM();
        double width = Math.min(stack.meanOuterDiameterM() / face, WIDEST_RATIO);
        double tangent = 0.362 + 0.032 * Math.log(stack.gripM() / (2 * face)) + 0.153 * Math.log(Math.max(width, 1));
        if (!(tangent > 0)) {
            throw new IllegalArgumentException("the grip is too short for the cone of VDI 2230; choose frusta");
        }
        return tangent;
    }
}
