package org.shutoffbench.harness.run;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.controller.Command;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.Target;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.controller.conformance.Thrown;
import org.shutoffbench.harness.population.DrawnCase;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.plant.Plant;
import org.shutoffbench.plant.PlantState;
import org.shutoffbench.sensor.SensorChain;
import org.shutoffbench.sensor.SensorReading;
import org.shutoffbench.sensor.SensorSuite;

/**
 * Every strategy on one joint, each to its own stop.
 *
 * <p>All strategies start in one lane and hear the same samples. One that asks for another command than the rest leaves:
 * with a shutoff the plant is forked and followed through the run-on; with another drive level it goes on in a lane of its
 * own, plant and sensors forked. Because plant steps and sensor noise do not depend on who listens, the results equal those
 * of separate runs bit for bit.
 *
 * <p>Order at tick i: events before it, sample i, strategies, then the command that is due at i. One loop serves one
 * thread; what a tick needs is allocated at construction.
 */
public final class ClosedLoop {

    /** Truth is read this long after the stop command acts, s; the nut's last motion was seen at 0.35 s. */
    public static final double JUDGED_AFTER_S = 0.5;

    /** A battery below this fraction of its nominal voltage ends a tightening. */
    public static final double LEAST_SUPPLY_RATIO = 0.75;

    /** Watches a loop for pictures and traces; sees truth that no strategy sees. */
    public interface Witness {
        /** Called after a strategy of the lane has answered a sample. */
        void onTick(double timeS, SensorReading reading, Plant plant, ShutoffStrategy strategy);

        /** Called after every event of the plant, in the lane and in the run-on. */
        void onCommit(Plant plant);

        /** Called with the truth at judgement, once for every strategy. */
        void onEnd(PlantState state);
    }

    private final List<Contestant> contestants;
    private final ShutoffStrategy[] strategies;
    /** How each strategy broke the contract in this run; null where it did not. */
    private final @Nullable String[] faults;

    private final Listeners listeners;
    private final LoopTiming timing;
    private final OutcomeRule rule;
    private final Lane[] lanes;
    private final Lane runOn;
    private int lanesUsed;
    private @Nullable Witness witness;

    /**
     * @param contestants the strategies, in the scenario's order
     * @param timing sample period, command latency, time limit
     * @param rule what a joint ended as
     * @param suite what the tool senses with
     * @param plants makes a new plant at each call
     */
    public ClosedLoop(
            List<Contestant> contestants,
            LoopTiming timing,
            OutcomeRule rule,
            SensorSuite suite,
            Supplier<? extends Plant> plants) {
        this.contestants = List.copyOf(contestants);
        this.strategies = new ShutoffStrategy[contestants.size()];
        Arrays.setAll(strategies, s -> contestants.get(s).create(Map.of()));
        this.faults = new String[contestants.size()];
        this.listeners = new Listeners(contestants);
        this.timing = timing;
        this.rule = rule;
        this.lanes = new Lane[contestants.size()];
        Arrays.setAll(lanes, l -> new Lane(plants.get(), new SensorChain(suite), timing, contestants.size()));
        this.runOn = new Lane(plants.get(), new SensorChain(suite), timing, contestants.size());
    }

    /** Lets a witness see every tick from now on. */
    public void watch(Witness newWitness) {
        this.witness = newWitness;
    }

    /**
     * Runs one joint.
     *
     * @param drawn the drawn joint with its tool, supply and sensor errors
     * @param target what each strategy is armed with
     * @param into receives one record per strategy, in order
     */
    public void run(DrawnCase drawn, Target target, TighteningRecord[] into) {
        for (int s = 0; s < strategies.length; s++) {
            if (contestants.get(s).dependsOnOperator()) {
                strategies[s] = contestants.get(s).create(drawn.operator());
            }
            arm(s, target);
        }
        Lane first = lanes[0];
        first.clearMembers();
        for (int s = 0; s < strategies.length; s++) {
            first.join(s);
        }
        first.plant().start(drawn.law(), drawn.impactTool(), drawn.supplyRatio());
        if (drawn.supplyRatio() < LEAST_SUPPLY_RATIO) {
            endAll(first, EndReason.BATTERY, 0, drawn, into);
            return;
        }
        first.sensors()
                .start(
                        drawn.impactTool(),
                        drawn.sensorErrors(),
                        drawn.supplyRatio(),
                        drawn.noiseKey(),
                        listeners.mask());
        first.begin();
        lanesUsed = 1;
        for (int l = 0; l < lanesUsed; l++) {
            runLane(lanes[l], drawn, into);
        }
    }

    /** How a strategy broke the contract in the last run, in words; null where it did not. */
    public @Nullable String fault(int strategy) {
        return faults[strategy];
    }

    private void arm(int s, Target target) {
        faults[s] = null;
        try {
            strategies[s].arm(target);
        } catch (RuntimeException | AssertionError | LinkageError | StackOverflowError brokenContract) {
            faults[s] = "arm() threw " + Thrown.inWords(brokenContract);
        }
    }

