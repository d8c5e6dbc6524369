package org.shutoffbench.harness.study.failure;

import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.run.Outcome;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.scenario.JudgedQuantity;
import org.shutoffbench.harness.scenario.Judgement;
import org.shutoffbench.harness.study.Event;

/**
 * A failure whose nearness can be measured: the judged quantity's distance from the window's edge over the target, infinite
 * where the verdict alone rules the failure out ({@code docs/adr/0020-limit-state.md}).
 */
public enum FailureEvent {
    /** The strategy says done, the joint is unseated or low. */
    SILENT_MISS("silent miss", Event.SILENT_MISS) {
        @Override
        boolean possible(TighteningRecord tightening) {
            return tightening.verdict() == Verdict.REACHED;
        }

        @Override
        double distance(double value, Judgement judgement) {
            return value - judgement.lowest();
        }
    },
    /** The strategy says done, the joint is past it. */
    FALSE_STOP("false stop", Event.FALSE_STOP) {
        @Override
        boolean possible(TighteningRecord tightening) {
            return tightening.verdict() == Verdict.REACHED;
        }

        @Override
        double distance(double value, Judgement judgement) {
            return judgement.highest() - value;
        }
    },
    /** Outside the window on either side, whatever the verdict. */
    OUT_OF_WINDOW("out of window", Event.OUT_OF_WINDOW) {
        @Override
        boolean possible(TighteningRecord tightening) {
            return true;
        }

        @Override
        double distance(double value, Judgement judgement) {
            return Math.min(value - judgement.lowest(), judgement.highest() - value);
        }
    };

    private final String title;
    private final Event event;

    FailureEvent(String title, Event event) {
        this.title = title;
        this.event = event;
    }

    /** As written on the command line and in reports. */
    public String title() {
        return title;
    }

    /** Whether a tightening is such a failure. */
    public boolean happened(TighteningRecord tightening) {
        return event.holds(tightening.outcome(), tightening.verdict());
    }

    /** At or below 0 exactly where it {@link #happened}; infinite where it cannot. */
    public double margin(TighteningRecord tightening, Judgement judgement) {
        double value = judgement.quantity() == JudgedQuantity.CLAMPING_TORQUE
                ? tightening.clampingTorqueNm()
                : tightening.clampForceN();
        double margin = distance(value, judgement) / judgement.target().si();
        if (happened(tightening)) {
            return Math.min(0, margin);
        }
        boolean barred = !possible(tightening) || margin <= 0 || tightening.outcome() == Outcome.FRACTURED;
        return barred ? Double.POSITIVE_INFINITY : margin;
    }

    /** Whether the verdict leaves it possible. */
    abstract boolean possible(TighteningRecord tightening);

    /** Distance from the edge of the window that the failure lies beyond, in the quantity's unit. */
    abstract double distance(double value, Judgement judgement);
}
