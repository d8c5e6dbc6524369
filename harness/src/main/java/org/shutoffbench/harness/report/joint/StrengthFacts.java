package org.shutoffbench.harness.report.joint;

import org.shutoffbench.joint.strength.AssemblyLimit;
import org.shutoffbench.joint.strength.PropertyClass;
import org.shutoffbench.joint.strength.Strength;
import org.shutoffbench.joint.strength.StructuralPretension;
import org.shutoffbench.joint.thread.ScrewThread;

/** What the bolt and its nut bear. */
final class StrengthFacts {

    private StrengthFacts() {}

    static FactSection of(JointSubject subject) {
        FactSection section = new FactSection("Strength");
        PropertyClass propertyClass = subject.propertyClass();
        AssemblyLimit limit = subject.limit();
        if (propertyClass == null || limit == null) {
            return section;
        }
        ScrewThread thread = subject.specification().thread();
        Strength strength = propertyClass.strength(thread);
        String key = propertyClass.sourceKey();
        section.add("proof stress", "S_p", Measure.STRESS, strength.proofPa(), key)
                .add("yield strength", "R_p0.2", Measure.STRESS, strength.yieldPa(), key)
                .add("tensile strength", "R_m", Measure.STRESS, strength.tensilePa(), key)
                .add("proof load of the bolt", "", Measure.FORCE, propertyClass.proofLoadN(thread), key)
                .add("proof load of the nut", "", Measure.FORCE, propertyClass.nutProofLoadN(thread), "ISO-898-2")
                .add("clamp force at yield while tightening", "F_y", Measure.FORCE, limit.yieldForceN(), "VDI-2230");
        if (propertyClass.nutProofLoadN(thread) < limit.yieldForceN()) {
            section.remark(
                    "The nut's proof load lies below the yield force: its thread may strip before the bolt yields.");
        }
        if (propertyClass == PropertyClass.A325 || propertyClass == PropertyClass.A490) {
            section.add(
                    "minimum pretension of structural bolts",
                    "",
                    Measure.FORCE,
                    StructuralPretension.minimumN(propertyClass, thread),
                    "RCSC-2014");
        }
        return section;
    }
}
