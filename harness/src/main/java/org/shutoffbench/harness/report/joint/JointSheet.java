package org.shutoffbench.harness.report.joint;

import java.util.ArrayList;
import java.util.List;

/** Everything that can be said about a joint without tightening it. */
public final class JointSheet {

    private final JointSubject subject;
    private final List<FactSection> sections = new ArrayList<>();

    private JointSheet(JointSubject subject) {
        this.subject = subject;
    }

    /**
     * The sheet of a joint.
     *
     * @throws IllegalArgumentException with the reason, where no such joint can be tightened
     */
    public static JointSheet of(JointSubject subject) {
        subject.specification().law();
        JointSheet sheet = new JointSheet(subject);
        sheet.sections.add(GeometryFacts.of(subject));
        sheet.sections.add(StiffnessFacts.of(subject));
        sheet.sections.add(TorqueFacts.of(subject));
        sheet.sections.add(StrengthFacts.of(subject));
        sheet.sections.add(TighteningFacts.of(subject));
        sheet.sections.add(LockNutFacts.of(subject));
        sheet.sections.add(SettlingFacts.of(subject));
        sheet.sections.removeIf(s -> s.facts().isEmpty());
        return sheet;
    }

    JointSubject subject() {
        return subject;
    }

    List<FactSection> sections() {
        return List.copyOf(sections);
    }
}
