package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.report.ChartData.FreeTorqueWords;
import org.shutoffbench.harness.report.ChartData.JointPicture;
import org.shutoffbench.harness.report.ChartData.Stop;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.study.Judge;
import org.shutoffbench.harness.study.Quantity;

/** A joint as torque over nut angle on one scale, with the place where every strategy left it. */
final class WorstJointPicture {

    private static final double AXIS_OVER_TARGET = 1.42;
    private static final double BREAK_FROM = 1.2;
    private static final double BEFORE_SNUG = 0.3;
    private static final double FEW_NM = 1;

    private WorstJointPicture() {}

    /**
     * Lays the picture out.
     *
     * @param stops how every strategy left this joint
     * @param subject index of the strategy that the picture is about
     */
    static JointPicture of(JointCurves joint, Judge judge, List<TighteningRecord> stops, int subject) {
        double perUnit = judge.quantity() == Quantity.CLAMP_FORCE ? kappaOnM(joint, stops) : 1;
        Scale torque = Scale.reaching(AXIS_OVER_TARGET * judge.target() * perUnit, judge.target() * perUnit);
        double lastDeg = joint.angleForTorqueDeg(torque.max()) * 1.04;
        double firstDeg = stops.stream()
                .mapToDouble(TighteningRecord::nutAngleDeg)
                .map(deg -> 1.12 * deg)
                .reduce(-BEFORE_SNUG * lastDeg, Math::min);
        boolean hatched = joint.freeNm(0) > FEW_NM || joint.freeNm(lastDeg) > FEW_NM;
        if (hatched) {
            firstDeg = Math.min(firstDeg, Math.max(joint.startDeg(), -400));
        }
        firstDeg = Math.max(firstDeg, joint.startDeg());
        boolean broken = -firstDeg > BREAK_FROM * lastDeg;
        double nearFromDeg = broken ? -BEFORE_SNUG * lastDeg : firstDeg;
        List<List<Double>> ticks = new ArrayList<>();
        if (broken) {
            ticks.add(roundTicks(firstDeg, nearFromDeg - 0.15 * (nearFromDeg - firstDeg), 2));
        }
        ticks.add(roundTicks(nearFromDeg, lastDeg, 3));
        List<List<Double>> clamping = new ArrayList<>();
        List<List<Double>> total = new ArrayList<>();
        for (double deg : grid(joint, firstDeg, nearFromDeg, lastDeg)) {
            clamping.add(ChartData.numbers(deg, joint.clampingNm(deg)));
            total.add(ChartData.numbers(deg, joint.clampingNm(deg) + joint.freeNm(deg)));
        }
        return new JointPicture(
                "N\u00b7m",
                torque.max(),
                torque.ticks(),
                ChartData.numbers(judge.lowest() * perUnit, judge.highest() * perUnit),
                broken ? ChartData.numbers(firstDeg, nearFromDeg) : null,
                ChartData.numbers(nearFromDeg, lastDeg),
                ticks,
                clamping,
                total,
                hatched,
                hatched ? words(joint, firstDeg) : null,
                stops(stops, subject));
    }

    private static List<Double> grid(JointCurves joint, double firstDeg, double nearFromDeg, double lastDeg) {
        List<Double> grid = new ArrayList<>();
        if (firstDeg < nearFromDeg) {
            grid.addAll(joint.grid(firstDeg, nearFromDeg));
            grid.remove(grid.size() - 1);
        }
        grid.addAll(joint.grid(nearFromDeg, lastDeg));
        return grid;
    }

    private static double kappaOnM(JointCurves joint, List<TighteningRecord> stops) {
        return stops.stream()
                .filter(stop -> stop.clampForceN() > 0)
                .mapToDouble(stop -> stop.clampingTorqueNm() / stop.clampForceN())
                .findFirst()
                .orElseGet(joint::kappaOnM);
    }

    private static @Nullable FreeTorqueWords words(JointCurves joint, double firstDeg) {
        double level = joint.freeNm(0);
        return new FreeTorqueWords(firstDeg / 2, level, Printed.fixed(level, 1) + " N\u00b7m");
    }

    private static List<Stop> stops(List<TighteningRecord> records, int subject) {
        List<Stop> stops = new ArrayList<>();
        for (TighteningRecord r : records) {
            stops.add(new Stop(r.strategy(), r.nutAngleDeg(), r.clampingTorqueNm(), r.strategy() == subject));
        }
        return stops;
    }

    /** Round values inside a range, about as many as asked for. */
    private static List<Double> roundTicks(double from, double to, int about) {
        double[] steps = {5, 10, 15, 20, 30, 45, 60, 90, 180, 360, 720};
        double step = steps[steps.length - 1];
        for (double candidate : steps) {
            if ((to - from) / candidate <= about + 0.5) {
                step = candidate;
                break;
            }
        }
        List<Double> ticks = new ArrayList<>();
        for (double tick = step * Math.ceil(from / step); tick <= to; tick += step) {
            ticks.add(tick == 0 ? 0.0 : tick);
        }
        return ticks;
    }
}
