package org.shutoffbench.harness.lesson;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shutoffbench.harness.record.TextFile;

/** The lesson as one file that runs from disk, on joints computed beforehand by the same plant. */
public final class StaticLesson {

    private static final List<Double> PREVAILING_NM = List.of(0.0, 2.0, 4.0, 6.0, 8.0, 10.0, 12.0, 14.0);
    private static final List<Double> STIFFNESS_KN_PER_MM = List.of(70.0, 180.0, 300.0, 400.0);
    private static final List<Double> FRICTION = List.of(0.10, 0.13, 0.16);
    private static final List<Double> BATTERY = List.of(0.8, 0.9, 1.0);
    private static final int BLOWS = 40;
    private static final int LEAST_COUNT = 3;
    private static final int MOST_COUNT = 20;

    private StaticLesson() {}

    /**
     * All that was computed.
     *
     * @param positions of every slider, by name
     * @param joints by the places of the four positions, such as "5/2/1/2"
     * @param counts the counts for which thirty joints and races were run, least first
     * @param repeats for each count
     * @param races for each family, for each count
     */
    record Tables(
            Map<String, List<Double>> positions,
            Map<String, Joint> joints,
            List<Integer> counts,
            List<List<LessonBench.Repeat>> repeats,
            List<List<LessonBench.Progress>> races) {}

    /**
     * One joint, struck without a count.
     *
     * @param joint curves and windows
     * @param frames a row per blow, fields of {@link BlowFrame} in order
     * @param stopped a row per count: {@code pastSnugDeg, clampForceKn, clampingNm, resistNm, insertJ, clampingJ} after a
     *     tool that stops there has run on
     */
    record Joint(Message.Joint joint, List<List<Double>> frames, List<List<Double>> stopped) {}

    /**
     * Writes the page, whole or not at all.
     *
     * @throws IOException if the file cannot be written
     */
    public static void write(Path file) throws IOException {
        LessonBench bench = LessonBench.ofTheLesson();
        TextFile.write(file, LessonPage.fromDisk(bench, tables(bench)));
    }

    static Tables tables(LessonBench bench) {
        Map<String, List<Double>> positions = new LinkedHashMap<>();
        positions.put("prevailingNm", PREVAILING_NM);
        positions.put("stiffnessKnPerMm", STIFFNESS_KN_PER_MM);
        positions.put("friction", FRICTION);
        positions.put("battery", BATTERY);
        Map<String, Joint> joints = new LinkedHashMap<>();
        for (int p = 0; p < PREVAILING_NM.size(); p++) {
            for (int s = 0; s < STIFFNESS_KN_PER_MM.size(); s++) {
                for (int f = 0; f < FRICTION.size(); f++) {
                    for (int b = 0; b < BATTERY.size(); b++) {
                        joints.put(
                                p + "/" + s + "/" + f + "/" + b,
                                joint(new Knobs(
                                        PREVAILING_NM.get(p),
                                        STIFFNESS_KN_PER_MM.get(s),
                                        FRICTION.get(f),
                                        BATTERY.get(b))));
                    }
                }
            }
        }
        List<Integer> counts = new ArrayList<>();
        List<List<LessonBench.Repeat>> repeats = new ArrayList<>();
        List<List<LessonBench.Progress>> races = new ArrayList<>();
        for (int count = LEAST_COUNT; count <= MOST_COUNT; count++) {
            counts.add(count);
            repeats.add(bench.repeat(count).stream()
                    .map(r -> new LessonBench.Repeat(r.joint(), digits(r.clampForceKn()), r.inWindow()))
                    .toList());
        }
        for (int family = 0; family < bench.families().size(); family++) {
            races.add(bench.finals(family, counts));
        }
        return new Tables(positions, joints, counts, repeats, races);
    }

    private static Joint joint(Knobs knobs) {
        List<List<Double>> frames = new ArrayList<>();
        for (BlowFrame f : new LiveTightening(knobs, 0).strikeTo(BLOWS).frames()) {
            frames.add(row(
                    f.blow(),
                    f.timeS(),
                    f.pastSnugDeg(),
                    f.clampForceKn(),
                    f.clampingNm(),
                    f.resistNm(),
                    f.energyJ(),
                    f.insertJ(),
                    f.clampingJ(),
                    f.spinUp() ? 1 : 0));
        }
        List<List<Double>> stopped = new ArrayList<>();
        for (int count = 1; count <= BLOWS; count++) {
            BlowFrame f = new LiveTightening(knobs, count).strikeTo(count).last();
            stopped.add(
                    row(f.pastSnugDeg(), f.clampForceKn(), f.clampingNm(), f.resistNm(), f.insertJ(), f.clampingJ()));
        }
        return new Joint(thinned(Message.Joint.of(knobs, 0)), frames, stopped);
    }

    private static Message.Joint thinned(Message.Joint joint) {
        return new Message.Joint(
                joint.knobs(),
                joint.count(),
                joint.startDeg(),
                everyThird(joint.clamping()),
                everyThird(joint.total()),
                joint.windowNm(),
                joint.windowKn());
    }

    private static List<List<Double>> everyThird(List<List<Double>> points) {
        List<List<Double>> kept = new ArrayList<>();
        for (int i = 0; i < points.size(); i += 3) {
            kept.add(row(points.get(i).get(0), points.get(i).get(1)));
        }
        return kept;
    }

    private static List<Double> row(double... values) {
        List<Double> row = new ArrayList<>();
        for (double value : values) {
            row.add(digits(value));
        }
        return row;
    }

    /** As many digits as the page can show. */
    private static double digits(double value) {
        return Math.rint(value * 100) / 100;
    }
}
