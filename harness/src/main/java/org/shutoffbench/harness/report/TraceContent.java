package org.shutoffbench.harness.report;

import java.util.List;
import org.shutoffbench.controller.Target;
import org.shutoffbench.harness.run.Trace;
import org.shutoffbench.joint.JointLaw;

/**
 * One tightening as {@link TracePicture} draws it.
 *
 * @param title what was tightened by what
 * @param ending how it ended, in words
 * @param law of the joint
 * @param target what the tool was set to
 * @param stopTimeS time of the stop command, s; the end of the run where none came
 * @param points the truth over time, ascending
 * @param blows every blow
 * @param estimates the strategy's own view over time; empty without a strategy
 */
public record TraceContent(
        String title,
        String ending,
        JointLaw law,
        Target target,
        double stopTimeS,
        List<Point> points,
        List<Trace.Blow> blows,
        List<Estimate> estimates) {

    public TraceContent {
        points = List.copyOf(points);
        blows = List.copyOf(blows);
        estimates = List.copyOf(estimates);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a trace needs two points");
        }
    }

    /**
     * The truth at an instant.
     *
     * @param pastSnugDeg nut angle past snug, deg
     * @param clampForceN N
     */
    public record Point(double timeS, double pastSnugDeg, double clampForceN) {}

    /**
     * One of the strategy's estimates.
     *
     * @param name with its unit in brackets, as the strategy declares it
     * @param values ascending in time; where the strategy had none yet there is no value
     */
    public record Estimate(String name, List<Value> values) {

        public Estimate {
            values = List.copyOf(values);
        }

        /** The unit in the brackets; empty where there is none. */
        public String unit() {
            int open = name.lastIndexOf('[');
            return open >= 0 && name.endsWith("]") ? name.substring(open + 1, name.length() - 1) : "";
        }
    }

    /** An estimate at an instant. */
    public record Value(double timeS, double value) {}
}
