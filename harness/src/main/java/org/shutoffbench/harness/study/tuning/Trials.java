package org.shutoffbench.harness.study.tuning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.ClosedLoop;
import org.shutoffbench.harness.run.Contestant;
import org.shutoffbench.harness.run.OrderedWork;
import org.shutoffbench.harness.run.OutcomeRule;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.scenario.JudgedQuantity;

/**
 * Candidates of one strategy on the same joints. Candidates of one batch hear one plant run, so that a batch costs little
 * more than its dearest member.
 */
final class Trials {

    private static final int JOINTS_PER_CHUNK = 10;

    private final Bench bench;
    private final StrategyFactory factory;
    private final Provision provision;
    private final List<Integer> families;
    private final int jointsPerFamily;
    private final int threads;

    /**
     * @param bench on the tuning seed
     * @param families indices of the families to tune on
     */
    Trials(
            Bench bench,
            StrategyFactory factory,
            Provision provision,
            List<Integer> families,
            int jointsPerFamily,
            int threads) {
        this.bench = bench;
        this.factory = factory;
        this.provision = provision;
        this.families = List.copyOf(families);
        this.jointsPerFamily = jointsPerFamily;
        this.threads = threads;
    }

    /** The scores of a batch of settings, in order; the same for any number of threads. */
    List<Score> run(List<Map<String, Double>> batch) throws InterruptedException {
        List<Contestant> contestants = batch.stream()
                .map(settings -> new Contestant(factory, settings, provision))
                .toList();
        Bench own = bench.with(contestants);
        Score[] sums = new Score[batch.size()];
        Arrays.fill(sums, Score.NONE);
        long units = (long) families.size() * jointsPerFamily;
        OrderedWork.run(
                0,
                (units + JOINTS_PER_CHUNK - 1) / JOINTS_PER_CHUNK,
                threads,
                () -> {
                    ClosedLoop loop = own.newLoop();
                    return chunk -> chunk(own, loop, chunk * JOINTS_PER_CHUNK, units);
                },
                (List<Score[]> joints) -> joints.forEach(scores -> Arrays.setAll(sums, c -> sums[c].plus(scores[c]))));
        return List.of(sums);
    }

    private List<Score[]> chunk(Bench own, ClosedLoop loop, long from, long units) {
        List<Score[]> joints = new ArrayList<>();
        for (long unit = from; unit < Math.min(units, from + JOINTS_PER_CHUNK); unit++) {
            TighteningRecord[] records =
                    own.tighten(loop, families.get((int) (unit / jointsPerFamily)), (int) (unit % jointsPerFamily));
            joints.add(Arrays.stream(records)
                    .map(record -> Score.of(record, deviation(record)))
                    .toArray(Score[]::new));
        }
        return joints;
    }

    private double deviation(TighteningRecord record) {
        OutcomeRule rule = bench.rule();
        double value = rule.quantity() == JudgedQuantity.CLAMP_FORCE ? record.clampForceN() : record.clampingTorqueNm();
        return (value - rule.target()) / rule.target();
    }
}
