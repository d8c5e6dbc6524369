package org.shutoffbench.harness.run;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.harness.population.DrawnCase;
import org.shutoffbench.plant.Plant;
import org.shutoffbench.plant.PlantState;
import org.shutoffbench.sensor.SensorReading;

/** One strategy on one joint with everything that happened on the way. */
public final class StrategyTrace {

    private final Bench bench;
    private final int strategy;
    private final Supplier<? extends Plant> plants;
    private final Trace.@Nullable SampleSink samples;
    private final List<Trace.Blow> blows = new ArrayList<>();
    private final PlantState end = new PlantState();
    private double snugAngleRad;
    private @Nullable String fault;

    /**
     * @param strategy index in the scenario
     * @param plants makes a new plant at each call
     * @param samples receives what the tool sensed up to the stop; null for nobody
     */
    public StrategyTrace(
            Bench bench, int strategy, Supplier<? extends Plant> plants, Trace.@Nullable SampleSink samples) {
        this.bench = bench;
        this.strategy = strategy;
        this.plants = plants;
        this.samples = samples;
    }

    /** Tightens one joint. */
    public TighteningRecord tighten(int family, int joint) {
        DrawnCase drawn = bench.population().draw(family, joint);
        snugAngleRad = drawn.law().clamp().snugAngleRad();
        ClosedLoop loop = bench.with(List.of(bench.contestants().get(strategy))).newLoop(plants);
        double hammerInertiaKgM2 = drawn.impactTool().hammer().inertiaKgM2();
        loop.watch(new ClosedLoop.Witness() {
            @Override
            public void onTick(double timeS, SensorReading reading, Plant plant, ShutoffStrategy asked) {
                if (samples != null) {
                    samples.accept(timeS, reading);
                }
            }

            @Override
            public void onCommit(Plant plant) {
                if (plant.state().blows > blows.size()) {
                    blows.add(Trace.Blow.of(plant.state(), hammerInertiaKgM2, snugAngleRad));
                }
            }

            @Override
            public void onEnd(PlantState state) {
                end.copyFrom(state);
            }
        });
        TighteningRecord[] records = new TighteningRecord[1];
        loop.run(drawn, bench.target(family), records);
        fault = loop.fault(0);
        return records[0];
    }

    /** How the strategy broke the contract, in words; null where it did not. */
    public @Nullable String fault() {
        return fault;
    }

    /** All blows, run-on included. */
    public List<Trace.Blow> blows() {
        return List.copyOf(blows);
    }

    /** The truth at judgement. */
    public PlantState endState() {
        return end;
    }

    /** Nut angle at which the parts of the traced joint touch, rad from the start. */
    public double snugAngleRad() {
        return snugAngleRad;
    }
}
