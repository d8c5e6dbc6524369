package org.shutoffbench.harness.study.training;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.harness.population.DrawnCase;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.ClosedLoop;
import org.shutoffbench.harness.run.Contestant;
import org.shutoffbench.harness.run.OrderedWork;
import org.shutoffbench.harness.run.OutcomeRule;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.plant.Plant;
import org.shutoffbench.plant.PlantState;
import org.shutoffbench.sensor.SensorReading;

/** Joints on which blows are recorded with their truth, a little past the target. */
final class TrainingJoints {

    private static final int JOINTS_PER_CHUNK = 10;

    /** Blows are recorded up to this clamping torque over the target. */
    private static final double DRIVEN_TO = 1.6;

    private final Bench bench;
    private final int jointsPerFamily;

    /** @param bench on the seed of these joints */
    TrainingJoints(Bench bench, StrategyFactory strategy, Provision provision, int jointsPerFamily) {
        this.bench = bench.with(
                List.of(new Contestant(new FeatureRecorder.Factory(strategy.descriptor()), Map.of(), provision)));
        this.jointsPerFamily = jointsPerFamily;
    }

    /** All blows in order of family, joint and time; the same for any number of threads. */
    List<Blow> blows(int threads) throws InterruptedException {
        List<Blow> all = new ArrayList<>();
        long joints = (long) bench.scenario().families().size() * jointsPerFamily;
        OrderedWork.run(
                0,
                (joints + JOINTS_PER_CHUNK - 1) / JOINTS_PER_CHUNK,
                threads,
                () -> {
                    ClosedLoop loop = bench.newLoop();
                    return chunk -> chunk(loop, chunk * JOINTS_PER_CHUNK, joints);
                },
                (List<Blow> some) -> all.addAll(some));
        return all;
    }

    private List<Blow> chunk(ClosedLoop loop, long from, long joints) {
        List<Blow> blows = new ArrayList<>();
        for (long joint = from; joint < Math.min(joints, from + JOINTS_PER_CHUNK); joint++) {
            int family = (int) (joint / jointsPerFamily);
            DrawnCase drawn = bench.population().draw(family, (int) (joint % jointsPerFamily));
            double targetNm = bench.target(family).clampingTorqueNm();
            BlowLog log = new BlowLog(drawn.law(), DRIVEN_TO * targetNm);
            loop.watch(log);
            loop.run(drawn, bench.target(family), new TighteningRecord[1]);
            blows.addAll(log.blows());
        }
        return blows;
    }

    /** Truth beside what the recorder heard. */
    private static final class BlowLog implements ClosedLoop.Witness {

        /** A blow whose truth is not known yet, and its number. */
        private record Heard(Blow blow, int number) {}

        private final JointLaw law;
        private final double enoughNm;
        private final List<Heard> heard = new ArrayList<>();
        /** Clamping torque at rest after blow i, at index i. */
        private final List<Double> restNm = new ArrayList<>();

        private double nowNm;

        BlowLog(JointLaw law, double enoughNm) {
            this.law = law;
            this.enoughNm = enoughNm;
        }

        @Override
        public void onTick(double timeS, SensorReading reading, Plant plant, ShutoffStrategy strategy) {
            FeatureRecorder recorder = (FeatureRecorder) strategy;
            while (restNm.size() < plant.state().blows) {
                restNm.add(nowNm);
            }
            nowNm = OutcomeRule.clampingTorqueNm(law, plant.state());
            if (recorder.takeFresh()) {
                heard.add(new Heard(
                        new Blow(recorder.features(), recorder.balanceNm(), Double.NaN), plant.state().blows));
            }
            if (nowNm > enoughNm) {
                recorder.stop();
            }
        }

        @Override
        public void onCommit(Plant plant) {
            // torque at rest is read at the ticks
        }

        @Override
        public void onEnd(PlantState state) {
            // what happens after the stop is not learned from
        }

        /** Blows after which another one was seen to its end. */
        List<Blow> blows() {
            List<Blow> blows = new ArrayList<>();
            for (Heard each : heard) {
                if (each.number() + 1 < restNm.size()) {
                    double middle = (restNm.get(each.number()) + restNm.get(each.number() + 1)) / 2;
                    blows.add(each.blow().labelled(middle));
                }
            }
            return blows;
        }
    }
}
