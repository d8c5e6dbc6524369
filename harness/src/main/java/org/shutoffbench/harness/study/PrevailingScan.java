package org.shutoffbench.harness.study;

import java.util.List;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.run.Outcome;

/**
 * What becomes of the median joint of a family as its prevailing torque rises from none: one tightening per strategy and
 * level, every other number at its median. It explains what the classes of a {@link CovariateCurve} count.
 *
 * @param family index of the family
 * @param levels ascending in torque; they end early where the tool could not tighten the joint at all
 */
public record PrevailingScan(int family, List<Level> levels) {

    public PrevailingScan {
        levels = List.copyOf(levels);
    }

    /**
     * One level.
     *
     * @param torqueNm full prevailing torque of the nut, N m
     * @param blowsBeforeSnug blows that a tool at full drive strikes before the nut touches the joint
     * @param endings one for each strategy, in the scenario's order
     */
    public record Level(double torqueNm, int blowsBeforeSnug, List<Ending> endings) {

        public Level {
            endings = List.copyOf(endings);
        }
    }

    /** How one strategy left the joint; blows count spin-up and run-on. */
    public record Ending(Outcome outcome, Verdict verdict, int blows) {

        /** Called done while low or unseated. */
        public boolean silentMiss() {
            return Event.SILENT_MISS.holds(outcome, verdict);
        }
    }
}
