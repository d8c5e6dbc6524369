package org.shutoffbench.controller.conformance;

import org.shutoffbench.controller.Verdict;

/**
 * Does the strategy survive a rundown without end, and keep from claiming a tight joint where the nut only spins? A
 * strategy that senses nothing and goes by time alone may claim what it likes.
 */
final class RundownCheck implements Check {

    @Override
    public String name() {
        return "endless rundown";
    }

    @Override
    public Finding examine(Subject subject) {
        Playback log = Playback.of(subject.create(), Subject.USUAL_TARGET, new EndlessRundown());
        if (log.thrown != null) {
            return failure(log.thrown + " at sample " + log.answered);
        }
        boolean senses = !subject.descriptor.requiredChannels().isEmpty();
        if (senses && log.verdicts[log.answered - 1] == Verdict.REACHED) {
            return failure("says REACHED on a nut that spins freely, " + log.stopInWords());
        }
        return Finding.passed(name(), log.stopInWords() + " in " + log.answered / Subject.RATE_HZ + " s");
    }

    private Finding failure(String found) {
        return Finding.failed(
                name(), found, "Bound what is remembered, and let only a limit on time end a free rundown.");
    }
}
