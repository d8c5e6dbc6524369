package org.shutoffbench.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shutoffbench.plant.Tightening.Reach;
import org.shutoffbench.tool.ReferenceTools;

/** The plant as an instrument: copies, cuts, allocation, convergence. */
class FastPlantTest {

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25})
    void copyGoesOnBitForBit(long seed) {
        Tightening tightening = Tightening.draw(seed, Reach.FAMILIES);
        FastPlant original = new FastPlant();
        tightening.start(original);
        FastPlant copy = new FastPlant();
        tightening.start(copy);
        for (int i = 0; i < 3000; i++) {
            original.commit();
            if (i % 500 == 7) {
                original.commitAt((original.state().timeS + original.plan()) / 2);
                copy.copyFrom(original);
            } else if (i > 7) {
                copy.commit();
            }
            if (i > 7) {
                assertThat(copy.state().hash()).isEqualTo(original.state().hash());
            }
        }
    }

    @Test
    void copyOfTheReferencePlantGoesOnBitForBit() {
        Plant original = new ReferencePlant();
        original.start(ReferenceJoints.joint("A"), ReferenceTools.LIGHT, 1);
        Run run = new Run(original);
        run.until(0.14);
        Plant copy = new ReferencePlant();
        copy.copyFrom(original);
        PlantState end = run.until(0.2);
        assertThat(new Run(copy).until(0.2).hash()).isEqualTo(end.hash());
    }

    @Test
    void samplingNeverChangesTheResult() {
        Tightening tightening = Tightening.draw(31, Reach.FAMILIES);
        FastPlant whole = new FastPlant();
        FastPlant sampled = new FastPlant();
        tightening.start(whole);
        tightening.start(sampled);
        new Run(whole).until(1);
        SplittableRandom random = new SplittableRandom(1);
        double t = 0;
        while (t < 1) {
            t = Math.min(1, t + random.nextDouble(2e-4));
            new Run(sampled).until(t);
            assertThat(sampled.anvilAngleRad(t)).isFinite();
        }
        assertThat(sampled.state().hash()).isEqualTo(whole.state().hash());
    }

    @Test
    void commandsAtAnyInstantChangeResultsByLessThanTheStatedAccuracy() {
        Tightening tightening = Tightening.draw(32, Reach.FAMILIES);
        double whole = cut(tightening, 0);
        assertThat(cut(tightening, 1e-3)).isCloseTo(whole, within(1e-4 * whole + 1));
        assertThat(cut(tightening, 1e-4)).isCloseTo(whole, within(1e-4 * whole + 1));
    }

    /** Restarts at random instants by commanding a level that differs in the last bit only. */
    private static double cut(Tightening tightening, double meanS) {
        FastPlant plant = new FastPlant();
        tightening.start(plant);
        Run run = new Run(plant);
        SplittableRandom random = new SplittableRandom(2);
        boolean down = true;
        while (meanS > 0 && plant.state().timeS < 1) {
            run.until(Math.min(1, plant.state().timeS + random.nextDouble(2 * meanS)));
            plant.command(Drive.KEEP, down ? Math.nextDown(tightening.level()) : tightening.level());
            down = !down;
        }
        return run.until(1).clampForceN;
    }

    @Test
    void stepsAndLookUpsAllocateNothing() {
        FastPlant plant = new FastPlant();
        plant.start(ReferenceJoints.joint("D"), ReferenceTools.LIGHT, 1);
        work(plant, 1.2);
        plant.start(ReferenceJoints.joint("D"), ReferenceTools.LIGHT, 1);
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        long before = threads.getThreadAllocatedBytes(id);
        double sum = work(plant, 1.2);
        long after = threads.getThreadAllocatedBytes(id);
        assertThat(sum).isFinite();
        // the counter itself and its return path may account for a few hundred bytes, thousands of steps for none
        assertThat(after - before).isLessThan(1024);
    }

    private static double work(FastPlant plant, double untilS) {
        double sum = 0;
        while (plant.plan() < untilS) {
            double t = plant.plan();
            sum += plant.anvilAngleRad(t)
                    + plant.socketTorqueNm(t)
                    + plant.motorTorqueNm(t)
                    + plant.carrierSpeedRadPerS(t);
            plant.commit();
            sum += plant.state().clampForceN;
        }
        return sum;
    }

    @Test
    void finerToleranceMovesResultsByLessThanTheStatedAccuracy() {
        for (long seed = 40; seed < 80; seed++) {
            Tightening tightening = Tightening.draw(seed, Reach.FAMILIES);
            PlantState coarse = tightening.on(new FastPlant());
            PlantState fine = tightening.on(new FastPlant(FastPlant.SPEED_TOLERANCE / 1000));
            assertThat(coarse.clampForceN)
                    .as("clamp force at seed %d", seed)
                    .isCloseTo(fine.clampForceN, within(1e-4 * fine.clampForceN + 1));
            assertThat(coarse.blows).isEqualTo(fine.blows);
        }
    }

    @Test
    void refusesTimesOutsideThePlannedStep() {
        FastPlant plant = new FastPlant();
        plant.start(ReferenceJoints.joint("A"), ReferenceTools.LIGHT, 1);
        assertThatThrownBy(() -> plant.commitAt(plant.plan() + 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> plant.command(Drive.KEEP, 1.5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> plant.copyFrom(new ReferencePlant())).isInstanceOf(IllegalArgumentException.class);
    }
}
