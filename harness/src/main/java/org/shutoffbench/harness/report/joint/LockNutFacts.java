package org.shutoffbench.harness.report.joint;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.joint.assembly.BoltedAssembly;
import org.shutoffbench.joint.prevailing.LockNutKind;
import org.shutoffbench.joint.prevailing.PrevailingRange;
import org.shutoffbench.joint.prevailing.ReuseDecay;
import org.shutoffbench.joint.prevailing.RunningTorqueRule;
import org.shutoffbench.joint.thread.ScrewThread;

/** What a lock nut of this size resists with, and where it begins. */
final class LockNutFacts {

    private LockNutFacts() {}

    static FactSection of(JointSubject subject) {
        FactSection section = new FactSection("Prevailing torque of a lock nut of this size");
        ScrewThread thread = subject.specification().thread();
        Optional<PrevailingRange> range = PrevailingRange.of(thread);
        range.ifPresent(r -> limits(section, r));
        if (range.isPresent() && !Double.isNaN(subject.aimedForceN())) {
            double target = subject.torqueTension().kappaOnM() * subject.aimedForceN();
            section.add(
                    "set torque with the highest prevailing torque",
                    "",
                    Measure.TORQUE,
                    RunningTorqueRule.setTorqueNm(target, range.get().highestNm()),
                    "TB-43-0218");
        }
        LockNutKind kind = subject.lockNut();
        if (kind != null) {
            place(section, kind, thread, subject.assembly());
        }
        return section;
    }

    private static void limits(FactSection section, PrevailingRange range) {
        section.add("highest on first assembly", "", Measure.TORQUE, range.highestNm(), range.sourceKey())
                .add("lowest on removal", "", Measure.TORQUE, range.lowestNm(), range.sourceKey())
                .add("least loss at the first seating", "", Measure.SHARE, ReuseDecay.FIRST_LOSS_LEAST, "Zimandy2013")
                .add("most loss at the first seating", "", Measure.SHARE, ReuseDecay.FIRST_LOSS_MOST, "Zimandy2013");
    }

    private static void place(
            FactSection section, LockNutKind kind, ScrewThread thread, @Nullable BoltedAssembly assembly) {
        section.add("depth of the locking element", "", Measure.LENGTH, kind.elementDepthM(thread), "assumed")
                .add("coldest use", "", Measure.TEMPERATURE, kind.coldestC(), "ISO-2320")
                .add("hottest use", "", Measure.TEMPERATURE, kind.hottestC(), "ISO-2320");
        if (assembly != null) {
            double turns = kind.turnsBeforeSnug(thread, assembly.lengthPastNutFaceM());
            section.add(
                    "turns from locking element to seating",
                    "",
                    Measure.TURNS,
                    turns * 2 * Math.PI,
                    "(L - l_K - depth)/P");
        }
    }
}
