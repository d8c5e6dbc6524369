package org.shutoffbench.controller.conformance;

import org.shutoffbench.controller.SensorFrame;

/** Samples of every channel at {@link Subject#RATE_HZ}; a pure function of the sample's index. */
interface Recording {

    /** Number of samples. */
    int ticks();

    /** Overwrites every channel of the frame with sample {@code tick}, 0 to {@code ticks() - 1}. */
    void sample(int tick, SensorFrame frame);

    /** What is recorded, for findings. */
    String title();
}
