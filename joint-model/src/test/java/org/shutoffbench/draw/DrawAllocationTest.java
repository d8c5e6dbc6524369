package org.shutoffbench.draw;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;

class DrawAllocationTest {

    private static final DrawKey KEY = DrawKey.of(3, "s", "f");
    private static final Distribution[] DISTRIBUTIONS = {
        new Constant(1), new CutNormal(1, 0.1), new Lognormal(1, 0.1), new Uniform(0, 1), new Presence(0.5)
    };

    private double sink;

    @Test
    void drawingAllocatesNothing() {
        drawAll(20_000);
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long thread = Thread.currentThread().getId();
        long before = threads.getThreadAllocatedBytes(thread);
        long idle = threads.getThreadAllocatedBytes(thread) - before;

        before = threads.getThreadAllocatedBytes(thread);
        drawAll(100_000);
        long allocated = threads.getThreadAllocatedBytes(thread) - before;

        assertThat(allocated).isLessThanOrEqualTo(idle);
        assertThat(sink).isFinite();
    }

    private void drawAll(int count) {
        for (int i = 0; i < count; i++) {
            sink += KEY.normal(Stream.PIECE, i, 0);
            sink += NoiseStream.normal(KEY.noiseKey(Stream.SENSOR, i, 0), i);
            sink += NoiseStream.uniform(NoiseStream.branch(i, 3), i);
            for (int d = 0; d < DISTRIBUTIONS.length; d++) {
                sink += KEY.draw(DISTRIBUTIONS[d], Stream.TOOL, i, d);
            }
        }
    }
}
