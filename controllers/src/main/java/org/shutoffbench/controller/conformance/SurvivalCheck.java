package org.shutoffbench.controller.conformance;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Verdict;

/**
 * Does the strategy answer, without an exception, when its sensors fail in one way: each declared channel alone, and all
 * of them, from the start and in the middle of a tightening? A strategy that was blind from the start must not claim
 * that the target was reached.
 */
final class SurvivalCheck implements Check {

    private final Disturbance[] disturbances;
    private final String name;

    SurvivalCheck(String name, Disturbance... disturbances) {
        this.name = name;
        this.disturbances = disturbances;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Finding examine(Subject subject) {
        Set<Channel> declared = subject.declaredChannels();
        Recording[] recordings = {
            new MaskedRecording(MadeUpTightening.plainJoint(), declared),
            new MaskedRecording(MadeUpTightening.lockNut(), declared),
        };
        for (Recording recording : recordings) {
            for (Disturbance disturbance : disturbances) {
                for (Channel channel : declared) {
                    String fault = play(subject, recording, EnumSet.of(channel), disturbance);
                    if (fault != null) {
                        return failure(fault);
                    }
                }
                String fault = play(subject, recording, declared, disturbance);
                if (fault != null) {
                    return failure(fault);
                }
            }
        }
        return Finding.passed(name, "answered every sample, each of " + declared.size() + " channels and all failing");
    }

    private Finding failure(String fault) {
        return Finding.failed(
                name,
                fault,
                "Treat a reading that is not finite, out of range or unchanged as no reading, and document what"
                        + " the strategy then commands.");
    }

    private static @Nullable String play(
            Subject subject, Recording recording, Set<Channel> failing, Disturbance disturbance) {
        int[] starts = {0, recording.ticks() / 20};
        for (int from : starts) {
            Recording disturbed = new DisturbedRecording(recording, failing, disturbance, from);
            Playback log = Playback.of(subject.create(), Subject.USUAL_TARGET, disturbed);
            if (log.thrown != null) {
                return log.thrown + " at sample " + log.answered + " of " + disturbed.title();
            }
            if (from == 0 && isBlind(subject, failing, disturbance) && claims(log)) {
                return "says REACHED without one finite reading on " + disturbed.title();
            }
        }
        return null;
    }

    private static boolean isBlind(Subject subject, Set<Channel> failing, Disturbance disturbance) {
        return disturbance == Disturbance.NOT_A_NUMBER
                && !subject.descriptor.requiredChannels().isEmpty()
                && failing.containsAll(subject.declaredChannels());
    }

    private static boolean claims(Playback log) {
        return log.answered > 0 && log.verdicts[log.answered - 1] == Verdict.REACHED;
    }
}
