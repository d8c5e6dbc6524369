package org.shutoffbench.harness.report.joint;

import org.shutoffbench.joint.assembly.BoltedAssembly;
import org.shutoffbench.joint.assembly.Embedding;
import org.shutoffbench.joint.assembly.Relaxation;

/** What is lost after tightening. */
final class SettlingFacts {

    private static final double DAY_S = 86_400;

    private SettlingFacts() {}

    static FactSection of(JointSubject subject) {
        BoltedAssembly assembly = subject.assembly();
        Embedding embedding = subject.embedding();
        int interfaces = assembly == null ? 1 : assembly.innerInterfaces();
        double lossN = embedding.lossN(interfaces, subject.specification().stiffnessNPerM());
        FactSection section = new FactSection("After tightening")
                .add(
                        "embedding amount, " + embedding.title(),
                        "f_Z",
                        Measure.MICRO_LENGTH,
                        embedding.amountM(interfaces),
                        "VDI-2230")
                .add("embedding loss", "F_Z", Measure.FORCE, lossN, "f_Z k_J");
        double aimedN = subject.aimedForceN();
        if (!Double.isNaN(aimedN)) {
            section.add("embedding loss over the aimed clamp force", "", Measure.SHARE, lossN / aimedN, "F_Z/F");
            section.add(
                    "relaxation of steel parts in a day",
                    "",
                    Measure.SHARE,
                    1 - Relaxation.ASSUMED_STEEL.forceN(aimedN, DAY_S) / aimedN,
                    "assumed");
        }
        if (assembly == null) {
            section.remark("One inner interface is assumed: the layers are not known.");
        }
        return section;
    }
}
