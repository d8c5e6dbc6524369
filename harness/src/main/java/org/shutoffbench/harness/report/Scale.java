package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** An axis from 0 with few round ticks; a marked value such as the target gets a tick of its own. */
record Scale(double max, List<Double> ticks) {

    private static final double ROOM_FOR_A_LABEL = 0.14;

    /**
     * An axis that reaches at least a value.
     *
     * @param atLeast least end of the axis, above 0
     * @param marked a value that gets a tick, or null
     */
    static Scale reaching(double atLeast, @Nullable Double marked) {
        double step = roundStep(atLeast / 3);
        double max = step * Math.ceil(atLeast / step - 1e-9);
        List<Double> ticks = new ArrayList<>();
        for (int i = 0; i * step <= max * (1 + 1e-9); i++) {
            double tick = i * step;
            if (marked == null || Math.abs(tick - marked) > ROOM_FOR_A_LABEL * max) {
                ticks.add(tick);
            }
        }
        if (marked != null && marked < max) {
            ticks.add(marked);
            ticks.sort(null);
        }
        return new Scale(max, ticks);
    }

    /** The ticks and the middles between them. */
    List<Double> halves() {
        List<Double> halves = new ArrayList<>();
        for (int i = 0; i < ticks.size(); i++) {
            if (i > 0) {
                halves.add((ticks.get(i - 1) + ticks.get(i)) / 2);
            }
            halves.add(ticks.get(i));
        }
        return halves;
    }

    /** 1, 2, 2.5, 4 or 5 times a power of ten, the nearest from above. */
    private static double roundStep(double step) {
        double power = Math.pow(10, Math.floor(Math.log10(step)));
        for (double candidate : new double[] {1, 2, 2.5, 4, 5}) {
            if (candidate * power >= step * (1 - 1e-9)) {
                return candidate * power;
            }
        }
        return 10 * power;
    }
}
