package org.shutoffbench.sensor;

import java.util.Set;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import org.shutoffbench.plant.Plant;
import org.shutoffbench.tool.ReferenceTools;

/** The loop around plant and chain, as its documentation states it. */
final class Bench {

    static final long KEY = 0x5EED5EED5EEDL;

    private final Plant plant;
    private final SensorChain chain;
    private double plannedEndS;
    private long tick;

    private Bench(Plant plant, SensorChain chain) {
        this.plant = plant;
        this.chain = chain;
        plannedEndS = plant.plan();
    }

    static Bench start(ScriptedPlant plant, SensorSuite suite, Quantity... quantities) {
        return start(plant, suite, SensorErrors.NONE, KEY, quantities);
    }

    static Bench start(ScriptedPlant plant, SensorSuite suite, SensorErrors errors, long key, Quantity... quantities) {
        plant.restart();
        return begin(plant, new SensorChain(suite), errors, key, quantities);
    }

    /** For a plant that has been started already. */
    static Bench begin(Plant plant, SensorChain chain, SensorErrors errors, long key, Quantity... quantities) {
        chain.start(ReferenceTools.LIGHT, errors, 0.95, key, Quantity.mask(Set.of(quantities)));
        return new Bench(plant, chain);
    }

    /** A bench that goes on from here with copies. */
    Bench fork(Plant otherPlant, SensorChain otherChain) {
        otherPlant.copyFrom(plant);
        otherChain.copyFrom(chain);
        Bench fork = new Bench(otherPlant, otherChain);
        fork.tick = tick;
        return fork;
    }

    SensorReading next() {
        double timeS = chain.timeS(tick);
        while (plannedEndS < timeS) {
            chain.beforeCommit(plant, plannedEndS);
            plant.commit();
            plannedEndS = plant.plan();
        }
        return chain.sample(tick++, plant);
    }

    void run(int samples, Consumer<SensorReading> each) {
        for (int i = 0; i < samples; i++) {
            each.accept(next());
        }
    }

    double[] record(int samples, ToDoubleFunction<SensorReading> value) {
        double[] values = new double[samples];
        for (int i = 0; i < samples; i++) {
            values[i] = value.applyAsDouble(next());
        }
        return values;
    }
}
