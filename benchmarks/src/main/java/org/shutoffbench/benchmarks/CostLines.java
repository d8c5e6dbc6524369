package org.shutoffbench.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.shutoffbench.plant.FastPlant;
import org.shutoffbench.plant.Run;

/**
 * What a tightening of reference joint A costs against its blows, and one second of it against the rate at which three
 * channels are looked up: as a table on the console and as a picture.
 */
public final class CostLines {

    private static final int[] BLOWS = {5, 10, 20, 30, 40, 60, 80};
    private static final int[] RATES_KHZ = {0, 2, 5, 10, 20, 30, 40};
    private static final double TIME_LIMIT_S = 10;
    private static final double SECOND = 1;

    private CostLines() {}

    /**
     * Measures.
     *
     * @param arguments file of the picture
     */
    public static void main(String[] arguments) throws IOException {
        CpuTime time = new CpuTime();
        FastPlant plant = new FastPlant();
        for (int blows : BLOWS) {
            time.add(() -> new Run(plant)
                    .start(ReferenceJoint.A.law(), ReferenceJoint.A.tool(), 1)
                    .brakedAtBlow(blows, TIME_LIMIT_S));
        }
        for (int rate : RATES_KHZ) {
            time.add(() -> lookUps(plant, 1000 * rate));
        }
        double[] costS = time.measure();
        Line blows = Line.through("blows", BLOWS, java.util.Arrays.copyOf(costS, BLOWS.length));
        Line rates = Line.through(
                "samples per ms", RATES_KHZ, java.util.Arrays.copyOfRange(costS, BLOWS.length, costS.length));
        System.out.print(blows.table() + "\n" + rates.table());
        Files.writeString(Path.of(arguments[0]), picture(blows, rates));
    }

    private static double lookUps(FastPlant plant, int rateHz) {
        plant.start(ReferenceJoint.A.law(), ReferenceJoint.A.tool(), 1);
        double end = plant.plan();
        double sum = 0;
        for (int tick = 0; tick < rateHz * SECOND; tick++) {
            double timeS = (double) tick / rateHz;
            while (end < timeS) {
                plant.commit();
                end = plant.plan();
            }
            sum += plant.carrierSpeedRadPerS(timeS) + plant.anvilAngleRad(timeS) + plant.motorTorqueNm(timeS);
        }
        while (end < SECOND) {
            plant.commit();
            end = plant.plan();
        }
        return sum;
    }

    /** Measured costs in us and the straight line of least squares through them. */
    private static final class Line {

        private final String unit;
        private final int[] at;
        private final double[] costUs;
        private final double offsetUs;
        private final double slopeUs;

        private Line(String unit, int[] at, double[] costUs, double offsetUs, double slopeUs) {
            this.unit = unit;
            this.at = at;
            this.costUs = costUs;
            this.offsetUs = offsetUs;
            this.slopeUs = slopeUs;
        }

        static Line through(String unit, int[] at, double[] costS) {
            double meanAt = 0;
            double meanCost = 0;
            double[] costUs = new double[at.length];
            for (int i = 0; i < at.length; i++) {
                costUs[i] = 1e6 * costS[i];
                meanAt += (double) at[i] / at.length;
                meanCost += costUs[i] / at.length;
            }
            double cross = 0;
            double square = 0;
            for (int i = 0; i < at.length; i++) {
                cross += (at[i] - meanAt) * (costUs[i] - meanCost);
                square += (at[i] - meanAt) * (at[i] - meanAt);
            }
            double slope = cross / square;
            return new Line(unit, at, costUs, meanCost - slope * meanAt, slope);
        }

        private double onLine(int i) {
            return offsetUs + slopeUs * at[i];
        }

        String table() {
            StringBuilder text = new StringBuilder(String.format(
                    Locale.ROOT,
                    "| %s | cost, us | line %.0f + %.2f x, us |%n|---|---|---|%n",
                    unit,
                    offsetUs,
                    slopeUs));
            for (int i = 0; i < at.length; i++) {
                text.append(String.format(Locale.ROOT, "| %d | %.0f | %.0f |%n", at[i], costUs[i], onLine(i)));
            }
            return text.toString();
        }

        /** A panel of 300 by 220 with its left edge at x. */
        String panel(int x, String title) {
            int last = at.length - 1;
            double highest = Math.max(costUs[last], onLine(last));
            StringBuilder svg = new StringBuilder();
            svg.append(String.format(
                    Locale.ROOT,
                    "<text x='%d' y='24'>%s</text>%n<path d='M%d 40V240H%d' fill='none' stroke='#444'/>%n",
                    x,
                    title,
                    x,
                    x + 300));
            svg.append(String.format(
                    Locale.ROOT,
                    "<path d='M%d %.1fL%d %.1f' stroke='#0072B2' stroke-dasharray='6 3'/>%n",
                    x,
                    240 - 190 * offsetUs / highest,
                    x + 290,
                    240 - 190 * onLine(last) / highest));
            for (int i = 0; i <= last; i++) {
                double right = x + 290.0 * at[i] / at[last];
                svg.append(String.format(
                        Locale.ROOT,
                        "<circle cx='%.1f' cy='%.1f' r='4' fill='#D55E00'/><text x='%.1f' y='258'"
                                + " class='s'>%d</text>%n",
                        right,
                        240 - 190 * costUs[i] / highest,
                        right,
                        at[i]));
            }
            svg.append(String.format(
                    Locale.ROOT,
                    "<text x='%d' y='278'>%s</text><text x='%d' y='%.1f'>%.0f us</text>%n",
                    x,
                    unit,
                    x + 6,
                    54.0,
                    highest));
            return svg.toString();
        }
    }

    private static String picture(Line blows, Line rates) {
        return "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 720 290' role='img'>\n"
                + "<title>Cost of a tightening against blows and against the sampling rate</title>\n"
                + "<style>text{font:13px sans-serif;fill:#222}.s{font-size:11px;text-anchor:middle}</style>\n"
                + "<rect width='720' height='290' fill='white'/>\n"
                + blows.panel(40, "CPU time, braked at a blow, joint A")
                + rates.panel(390, "CPU time, 1 s of joint A, three look-ups")
                + "</svg>\n";
    }
}
