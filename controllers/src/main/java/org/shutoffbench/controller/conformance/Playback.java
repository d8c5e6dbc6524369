package org.shutoffbench.controller.conformance;

import org.jspecify.annotations.Nullable;
import org.shutoffbench.controller.Command;
import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.Target;
import org.shutoffbench.controller.Verdict;

/** What a strategy answered to a recording, sample by sample, up to the end or to what it threw. */
final class Playback {

    /** How many floats {@code estimates()} is offered; far more than any descriptor may announce. */
    static final int ESTIMATE_ROOM = 64;

    final Recording recording;
    final @Nullable Command[] commands;
    final @Nullable Verdict[] verdicts;
    final int[] estimateHashes;
    /** Answered samples; less than the recording's where the strategy threw. */
    int answered;
    /** First sample answered with COAST or BRAKE; -1 where there is none. */
    int stopTick = -1;

    /** Which method threw what and where; null where none did. */
    @Nullable
    String thrown;

    private String asked = "arm";

    private Playback(Recording recording) {
        this.recording = recording;
        this.commands = new Command[recording.ticks()];
        this.verdicts = new Verdict[recording.ticks()];
        this.estimateHashes = new int[recording.ticks()];
    }

    /** Arms a strategy and plays a recording to it. */
    static Playback of(ShutoffStrategy strategy, Target target, Recording recording) {
        Playback log = new Playback(recording);
        SensorFrame frame = new SensorFrame();
        float[] estimates = new float[ESTIMATE_ROOM];
        try {
            strategy.arm(target);
            for (int tick = 0; tick < recording.ticks(); tick++) {
                recording.sample(tick, frame);
                log.answer(tick, strategy, frame, estimates);
            }
        } catch (RuntimeException | AssertionError | LinkageError | StackOverflowError e) {
            log.thrown = log.asked + "() threw " + Thrown.inWords(e);
        }
        return log;
    }

    /** Plays one recording to two strategies in turn, sample by sample, so that shared state shows. */
    static Playback[] interleaved(ShutoffStrategy first, ShutoffStrategy second, Target target, Recording recording) {
        Playback[] logs = {new Playback(recording), new Playback(recording)};
        SensorFrame frame = new SensorFrame();
        float[] estimates = new float[ESTIMATE_ROOM];
        try {
            first.arm(target);
            second.arm(target);
            for (int tick = 0; tick < recording.ticks(); tick++) {
                recording.sample(tick, frame);
                logs[0].answer(tick, first, frame, estimates);
                logs[1].answer(tick, second, frame, estimates);
            }
        } catch (RuntimeException | AssertionError | LinkageError | StackOverflowError e) {
            logs[0].thrown = Thrown.inWords(e);
            logs[1].thrown = Thrown.inWords(e);
        }
        return logs;
    }

    private void answer(int tick, ShutoffStrategy strategy, SensorFrame frame, float[] estimates) {
        asked = "onSample";
        Command command = strategy.onSample(frame);
        commands[tick] = command;
        asked = "verdict";
        verdicts[tick] = strategy.verdict();
        asked = "estimates";
        int count = strategy.estimates(estimates);
        int hash = count;
        for (int i = 0; i < Math.min(count, estimates.length); i++) {
            hash = 31 * hash + Float.floatToIntBits(estimates[i]);
        }
        estimateHashes[tick] = hash;
        if (stopTick < 0 && command != null && command.isShutoff()) {
            stopTick = tick;
        }
        answered = tick + 1;
    }

    /** The first difference to another log of as many samples, told in words; null where there is none. */
    @Nullable
    String differenceTo(Playback other) {
        int common = Math.min(answered, other.answered);
        for (int i = 0; i < common; i++) {
            if (commands[i] != other.commands[i]) {
                return "sample " + i + ": " + commands[i] + " against " + other.commands[i];
            }
            if (verdicts[i] != other.verdicts[i]) {
                return "sample " + i + ": verdict " + verdicts[i] + " against " + other.verdicts[i];
            }
            if (estimateHashes[i] != other.estimateHashes[i]) {
                return "sample " + i + ": other estimates";
            }
        }
        return answered == other.answered ? null : "one of the two threw after sample " + common;
    }

    /** Time of the stop in words. */
    String stopInWords() {
        return stopTick < 0 ? "no stop" : "stop at " + stopTick / (float) Subject.RATE_HZ + " s";
    }
}
