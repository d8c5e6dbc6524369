package org.shutoffbench.controller.conformance;

import java.util.EnumSet;
import java.util.Set;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.SensorFrame;

/** A recording as a tool delivers it that has only some channels; the rest is NaN, blows 0. */
final class MaskedRecording implements Recording {

    private final Recording whole;
    private final Channel[] missing;

    MaskedRecording(Recording whole, Set<Channel> present) {
        this.whole = whole;
        Set<Channel> absent = EnumSet.allOf(Channel.class);
        absent.removeAll(present);
        this.missing = absent.toArray(new Channel[0]);
    }

    @Override
    public int ticks() {
        return whole.ticks();
    }

    @Override
    public String title() {
        return whole.title();
    }

    @Override
    public void sample(int tick, SensorFrame frame) {
        whole.sample(tick, frame);
        for (Channel channel : missing) {
            Frames.set(frame, channel, Float.NaN);
        }
    }
}
