package org.shutoffbench.harness.study.training;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.strategy.LearnedRegression;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.ClosedLoop;
import org.shutoffbench.harness.run.Contestant;
import org.shutoffbench.harness.run.OrderedWork;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.study.TuningNote;
import org.shutoffbench.harness.study.TuningNote.Tally;

/**
 * Trains the learned strategy on a scenario's families. Three populations that share no draw: training joints, validation joints (they
 * choose the penalty and measure what was learned), and the joints of the scenario's own seed, which are judged later and never
 * seen here.
 */
public final class Training {

    /** Offsets of the seeds of training and validation from the scenario's. */
    public static final long TRAINING_SEED_OFFSET = 3_000_003;

    public static final long VALIDATION_SEED_OFFSET = 4_000_003;

    private static final double[] PENALTIES = {1e-6, 1e-5, 1e-4, 1e-3, 1e-2, 1e-1};

    /** Blows are learned from between these shares of the target: where stopping is decided. */
    private static final double LEAST_BALANCE = 0.4;

    private static final double MOST_TORQUE = 1.35;

    private final Scenario scenario;
    private final StrategyCatalogue catalogue;
    private final int jointsPerFamily;
    private final int threads;
    private final StrategyFactory strategy = new LearnedRegression.Factory();
    private final Provision provision;

    /**
     * @param jointsPerFamily of the training population; the validation population has as many
     * @param threads at least 1; changes no result
     * @throws IllegalArgumentException where the tool lacks a channel that the strategy requires
     */
    public Training(Scenario scenario, StrategyCatalogue catalogue, int jointsPerFamily, int threads) {
        this.scenario = scenario;
        this.catalogue = catalogue;
        this.jointsPerFamily = jointsPerFamily;
        this.threads = threads;
        this.provision = Bench.provision(scenario, Set.of());
        provision.demand(strategy.descriptor());
    }

    /** Trains. */
    public TrainedModel train() throws InterruptedException {
        List<Blow> training = blows(TRAINING_SEED_OFFSET);
        List<Blow> validation = blows(VALIDATION_SEED_OFFSET);
        RidgeFit best = RidgeFit.of(training, PENALTIES[0]);
        double penalty = PENALTIES[0];
        for (double each : PENALTIES) {
            RidgeFit fit = RidgeFit.of(training, each);
            if (fit.errorNm(validation) < best.errorNm(validation)) {
                best = fit;
                penalty = each;
            }
        }
        Map<String, Double> settings = best.settings();
        Map<String, String> made = new LinkedHashMap<>();
        made.put("by", "train");
        made.put("scenario", scenario.name());
        made.put("training seed", Long.toString(scenario.seed() + TRAINING_SEED_OFFSET));
        made.put("validation seed", Long.toString(scenario.seed() + VALIDATION_SEED_OFFSET));
        made.put("joints", jointsPerFamily + " per family to train on, as many to validate");
        made.put("blows", training.size() + " to train on, " + validation.size() + " to validate");
        made.put("penalty", Double.toString(penalty));
        made.put("error in training", newtonMetres(best.errorNm(training)));
        made.put("error in validation", newtonMetres(best.errorNm(validation)));
        made.put("explained in validation", String.format(Locale.ROOT, "%.4f", best.explained(validation)));
        made.put(TuningNote.IN_TRAINING, closedLoop(TRAINING_SEED_OFFSET, settings));
        made.put(TuningNote.IN_VALIDATION, closedLoop(VALIDATION_SEED_OFFSET, settings));
        return new TrainedModel(made, settings);
    }

    /** Blows near the target of the joints of a seed. */
    List<Blow> blows(long seedOffset) throws InterruptedException {
        double targetNm = bench(seedOffset).target(0).clampingTorqueNm();
        List<Blow> blows = new TrainingJoints(bench(seedOffset), strategy, provision, jointsPerFamily).blows(threads);
        List<Blow> near = blows.stream()
                .filter(b -> b.balanceNm() >= LEAST_BALANCE * targetNm && b.middleNm() <= MOST_TORQUE * targetNm)
                .toList();
        if (near.isEmpty()) {
            throw new IllegalArgumentException("no blow of these joints comes near the target");
        }
        return near;
    }

    private String closedLoop(long seedOffset, Map<String, Double> settings) throws InterruptedException {
        Bench own = bench(seedOffset).with(List.of(new Contestant(strategy, settings, provision)));
        Tally[] sum = {Tally.NONE};
        OrderedWork.run(
                0,
                (long) own.scenario().families().size() * jointsPerFamily,
                threads,
                () -> {
                    ClosedLoop loop = own.newLoop();
                    return joint -> Tally.of(
                            own.tighten(loop, (int) (joint / jointsPerFamily), (int) (joint % jointsPerFamily))[0]);
                },
                (Tally one) -> sum[0] = sum[0].plus(one));
        return sum[0].words();
    }

    private Bench bench(long seedOffset) {
        return Bench.of(scenario, scenario.seed() + seedOffset, catalogue);
    }

    private static String newtonMetres(double value) {
        return String.format(Locale.ROOT, "%.3f N*m root mean square", value);
    }
}
