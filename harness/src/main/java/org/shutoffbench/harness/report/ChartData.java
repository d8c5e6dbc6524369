package org.shutoffbench.harness.report;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the page's script draws, as the JSON it reads. Field names are part of {@code charts.js}. */
record ChartData(
        List<StrategyLook> strategies,
        List<QuantityPanels> quantities,
        List<MissPicture> misses,
        List<JointPicture> worst,
        List<LevelPicture> levels) {

    /**
     * A strategy in charts.
     *
     * @param label where both settings tables are meant
     * @param name where the page shows one settings table at a time
     * @param settings titles of the settings tables with which it is shown; null where there is nothing to switch
     */
    record StrategyLook(String label, String name, @Nullable List<String> settings, Mark look) {}

    /**
     * One quantity over all families.
     *
     * @param low lower edge of the window; null where the quantity is not the judged one
     * @param max end of the common axis
     */
    record QuantityPanels(
            String title,
            String unit,
            @Nullable Double target,
            @Nullable Double low,
            @Nullable Double high,
            double max,
            List<Double> ticks,
            List<FamilyCurves> families) {}

    /** @param from percent at the left end of the logarithmic axis, a power of ten */
    record MissPicture(double from, List<MissRow> rows) {}

    /** Joints outside the window and silent misses: percent, low and high. */
    record MissRow(int strategy, List<Double> missed, List<Double> silent) {}

    record FamilyCurves(String name, List<Curve> curves) {}

    /**
     * A strategy on a family.
     *
     * @param points value and percent of joints at or below it
     * @param tolerance ends of the tolerance interval, null where open
     */
    record Curve(
            int strategy,
            List<List<Double>> points,
            @Nullable List<Double> tolerance,
            double median) {}

    /**
     * A joint as torque over nut angle.
     *
     * @param approach range of the scale before the break, deg past snug; null where the axis is whole
     * @param near range round snug, deg past snug
     * @param free level and place of the words on prevailing torque, null where there is none
     */
    record JointPicture(
            String unit,
            double max,
            List<Double> torqueTicks,
            List<Double> window,
            @Nullable List<Double> approach,
            List<Double> near,
            List<List<Double>> ticks,
            List<List<Double>> clamping,
            List<List<Double>> total,
            boolean hatched,
            @Nullable FreeTorqueWords free,
            List<Stop> stops) {}

    record FreeTorqueWords(double deg, double torque, String words) {}

    /** @param subject whether the picture is about this strategy */
    record Stop(int strategy, double deg, double torque, boolean subject) {}

    /** Silent misses over classes of a drawn parameter. */
    record LevelPicture(String name, String unit, List<Double> range, List<Double> ticks, List<LevelCurve> curves) {}

    /** @param points middle of the class, rate, low and high in percent */
    record LevelCurve(int strategy, List<List<Double>> points) {}

    /** Numbers in a row, to the digits that a picture can show. */
    static List<Double> numbers(double... values) {
        return Arrays.stream(values).map(v -> Math.rint(v * 1e4) / 1e4).boxed().toList();
    }
}
