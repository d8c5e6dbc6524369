package org.shutoffbench.plant;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.AllowedSolution;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.apache.commons.math3.ode.ContinuousOutputModel;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;
import org.jspecify.annotations.Nullable;

/** The integrator's dense output over one frozen mode, ended at the first event found on it. */
final class DenseStep {

    /** Looks per integrator step: margins are smooth and change sign at most a few times in one. */
    private static final int LOOKS = 8;

    private static final double ROOT_ACCURACY_S = 1e-15;
    private static final int ROOT_EVALUATIONS = 200;

    private final ContinuousOutputModel output;
    private final double @Nullable [] rest;
    private final double endS;
    private final @Nullable ReferenceEvent event;

    private DenseStep(
            ContinuousOutputModel output, double @Nullable [] rest, double endS, @Nullable ReferenceEvent event) {
        this.output = output;
        this.rest = rest;
        this.endS = endS;
        this.event = event;
    }

    /** Nothing moves. */
    static DenseStep still(double timeS, double[] y) {
        return new DenseStep(new ContinuousOutputModel(), y, timeS, null);
    }

    static DenseStep integrate(
            DormandPrince853Integrator integrator, ReferenceMode mode, double fromS, double[] y, double toS) {
        ContinuousOutputModel output = new ContinuousOutputModel();
        StepTimes times = new StepTimes();
        integrator.clearStepHandlers();
        integrator.addStepHandler(output);
        integrator.addStepHandler(times);
        integrator.integrate(mode, fromS, y, toS, new double[y.length]);
        DenseStep whole = new DenseStep(output, null, toS, null);
        return whole.cutAtFirstEvent(mode, times.ends, times.count, fromS);
    }

    /** Remembers where the integrator's own steps ended. */
    private static final class StepTimes implements StepHandler {
        private double[] ends = new double[64];
        private int count;

        @Override
        public void init(double t0, double[] y0, double t) {
            count = 0;
        }

        @Override
        public void handleStep(StepInterpolator interpolator, boolean isLast) {
            if (count == ends.length) {
                ends = java.util.Arrays.copyOf(ends, 2 * count);
            }
            ends[count++] = interpolator.getCurrentTime();
        }
    }

    private DenseStep cutAtFirstEvent(ReferenceMode mode, double[] stepTimes, int steps, double fromS) {
        double left = fromS;
        for (int i = 0; i < steps; i++) {
            DenseStep cut = cutWithin(mode, left, stepTimes[i], i == 0);
            if (cut != null) {
                return cut;
            }
            left = stepTimes[i];
        }
        return this;
    }

    private @Nullable DenseStep cutWithin(ReferenceMode mode, double fromS, double toS, boolean isFirst) {
        double[] times = new double[LOOKS + 1];
        double[][] looks = new double[LOOKS + 1][];
        look(times, looks, fromS, toS, LOOKS / 2);
        if (isFarFromEveryEvent(mode, looks)) {
            return null;
        }
        look(times, looks, fromS, toS, 1);
        double earliest = Double.POSITIVE_INFINITY;
        ReferenceEvent first = null;
        for (ReferenceEvent candidate : ReferenceEvent.values()) {
            if (candidate.margin(mode, looks[0]) == Double.POSITIVE_INFINITY) {
                continue;
            }
            double t = firstFall(candidate, mode, times, looks, isFirst);
            if (t < earliest) {
                earliest = t;
                first = candidate;
            }
        }
        return first == null ? null : new DenseStep(output, null, earliest, first);
    }

    /** Fills every stride-th look that is still missing. */
    private void look(double[] times, double[][] looks, double fromS, double toS, int stride) {
        for (int i = 0; i <= LOOKS; i += stride) {
            if (looks[i] == null) {
                times[i] = i == LOOKS ? toS : fromS + i * (toS - fromS) / LOOKS;
                looks[i] = at(times[i]).clone();
            }
        }
    }

    /** At start, middle and end every margin is further from zero than it moves between them. */
    private static boolean isFarFromEveryEvent(ReferenceMode mode, double[][] looks) {
        for (ReferenceEvent candidate : ReferenceEvent.values()) {
            double start = candidate.margin(mode, looks[0]);
            if (start == Double.POSITIVE_INFINITY) {
                continue;
            }
            double middle = candidate.margin(mode, looks[LOOKS / 2]);
            double end = candidate.margin(mode, looks[LOOKS]);
            double lowest = Math.min(start, Math.min(middle, end));
            double highest = Math.max(start, Math.max(middle, end));
            if (!(lowest > highest - lowest)) {
                return false;
            }
        }
        return true;
    }

    /** First time at which the margin falls below zero; infinite if it does not. */
    private double firstFall(
            ReferenceEvent candidate, ReferenceMode mode, double[] t, double[][] looks, boolean isFirst) {
        double[] g = new double[LOOKS + 1];
        for (int i = 0; i <= LOOKS; i++) {
            g[i] = candidate.margin(mode, looks[i]);
            if (i > 0 && g[i] < 0) {
                return g[i - 1] > 0 ? root(x -> candidate.margin(mode, at(x)), t[i - 1], t[i]) : t[i - 1];
            }
            if (i > 1 && g[i - 2] > 0 && g[i - 1] <= g[i - 2] && g[i - 1] <= g[i] && mayDip(g, i)) {
                UnivariateFunction margin = x -> candidate.margin(mode, at(x));
                double dip = dip(margin, t[i - 2], t[i]);
                if (margin.value(dip) < 0) {
                    return root(margin, t[i - 2], dip);
                }
            }
        }
        return isFirst && g[0] < 0 && g[1] < 0 ? t[0] : Double.POSITIVE_INFINITY;
    }

    /** The dip between three looks may reach zero: generously, twice what a parabola through them would. */
    private static boolean mayDip(double[] g, int i) {
        double highest = Math.max(g[i - 2], g[i]);
        return g[i - 1] <= highest - g[i - 1];
    }

    private static double root(UnivariateFunction margin, double left, double right) {
        if (!(right > left)) {
            return left;
        }
        return new BracketingNthOrderBrentSolver(1e-15, ROOT_ACCURACY_S, 5)
                .solve(ROOT_EVALUATIONS, margin, left, right, AllowedSolution.ANY_SIDE);
    }

    private static double dip(UnivariateFunction margin, double left, double right) {
        UnivariatePointValuePair lowest = new BrentOptimizer(1e-10, ROOT_ACCURACY_S)
                .optimize(
                        new UnivariateObjectiveFunction(margin),
                        GoalType.MINIMIZE,
                        new SearchInterval(left, right),
                        new MaxEval(ROOT_EVALUATIONS));
        return lowest.getPoint();
    }

    double endS() {
        return endS;
    }

    @Nullable
    ReferenceEvent event() {
        return event;
    }

    /** The unknowns at a time; the array is reused by the next call. */
    double[] at(double timeS) {
        if (rest != null) {
            return rest;
        }
        output.setInterpolatedTime(timeS);
        return output.getInterpolatedState();
    }

    DenseStep withoutEvent(double toS) {
        return new DenseStep(output, rest, toS, null);
    }

    DenseStep copy() {
        if (rest != null) {
            return new DenseStep(output, rest.clone(), endS, event);
        }
        ContinuousOutputModel copy = new ContinuousOutputModel();
        copy.append(output);
        return new DenseStep(copy, null, endS, event);
    }
}
