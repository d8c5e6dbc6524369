package org.shutoffbench.controller.conformance;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Set;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Command;
import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.controller.ShutoffStrategy;

/**
 * Does the strategy allocate after it has been made? Counted by the virtual machine for this thread over a million
 * samples, {@code arm}, {@code verdict} and {@code estimates} included; the best of a few rounds counts, since the first
 * one loads classes.
 */
final class AllocationCheck implements Check {

    private static final int TICKS = 1_000_000;
    private static final int TICKS_AFTER_STOP = 500;
    /** The first round loads classes; a strategy that allocates does so in every round. */
    private static final int ROUNDS = 3;

    @Override
    public String name() {
        return "no allocation";
    }

    @Override
    public Finding examine(Subject subject) {
        if (!(ManagementFactory.getThreadMXBean() instanceof ThreadMXBean counter)
                || !counter.isThreadAllocatedMemorySupported()) {
            return Finding.notJudged(name(), "this virtual machine does not count allocated bytes");
        }
        long bytes = 0;
        for (Set<Channel> channels : subject.channelSets()) {
            try {
                bytes += allocatedBytes(counter, subject.create(channels), channels);
            } catch (RuntimeException | AssertionError | LinkageError | StackOverflowError e) {
                return Finding.notJudged(name(), "threw " + Thrown.inWords(e));
            }
        }
        return bytes == 0
                ? Finding.passed(name(), "0 bytes in " + TICKS + " samples")
                : Finding.failed(
                        name(),
                        bytes + " bytes in " + TICKS + " samples",
                        "Allocate everything in create(); no boxing, no strings, no iterators in onSample or arm.");
    }

    private static long allocatedBytes(ThreadMXBean counter, ShutoffStrategy strategy, Set<Channel> channels) {
        Recording plain = new MaskedRecording(MadeUpTightening.plainJoint(), channels);
        Recording lockNut = new MaskedRecording(MadeUpTightening.lockNut(), channels);
        SensorFrame frame = new SensorFrame();
        float[] estimates = new float[Playback.ESTIMATE_ROOM];
        long least = Long.MAX_VALUE;
        for (int round = 0; round < ROUNDS && least > 0; round++) {
            long before = counter.getCurrentThreadAllocatedBytes();
            int played = 0;
            while (played < TICKS) {
                played += play(strategy, plain, frame, estimates);
                played += play(strategy, lockNut, frame, estimates);
            }
            least = Math.min(least, counter.getCurrentThreadAllocatedBytes() - before);
        }
        return least;
    }

    /** Plays a recording until shortly after the stop, so that nearly all samples are live; returns their number. */
    private static int play(ShutoffStrategy strategy, Recording recording, SensorFrame frame, float[] estimates) {
        strategy.arm(Subject.USUAL_TARGET);
        int end = recording.ticks();
        int tick = 0;
        while (tick < end) {
            recording.sample(tick, frame);
            Command command = strategy.onSample(frame);
            strategy.verdict();
            strategy.estimates(estimates);
            tick++;
            if (command.isShutoff()) {
                end = Math.min(end, tick + TICKS_AFTER_STOP);
            }
        }
        return tick;
    }
}
