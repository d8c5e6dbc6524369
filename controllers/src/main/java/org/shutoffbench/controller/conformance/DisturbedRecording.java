package org.shutoffbench.controller.conformance;

import java.util.Set;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.SensorFrame;

/** A recording whose chosen channels fail in one way from one sample on. */
final class DisturbedRecording implements Recording {

    private final Recording undisturbed;
    private final Channel[] failing;
    private final float[] atFailure;
    private final Disturbance disturbance;
    private final int from;

    DisturbedRecording(Recording undisturbed, Set<Channel> failing, Disturbance disturbance, int from) {
        this.undisturbed = undisturbed;
        this.failing = failing.toArray(new Channel[0]);
        this.atFailure = new float[this.failing.length];
        this.disturbance = disturbance;
        this.from = from;
        SensorFrame frame = new SensorFrame();
        undisturbed.sample(from, frame);
        for (int i = 0; i < atFailure.length; i++) {
            atFailure[i] = Frames.get(frame, this.failing[i]);
        }
    }

    @Override
    public int ticks() {
        return undisturbed.ticks();
    }

    @Override
    public String title() {
        StringBuilder title = new StringBuilder(undisturbed.title()).append(" with ");
        for (int i = 0; i < failing.length; i++) {
            title.append(i == 0 ? "" : ", ").append(failing[i].title());
        }
        return title.append(": ")
                .append(disturbance.title)
                .append(" from sample ")
                .append(from)
                .toString();
    }

    @Override
    public void sample(int tick, SensorFrame frame) {
        undisturbed.sample(tick, frame);
        if (tick < from) {
            return;
        }
        for (int i = 0; i < failing.length; i++) {
            float now = Frames.get(frame, failing[i]);
            Frames.set(frame, failing[i], disturbance.reading(tick, failing[i], now, atFailure[i]));
        }
    }
}