    private void runLane(Lane lane, DrawnCase drawn, TighteningRecord[] into) {
        while (lane.memberCount() > 0) {
            int tick = lane.tick();
            try {
                lane.advance(true, witness);
            } catch (IllegalStateException stepGuard) {
                endAll(lane, EndReason.FAULT, tick, drawn, into);
                return;
            }
            if (lane.plant().isFractured()) {
                endAll(lane, EndReason.FRACTURE, tick, drawn, into);
                return;
            }
            if (tick >= timing.timeLimitTicks()) {
                stopAll(lane, drawn, into);
                return;
            }
            SensorReading reading = lane.sample();
            listeners.hear(reading);
            askMembers(lane, reading, drawn, into);
            lane.act(true);
        }
    }

    private void askMembers(Lane lane, SensorReading reading, DrawnCase drawn, TighteningRecord[] into) {
        for (int s = 0; s < strategies.length; s++) {
            if (!lane.hasMember(s)) {
                continue;
            }
            Command command = answer(s);
            if (witness != null) {
                witness.onTick(timing.timeS(lane.tick()), reading, lane.plant(), strategies[s]);
            }
            if (command == null) {
                lane.leave(s);
                into[s] = ending(s, EndReason.FAULT, lane.tick(), lane.state(), lane.state().nutAngleRad, drawn);
            } else if (command.isShutoff()) {
                lane.leave(s);
                into[s] = followRunOn(lane, s, command, EndReason.SHUTOFF, drawn);
            } else if (command != lane.requested()) {
                redirect(lane, s, command);
            }
        }
    }

    /** Null from a strategy that could not be armed, threw, or answered nothing. */
    private @Nullable Command answer(int s) {
        if (faults[s] != null) {
            return null;
        }
        try {
            Command command = strategies[s].onSample(listeners.frame(s));
            if (command == null) {
                faults[s] = "onSample() returned nothing";
            }
            return command;
        } catch (RuntimeException | AssertionError | LinkageError | StackOverflowError brokenContract) {
            faults[s] = "onSample() threw " + Thrown.inWords(brokenContract);
            return null;
        }
    }

    /** Null from a strategy that threw or answered nothing. */
    private @Nullable Verdict claim(int s) {
        try {
            Verdict verdict = strategies[s].verdict();
            if (verdict == null) {
                faults[s] = "verdict() returned nothing";
            }
            return verdict;
        } catch (RuntimeException | AssertionError | LinkageError | StackOverflowError brokenContract) {
            faults[s] = "verdict() threw " + Thrown.inWords(brokenContract);
            return null;
        }
    }

    private void redirect(Lane lane, int s, Command command) {
        if (lane.memberCount() == 1) {
            lane.request(command);
            return;
        }
        lane.leave(s);
        Lane own = lanes[lanesUsed++];
        own.copyFrom(lane);
        own.clearMembers();
        own.join(s);
        own.request(command);
        own.act(true);
    }

    private void stopAll(Lane lane, DrawnCase drawn, TighteningRecord[] into) {
        for (int s = 0; s < strategies.length; s++) {
            if (lane.hasMember(s)) {
                lane.leave(s);
                into[s] = followRunOn(lane, s, Command.BRAKE, EndReason.TIME_LIMIT, drawn);
            }
        }
    }

    private void endAll(Lane lane, EndReason reason, int tick, DrawnCase drawn, TighteningRecord[] into) {
        for (int s = 0; s < strategies.length; s++) {
            if (lane.hasMember(s)) {
                lane.leave(s);
                into[s] = ending(s, reason, tick, lane.state(), lane.state().nutAngleRad, drawn);
            }
        }
    }

    private TighteningRecord followRunOn(Lane lane, int s, Command command, EndReason reason, DrawnCase drawn) {
        int tick = lane.tick();
        runOn.copyMotionFrom(lane);
        double angleAtCommandRad = runOn.nutAngleRad();
        try {
            runOn.request(command);
            for (int waiting = 0; waiting <= timing.latencyTicks(); waiting++) {
                runOn.act(false);
                runOn.advance(false, witness);
            }
            runOn.act(false);
            runOn.runOn(JUDGED_AFTER_S, witness);
        } catch (IllegalStateException stepGuard) {
            return ending(s, EndReason.FAULT, tick, runOn.state(), angleAtCommandRad, drawn);
        }
        return ending(s, reason, tick, runOn.state(), angleAtCommandRad, drawn);
    }

    private TighteningRecord ending(
            int s, EndReason reason, int tick, PlantState state, double angleAtCommandRad, DrawnCase drawn) {
        if (witness != null) {
            witness.onEnd(state);
        }
        JointLaw law = drawn.law();
        Verdict claimed = reason == EndReason.SHUTOFF ? claim(s) : Verdict.NOT_REACHED;
        return new TighteningRecord(
                drawn.family(),
                drawn.joint(),
                drawn.lot(),
                drawn.piece(),
                drawn.repeat(),
                drawn.tool(),
                s,
                claimed == null ? EndReason.FAULT : reason,
                claimed == null ? Verdict.NOT_REACHED : claimed,
                rule.outcome(law, state),
                state.clampForceN,
                OutcomeRule.clampingTorqueNm(law, state),
                law.freeTorque().torqueNm(state.nutAngleRad),
                Math.toDegrees(state.nutAngleRad - law.clamp().snugAngleRad()),
                state.blows,
                timing.timeS(tick),
                Math.toDegrees(state.nutAngleRad - angleAtCommandRad),
                state.guardSteps);
    }
}
