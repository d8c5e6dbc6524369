package org.shutoffbench.harness.report.joint;

import java.util.Locale;
import java.util.stream.LongStream;

/** Round numbers along an axis. */
final class Axis {

    private static final int INTERVALS = 6;

    private Axis() {}

    /** A step of 1, 2 or 5 times a power of ten that divides a length into about six. */
    static double step(double length) {
        double rough = length / INTERVALS;
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double digit = rough / power;
        return power * (digit < 1.5 ? 1 : digit < 3.5 ? 2 : digit < 7.5 ? 5 : 10);
    }

    /** The next step at or above a value, counted from 0. */
    static double roundUp(double value) {
        double step = step(value);
        return Math.ceil(value / step) * step;
    }

    /** Steps inside a range, 0 among them where it lies inside. */
    static double[] ticks(double from, double to) {
        double step = step(to - from);
        long first = (long) Math.ceil(from / step - 1e-9);
        long last = (long) Math.floor(to / step + 1e-9);
        return LongStream.rangeClosed(first, last).mapToDouble(i -> i * step).toArray();
    }

    static String label(double value) {
        String text = String.format(Locale.ROOT, "%.3f", value);
        return text.replaceFirst("0+$", "").replaceFirst("\\.$", "").replaceFirst("^-0$", "0");
    }
}
