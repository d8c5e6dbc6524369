package org.shutoffbench.harness.report.joint;

import org.shutoffbench.joint.assembly.BoltedAssembly;
import org.shutoffbench.joint.stiffness.Bolt;
import org.shutoffbench.joint.stiffness.JointStiffness;
import org.shutoffbench.joint.stiffness.PartsMethod;

/** How far bolt and parts give. */
final class StiffnessFacts {

    private StiffnessFacts() {}

    static FactSection of(JointSubject subject) {
        FactSection section = new FactSection("Stiffness");
        BoltedAssembly assembly = subject.assembly();
        if (assembly != null) {
            elements(section, assembly);
        }
        return section.add(
                        "joint, all in series",
                        "k_J",
                        Measure.STIFFNESS,
                        subject.specification().stiffnessNPerM(),
                        assembly == null ? "given" : "VDI-2230")
                .add(
                        "clamp force per nut angle",
                        "k_F",
                        Measure.FORCE_PER_ANGLE,
                        subject.specification().forcePerAngleNPerRad(),
                        "k_J P/(2 pi)");
    }

    private static void elements(FactSection section, BoltedAssembly assembly) {
        for (Bolt.Element element : assembly.bolt().elements()) {
            if (element.complianceMPerN() > 0) {
                section.add(
                        "bolt: " + element.name(), "", Measure.STIFFNESS, 1 / element.complianceMPerN(), "VDI-2230");
            }
        }
        JointStiffness joint = assembly.stiffness();
        section.add("bolt", "k_S", Measure.STIFFNESS, 1 / joint.boltComplianceMPerN(), "VDI-2230");
        section.add(
                "parts by " + assembly.method().title(),
                "k_P",
                Measure.STIFFNESS,
                1 / joint.partsComplianceMPerN(),
                assembly.method().sourceKey());
        for (PartsMethod other : PartsMethod.values()) {
            if (other != assembly.method()
                    && (other != PartsMethod.EXPONENTIAL_FIT || assembly.stack().isUniform())) {
                double compliance = other.complianceMPerN(assembly.stack(), assembly.thread());
                section.add(
                        "parts by " + other.title() + ", to compare",
                        "",
                        Measure.STIFFNESS,
                        1 / compliance,
                        other.sourceKey());
            }
        }
        for (int i = 0; i < joint.springsNPerM().size(); i++) {
            section.add(
                    "spring " + (i + 1),
                    "",
                    Measure.STIFFNESS,
                    joint.springsNPerM().get(i),
                    "given");
        }
        section.add("load factor", "Phi", Measure.PURE, joint.loadFactor(), "VDI-2230");
    }
}
