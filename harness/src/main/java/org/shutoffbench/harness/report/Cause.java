package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.List;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.study.Judge;
import org.shutoffbench.harness.study.Quantity;
import org.shutoffbench.harness.study.StudySummary;

/** Why a strategy left a joint where it did, from the joint's own law and the place where it stopped. */
final class Cause {

    private static final double WORTH_MENTIONING_NM = 1;

    private Cause() {}

    static List<Span> of(StudySummary summary, Names names, TighteningRecord stop, JointCurves joint) {
        List<Span> spans = new ArrayList<>();
        spans.add(Span.name(names.strategy(stop.strategy())));
        spans.add(Span.of(" " + where(summary.judge(), stop, joint) + " " + ending(summary.judge(), stop)));
        return spans;
    }

    private static String where(Judge judge, TighteningRecord stop, JointCurves joint) {
        double free = stop.prevailingTorqueNm();
        String against = free > WORTH_MENTIONING_NM
                ? ", against " + Printed.fixed(free, 1) + " N\u00b7m of prevailing torque"
                : "";
        String blows = stop.blows() + (stop.blows() == 1 ? " blow" : " blows");
        if (stop.nutAngleDeg() < 0) {
            return "stopped after " + blows + ", " + before(-stop.nutAngleDeg()) + " before snug" + against + ".";
        }
        String past = "stopped after " + blows + ", " + Printed.fixed(stop.nutAngleDeg(), 0) + "\u00b0 past snug";
        return switch (stop.outcome()) {
            case HIGH, YIELDED, FRACTURED ->
                past + " on a joint that leaves the window at "
                        + Printed.fixed(joint.angleForTorqueDeg(torqueNm(judge, judge.highest(), joint)), 0)
                        + "\u00b0.";
            case LOW, UNSEATED ->
                past + " on a joint that enters the window at "
                        + Printed.fixed(joint.angleForTorqueDeg(torqueNm(judge, judge.lowest(), joint)), 0) + "\u00b0"
                        + against + ".";
            case IN_WINDOW -> past + against + ".";
        };
    }

    private static String before(double deg) {
        return deg < 36 ? Printed.fixed(deg, 0) + "\u00b0" : Printed.fixed(deg / 360, 2) + " turns";
    }

    private static double torqueNm(Judge judge, double value, JointCurves joint) {
        return judge.quantity() == Quantity.CLAMP_FORCE ? value * joint.kappaOnM() : value;
    }

    private static String ending(Judge judge, TighteningRecord stop) {
        double value = judge.quantity().of(stop);
        String verdict = switch (stop.verdict()) {
            case REACHED -> " and called the joint done.";
            case NOT_REACHED -> " and did not call it done.";
            case UNSURE -> " and said it was unsure.";
        };
        if (value <= 0) {
            return "It left no clamp force" + verdict;
        }
        return switch (stop.outcome()) {
            case FRACTURED -> "The bolt broke.";
            case YIELDED -> "It took the bolt past its yield limit" + verdict;
            case HIGH -> "It ended " + amount(judge, value - judge.highest()) + " above the window" + verdict;
            case LOW, UNSEATED -> "It ended " + amount(judge, judge.lowest() - value) + " below the window" + verdict;
            case IN_WINDOW ->
                "It ended in the window"
                        + (stop.verdict() == Verdict.REACHED ? ", its own farthest from the target." : verdict);
        };
    }

    private static String amount(Judge judge, double value) {
        return judge.quantity() == Quantity.CLAMP_FORCE
                ? Printed.fixed(value / 1000, 1) + " kN"
                : Printed.fixed(value, 0) + " N\u00b7m";
    }
}
