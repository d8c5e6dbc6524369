package org.shutoffbench.controller.conformance;

import org.jspecify.annotations.Nullable;
import org.shutoffbench.controller.Command;
import org.shutoffbench.controller.Verdict;

/** Is each answer, taken by itself and after the ones before it, one that the contract allows? */
final class ConductCheck implements Check {

    /** What is asked of a log: a fault in words, or null. */
    interface Rule {
        @Nullable
        String fault(Playback log);
    }

    private final String name;
    private final Rule rule;
    private final String passed;
    private final String remedy;

    private ConductCheck(String name, Rule rule, String passed, String remedy) {
        this.name = name;
        this.rule = rule;
        this.passed = passed;
        this.remedy = remedy;
    }

    static ConductCheck commands() {
        return new ConductCheck(
                "commands",
                ConductCheck::notACommand,
                "every sample was answered with a command, drive level in [0, 1]",
                "onSample returns a Command for every sample, and no method throws once the strategy is made.");
    }

    static ConductCheck latching() {
        return new ConductCheck(
                "shutoff latches",
                ConductCheck::drivesAgain,
                "no drive after a shutoff",
                "After the first COAST or BRAKE return COAST or BRAKE until armed again.");
    }

    static ConductCheck verdict() {
        return new ConductCheck(
                "verdict waits for the stop",
                ConductCheck::speaksEarly,
                "NOT_REACHED until stopped",
                "verdict() is NOT_REACHED until the strategy has commanded a shutoff.");
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Finding examine(Subject subject) {
        Recording[] recordings = {
            MadeUpTightening.plainJoint(), MadeUpTightening.lockNut(), MadeUpTightening.endlessHammering(),
        };
        StringBuilder stops = new StringBuilder();
        for (Recording recording : recordings) {
            Playback log = Playback.of(subject.create(), Subject.USUAL_TARGET, recording);
            String fault = rule.fault(log);
            if (fault != null) {
                return Finding.failed(name, fault + " on " + recording.title(), remedy);
            }
            stops.append(stops.isEmpty() ? "" : ", ").append(log.stopInWords());
        }
        return Finding.passed(name, passed + " (" + stops + ")");
    }

    private static @Nullable String notACommand(Playback log) {
        if (log.thrown != null) {
            return log.thrown + " at sample " + log.answered;
        }
        for (int i = 0; i < log.answered; i++) {
            Command command = log.commands[i];
            if (command == null) {
                return "no command at sample " + i;
            }
            if (!(command.level() >= 0 && command.level() <= 1)) {
                return "drive level " + command.level() + " at sample " + i;
            }
        }
        return null;
    }

    private static @Nullable String drivesAgain(Playback log) {
        for (int i = Math.max(0, log.stopTick); log.stopTick >= 0 && i < log.answered; i++) {
            Command command = log.commands[i];
            if (command != null && !command.isShutoff()) {
                return "stopped at sample " + log.stopTick + " and drove again at sample " + i;
            }
        }
        return null;
    }

    private static @Nullable String speaksEarly(Playback log) {
        for (int i = 0; i < log.answered; i++) {
            Verdict verdict = log.verdicts[i];
            if (verdict == null) {
                return "no verdict at sample " + i;
            }
            if (verdict != Verdict.NOT_REACHED && (log.stopTick < 0 || i < log.stopTick)) {
                return "says " + verdict + " at sample " + i + " while driving";
            }
        }
        return null;
    }
}
