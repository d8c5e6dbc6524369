package org.shutoffbench.harness.statistics;

import java.util.stream.IntStream;

/** Holm's step-down adjustment: joint control of the error over several tests (source: Holm1979). */
public final class Holm {

    private Holm() {}

    /** Adjusted p values, in the order given. */
    public static double[] adjust(double[] p) {
        int[] ascending = IntStream.range(0, p.length)
                .boxed()
                .sorted((i, j) -> Double.compare(p[i], p[j]))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] adjusted = new double[p.length];
        double running = 0;
        for (int place = 0; place < ascending.length; place++) {
            running = Math.max(running, Math.min(1, (p.length - place) * p[ascending[place]]));
            adjusted[ascending[place]] = running;
        }
        return adjusted;
    }
}
