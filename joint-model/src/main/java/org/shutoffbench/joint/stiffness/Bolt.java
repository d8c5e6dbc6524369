package org.shutoffbench.joint.stiffness;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shutoffbench.joint.thread.ScrewThread;

/**
 * A hexagon bolt with its nut as a row of springs (source key {@code VDI-2230}).
 *
 * @param thread the thread
 * @param elasticModulusPa E, Pa; positive
 * @param shankLengthM unthreaded shank inside the grip, m; not negative
 * @param freeThreadLengthM thread inside the grip that no nut holds, m; not negative
 */
public record Bolt(ScrewThread thread, double elasticModulusPa, double shankLengthM, double freeThreadLengthM) {

    /**
     * One spring of the row.
     *
     * @param name what it is
     * @param complianceMPerN m/N; not negative
     */
    public record Element(String name, double complianceMPerN) {}

    /** Lengths, over d, that stand for a head, an engaged thread and a nut. */
    private static final double HEAD_LENGTH = 0.5;

    private static final double ENGAGED_THREAD_LENGTH = 0.5;
    private static final double NUT_LENGTH = 0.4;

    public Bolt {
        if (!(elasticModulusPa > 0 && elasticModulusPa < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("modulus of elasticity must be positive and finite");
        }
        if (!(shankLengthM >= 0) || !(freeThreadLengthM >= 0) || !(shankLengthM + freeThreadLengthM > 0)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "bolt sections of %.4g mm shank and %.4g mm free thread make no grip",
                    shankLengthM * 1e3,
                    freeThreadLengthM * 1e3));
        }
    }

    /** Head, shank, free thread, engaged thread and nut, in this order. */
    public List<Element> elements() {
        double d = thread.majorDiameterM();
        double shankArea = thread.shankAreaM2();
        double rootArea = thread.rootAreaM2();
        List<Element> elements = new ArrayList<>();
        elements.add(element("head", HEAD_LENGTH * d, shankArea));
        elements.add(element("shank", shankLengthM, shankArea));
        elements.add(element("free thread", freeThreadLengthM, rootArea));
        elements.add(element("engaged thread", ENGAGED_THREAD_LENGTH * d, rootArea));
        elements.add(element("nut", NUT_LENGTH * d, shankArea));
        return List.copyOf(elements);
    }

    /** Compliance of the whole bolt delta_S, m/N. */
    public double complianceMPerN() {
        return elements().stream().mapToDouble(Element::complianceMPerN).sum();
    }

    /**
     * Stiffness of shank and free thread alone on the stress area, N/m: the handbook form that leaves head and nut out
     * (source key {@code Shigley2011}, eq. 8-17).
     */
    public double gripStiffnessNPerM() {
        return elasticModulusPa / (shankLengthM / thread.shankAreaM2() + freeThreadLengthM / thread.stressAreaM2());
    }

    private Element element(String name, double lengthM, double areaM2) {
        return new Element(name, lengthM / (elasticModulusPa * areaM2));
    }
}
