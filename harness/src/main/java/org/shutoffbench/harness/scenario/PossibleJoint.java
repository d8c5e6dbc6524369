package org.shutoffbench.harness.scenario;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.shutoffbench.harness.scenario.file.Section;
import org.shutoffbench.joint.TorqueTension;

/** Refuses a family whose median joint no one could tighten, or whose draws contradict each other. */
final class PossibleJoint {

    private final Section section;
    private final JointFamily family;
    private final JointAssembly median;

    PossibleJoint(Section section, JointFamily family) {
        this.section = section;
        this.family = family;
        Map<JointKey, Double> drawn = new EnumMap<>(JointKey.class);
        family.numbers().forEach((key, amount) -> drawn.put(key, amount.median()));
        this.median = new JointAssembly(family, drawn, 0);
    }

    /** The family; problems are told where there are any. */
    JointFamily checked() {
        require();
        return family;
    }

    private void require() {
        if (lockingElementMayBeginTooEarly()) {
            section.refuse(
                    Part.PREVAILING.key(),
                    "the locking element may begin before the start",
                    "before_snug must stay below turns_to_snug for every draw; give less of it, or from: 0 turns");
            return;
        }
        try {
            TorqueTension torqueTension = median.torqueTension();
            if (!torqueTension.isSelfLocking()) {
                section.refuse("friction", "the joint is not self-locking", notSelfLocking(torqueTension));
                return;
            }
            median.law();
        } catch (IllegalArgumentException e) {
            section.problems()
                    .add(
                            section.place(),
                            section.path(),
                            "no such joint can be tightened",
                            String.valueOf(e.getMessage()));
        }
    }

    private boolean lockingElementMayBeginTooEarly() {
        Amount before = family.numbers().get(JointKey.PREVAILING_BEFORE_SNUG);
        Amount turns = family.numbers().get(JointKey.TURNS_TO_SNUG);
        return before != null && turns != null && before.highest() > turns.lowest() * 2 * Math.PI;
    }

    private static String notSelfLocking(TorqueTension torqueTension) {
        return String.format(
                Locale.ROOT,
                "friction resists with a lever of %.3f mm, the helix drives with %.3f mm; give more friction or a finer pitch",
                1e3 * (torqueTension.threadLeverM() + torqueTension.bearingLeverM()),
                1e3 * torqueTension.helixLeverM());
    }
}
