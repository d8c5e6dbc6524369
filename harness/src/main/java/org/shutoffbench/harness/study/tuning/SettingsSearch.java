package org.shutoffbench.harness.study.tuning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleValueChecker;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.apache.commons.math3.random.HaltonSequenceGenerator;
import org.shutoffbench.controller.Setting;

/**
 * Looks for the best settings within a fixed number of evaluations: first points spread evenly over the ranges (a Halton
 * sequence, for one setting equal steps), then a Nelder-Mead simplex from the best of them, and where that comes to rest
 * early, points close to the best for the rest. So every search spends its budget to the last evaluation. The loss has
 * steps, so that nothing with derivatives would do.
 */
final class SettingsSearch {

    /** Share of the budget that is spread out before the simplex starts. */
    private static final double SPREAD = 0.6;

    private static final double FIRST_EDGE = 0.05;
    private static final double LEAST_DIFFERENCE = 1e-9;

    /**
     * One evaluated candidate.
     *
     * @param settings values by name
     * @param score what it made of the tuning joints
     */
    record Candidate(Map<String, Double> settings, Score score) {}

    /** Evaluates a batch. */
    interface Evaluation {
        List<Score> of(List<Map<String, Double>> batch) throws InterruptedException;
    }

    private final List<Setting> settings;
    private final Map<String, Double> fixed;
    private final Evaluation evaluation;
    private final List<Candidate> log = new ArrayList<>();

    /**
     * @param settings to be varied
     * @param fixed values of other settings that differ from their defaults
     */
    SettingsSearch(List<Setting> settings, Map<String, Double> fixed, Evaluation evaluation) {
        this.settings = settings;
        this.fixed = fixed;
        this.evaluation = evaluation;
    }

    /** All candidates in the order in which they were tried. */
    List<Candidate> log() {
        return List.copyOf(log);
    }

    /** The candidate of least loss, the earliest where several have it. */
    Candidate leastLoss(int budget) throws InterruptedException {
        spread((int) Math.ceil(SPREAD * budget));
        if (!settings.isEmpty()) {
            simplex(budget - log.size());
            lookAround(budget - log.size());
        }
        return best();
    }

    private Candidate best() {
        return log.stream()
                .min(Comparator.comparingDouble(candidate -> candidate.score().loss()))
                .orElseThrow();
    }

    /**
     * The candidate with fewest silent misses among those that say REACHED on enough joints in the window; the one that says
     * so most often where none does.
     */
    Candidate fewestSilentMisses(int budget, double reachedShare) throws InterruptedException {
        spread(budget);
        List<Candidate> enough = log.stream()
                .filter(c ->
                        c.score().reachedInWindow() >= reachedShare * c.score().inWindow())
                .toList();
        Comparator<Candidate> reached = Comparator.comparingLong(c -> c.score().reachedInWindow());
        return enough.isEmpty()
                ? log.stream().max(reached).orElseThrow()
                : enough.stream()
                        .min(Comparator.comparingLong((Candidate c) -> c.score().silentMisses())
                                .thenComparing(reached.reversed()))
                        .orElseThrow();
    }

    /** The defaults, then points spread over the ranges. */
    private void spread(int points) throws InterruptedException {
        List<Map<String, Double>> batch = new ArrayList<>();
        batch.add(values(defaults()));
        if (settings.size() == 1) {
            int steps = points - 1;
            IntStream.range(0, steps).forEach(i -> batch.add(values(new double[] {i / (double) (steps - 1)})));
        } else if (!settings.isEmpty()) {
            HaltonSequenceGenerator halton = new HaltonSequenceGenerator(settings.size());
            halton.skipTo(1);
            IntStream.range(1, points).forEach(i -> batch.add(values(halton.nextVector())));
        }
        evaluate(batch);
    }

    private void simplex(int budget) {
        double[] best = unit(best().settings());
        double[] edges = new double[settings.size()];
        for (int i = 0; i < edges.length; i++) {
            edges[i] = best[i] + FIRST_EDGE <= 1 ? FIRST_EDGE : -FIRST_EDGE;
        }
        try {
            new SimplexOptimizer(new SimpleValueChecker(LEAST_DIFFERENCE, LEAST_DIFFERENCE))
                    .optimize(
                            new MaxEval(budget),
                            GoalType.MINIMIZE,
                            new InitialGuess(best),
                            new NelderMeadSimplex(edges),
                            new ObjectiveFunction(point -> loss(point)));
        } catch (TooManyEvaluationsException spent) {
            // the budget is meant to be spent; the log has the best
            assert log.size() > 0;
        }
    }

    /** Points spread evenly within an edge of the best, for what the simplex left of the budget. */
    private void lookAround(int points) throws InterruptedException {
        double[] best = unit(best().settings());
        HaltonSequenceGenerator halton = new HaltonSequenceGenerator(settings.size());
        halton.skipTo(1);
        List<Map<String, Double>> batch = new ArrayList<>();
        for (int p = 0; p < points; p++) {
            double[] point = halton.nextVector();
            for (int i = 0; i < point.length; i++) {
                point[i] = Math.max(0, Math.min(1, best[i] + FIRST_EDGE * (2 * point[i] - 1)));
            }
            batch.add(values(point));
        }
        if (!batch.isEmpty()) {
            evaluate(batch);
        }
    }

    private double loss(double[] point) {
        for (double coordinate : point) {
            if (coordinate < 0 || coordinate > 1) {
                return Double.MAX_VALUE;
            }
        }
        try {
            return evaluate(List.of(values(point))).get(0).loss();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted", stopped);
        }
    }

    private List<Score> evaluate(List<Map<String, Double>> batch) throws InterruptedException {
        List<Score> scores = evaluation.of(batch);
        for (int i = 0; i < batch.size(); i++) {
            log.add(new Candidate(batch.get(i), scores.get(i)));
        }
        return scores;
    }

    private double[] defaults() {
        Map<String, Double> byDefault = new HashMap<>();
        settings.forEach(setting -> byDefault.put(setting.name(), setting.byDefault()));
        return unit(byDefault);
    }

    private double[] unit(Map<String, Double> values) {
        return settings.stream()
                .mapToDouble(
                        s -> (values.getOrDefault(s.name(), s.byDefault()) - s.minimum()) / (s.maximum() - s.minimum()))
                .toArray();
    }

    private Map<String, Double> values(double[] unit) {
        Map<String, Double> values = new HashMap<>(fixed);
        for (int i = 0; i < unit.length; i++) {
            Setting s = settings.get(i);
            double value = s.minimum() + unit[i] * (s.maximum() - s.minimum());
            values.put(s.name(), Math.max(s.minimum(), Math.min(s.maximum(), rounded(value, s))));
        }
        return values;
    }

    /**
     * What a person would type, and what the table holds: four significant digits of the range; a whole number where a pure
     * number ranges over a hundred or more, which is a count.
     */
    private static double rounded(double value, Setting setting) {
        if (setting.unit().equals("1") && setting.maximum() - setting.minimum() >= 100) {
            return Math.rint(value);
        }
        double stepsPerUnit = Math.pow(10, 3 - Math.floor(Math.log10(setting.maximum() - setting.minimum())));
        return stepsPerUnit >= 1
                ? Math.rint(value * stepsPerUnit) / stepsPerUnit
                : Math.rint(value * stepsPerUnit) * Math.rint(1 / stepsPerUnit);
    }
}
