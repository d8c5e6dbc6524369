package org.shutoffbench.harness.study;

import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.run.Outcome;

/** What can be counted of a joint: its outcome, or its outcome against the verdict. */
public enum Event {
    IN_WINDOW("in window") {
        @Override
        public boolean holds(Outcome outcome, Verdict verdict) {
            return outcome == Outcome.IN_WINDOW;
        }
    },
    /** Anything but in window. */
    OUT_OF_WINDOW("out of window") {
        @Override
        public boolean holds(Outcome outcome, Verdict verdict) {
            return outcome != Outcome.IN_WINDOW;
        }
    },
    /** The strategy says done, the joint is not. */
    SILENT_MISS("silent miss") {
        @Override
        public boolean holds(Outcome outcome, Verdict verdict) {
            return verdict == Verdict.REACHED && (outcome == Outcome.UNSEATED || outcome == Outcome.LOW);
        }
    },
    /** The strategy says done, the joint is past it. */
    FALSE_STOP("false stop") {
        @Override
        public boolean holds(Outcome outcome, Verdict verdict) {
            return verdict == Verdict.REACHED
                    && (outcome == Outcome.HIGH || outcome == Outcome.YIELDED || outcome == Outcome.FRACTURED);
        }
    },
    /** The strategy says not done, the joint is. */
    FALSE_ALARM("false alarm") {
        @Override
        public boolean holds(Outcome outcome, Verdict verdict) {
            return verdict == Verdict.NOT_REACHED && outcome == Outcome.IN_WINDOW;
        }
    },
    UNDECIDED("undecided") {
        @Override
        public boolean holds(Outcome outcome, Verdict verdict) {
            return verdict == Verdict.UNSURE;
        }
    },
    UNSEATED("unseated") {
        @Override
        public boolean holds(Outcome outcome, Verdict verdict) {
            return outcome == Outcome.UNSEATED;
        }
    },
    LOW("low") {
        @Override
        public boolean holds(Outcome outcome, Verdict verdict) {
            return outcome == Outcome.LOW;
        }
    },
    HIGH("high") {
        @Override
        public boolean holds(Outcome outcome, Verdict verdict) {
            return outcome == Outcome.HIGH;
        }
    },
    YIELDED("yielded") {
        @Override
        public boolean holds(Outcome outcome, Verdict verdict) {
            return outcome == Outcome.YIELDED;
        }
    },
    FRACTURED("fractured") {
        @Override
        public boolean holds(Outcome outcome, Verdict verdict) {
            return outcome == Outcome.FRACTURED;
        }
    },
    REACHED("verdict reached") {
        @Override
        public boolean holds(Outcome outcome, Verdict verdict) {
            return verdict == Verdict.REACHED;
        }
    };

    private final String title;

    Event(String title) {
        this.title = title;
    }

    /** As written in reports and on the command line. */
    public String title() {
        return title;
    }

    /** Whether a joint with this outcome and verdict counts. */
    public abstract boolean holds(Outcome outcome, Verdict verdict);
}
