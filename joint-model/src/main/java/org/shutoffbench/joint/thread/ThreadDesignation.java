package org.shutoffbench.joint.thread;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads thread designations: {@code M12} (coarse), {@code M12x1.25}, {@code 1/2-13}, {@code 3/4-16 UNF}.
 *
 * <p>Sizes are M5 to M36 and 1/4 to 1 in. Anything else is given as plain numbers to {@link ScrewThread}.
 */
public final class ThreadDesignation {

    private static final Pattern METRIC =
            Pattern.compile("[Mm](\\d+(?:\\.\\d+)?)(?:\\s*[xX\u00d7]\\s*(\\d+(?:\\.\\d+)?))?");
    private static final Pattern UNIFIED = Pattern.compile("(\\d+(?:/\\d+)?)\\s*-\\s*(\\d+)(?:\\s*(UNC|UNF|UNEF|UN))?");

    /** Pitches of the metric fine series up to M36, mm. Source key {@code ISO-261}, from memory. */
    private static final double[] FINE_PITCHES_MM = {0.5, 0.75, 1, 1.25, 1.5, 2, 3};

    private ThreadDesignation() {}

    /**
     * The thread that a designation names.
     *
     * @throws IllegalArgumentException with what is allowed, when the text is no known designation
     */
    public static ScrewThread parse(String text) {
        String trimmed = text.strip();
        Matcher metric = METRIC.matcher(trimmed);
        if (metric.matches()) {
            return metric(trimmed, metric.group(1), Optional.ofNullable(metric.group(2)));
        }
        Matcher unified = UNIFIED.matcher(trimmed);
        if (unified.matches()) {
            return unified(trimmed, unified.group(1), unified.group(2));
        }
        throw new IllegalArgumentException(
                "\"" + text + "\" is no thread designation; examples: M12, M12x1.25, 1/2-13");
    }

    private static ScrewThread metric(String text, String diameter, Optional<String> pitch) {
        double diameterMm = Double.parseDouble(diameter);
        MetricSize size = Arrays.stream(MetricSize.values())
                .filter(s -> Math.abs(s.diameterM() * 1e3 - diameterMm) < 1e-9)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(text + " is not among the metric sizes "
                        + names(MetricSize.values()) + "; give d and P as plain numbers instead"));
        if (pitch.isEmpty()) {
            return size.coarse();
        }
        double pitchMm = Double.parseDouble(pitch.get());
        double coarseMm = size.coarsePitchM() * 1e3;
        if (Math.abs(pitchMm - coarseMm) < 1e-9) {
            return size.coarse();
        }
        boolean fine = pitchMm < coarseMm && Arrays.stream(FINE_PITCHES_MM).anyMatch(p -> p == pitchMm);
        if (!fine) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s has no standard pitch; %s is coarse at %s mm, fine pitches below it are of %s mm; "
                            + "give d and P as plain numbers instead",
                    text,
                    size,
                    coarseMm,
                    Arrays.toString(FINE_PITCHES_MM)));
        }
        return ScrewThread.metric(size.diameterM(), pitchMm / 1e3);
    }

    private static ScrewThread unified(String text, String size, String threadsPerInch) {
        UnifiedSize found = Arrays.stream(UnifiedSize.values())
                .filter(s -> s.title().equals(size))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(text + " is not among the unified sizes "
                        + Arrays.stream(UnifiedSize.values())
                                .map(UnifiedSize::title)
                                .collect(Collectors.joining(", "))
                        + " in; give d and P as plain numbers instead"));
        int count = Integer.parseInt(threadsPerInch);
        boolean oneInchSpecial = found == UnifiedSize.ONE && count == 14;
        if (count != found.coarsePerInch() && count != found.finePerInch() && !oneInchSpecial) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s has no standard pitch; %s in is coarse at %d and fine at %d threads per inch",
                    text,
                    found.title(),
                    found.coarsePerInch(),
                    found.finePerInch()));
        }
        return found.withThreadsPerInch(count);
    }

    /** Hexagon dimensions of a thread's size, where it is a standard size. */
    public static Optional<HexDimensions> hexagonOf(ScrewThread thread) {
        return metricSizeOf(thread)
                .map(MetricSize::hexagon)
                .or(() -> unifiedSizeOf(thread).map(UnifiedSize::hexagon));
    }

    /** The metric size of a thread, coarse or fine, where it is one. */
    public static Optional<MetricSize> metricSizeOf(ScrewThread thread) {
        return Arrays.stream(MetricSize.values())
                .filter(s -> thread.form() == ThreadForm.METRIC && same(s.diameterM(), thread.majorDiameterM()))
                .findFirst();
    }

    /** The unified size of a thread, coarse or fine, where it is one. */
    public static Optional<UnifiedSize> unifiedSizeOf(ScrewThread thread) {
        return Arrays.stream(UnifiedSize.values())
                .filter(s -> thread.form() == ThreadForm.UNIFIED && same(s.diameterM(), thread.majorDiameterM()))
                .findFirst();
    }

    private static boolean same(double aM, double bM) {
        return Math.abs(aM - bM) < 1e-6 * bM;
    }

    private static String names(Enum<?>[] values) {
        return Arrays.stream(values).map(Enum::name).collect(Collectors.joining(", "));
    }
}
