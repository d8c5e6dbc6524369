package org.shutoffbench.harness.run;

import java.util.ArrayList;
import java.util.List;
import org.shutoffbench.plant.Drive;
import org.shutoffbench.plant.Plant;
import org.shutoffbench.plant.PlantState;
import org.shutoffbench.sensor.SensorChain;
import org.shutoffbench.sensor.SensorReading;

/**
 * One tightening without a strategy: full drive for a time, or until the first contact of a blow and then braked, with every
 * blow and what the tool sensed.
 */
public final class Trace {

    /** Receives every sample; the reading is reused. */
    public interface SampleSink {
        void accept(double timeS, SensorReading reading);
    }

    /**
     * One blow at its first contact.
     *
     * @param blow number, from 1
     * @param timeS s
     * @param hammerSpeedRadPerS rad/s
     * @param energyJ kinetic energy of the hammer, J
     * @param nutAngleRad past snug, rad
     * @param clampForceN N
     * @param torqueToMoveNm torque to turn the nut on, N m
     */
    public record Blow(
            int blow,
            double timeS,
            double hammerSpeedRadPerS,
            double energyJ,
            double nutAngleRad,
            double clampForceN,
            double torqueToMoveNm) {

        /** The blow that a plant has just begun. */
        public static Blow of(PlantState state, double hammerInertiaKgM2, double snugAngleRad) {
            double speed = state.lastBlowHammerSpeedRadPerS;
            return new Blow(
                    state.blows,
                    state.lastBlowTimeS,
                    speed,
                    hammerInertiaKgM2 * speed * speed / 2,
                    state.nutAngleRad - snugAngleRad,
                    state.clampForceN,
                    state.torqueToMoveNm);
        }
    }

    private final Plant plant;
    private final double hammerInertiaKgM2;
    private final double snugAngleRad;
    private final List<Blow> blows = new ArrayList<>();

    /**
     * @param plant started
     * @param hammerInertiaKgM2 J_h of its tool
     * @param snugAngleRad of its joint
     */
    public Trace(Plant plant, double hammerInertiaKgM2, double snugAngleRad) {
        this.plant = plant;
        this.hammerInertiaKgM2 = hammerInertiaKgM2;
        this.snugAngleRad = snugAngleRad;
    }

    /** Drives for a time from the start and ends there; the last sample stands at or before the end. */
    public void driveFor(double durationS, SensorChain sensors, SampleSink sink) {
        run(durationS, Integer.MAX_VALUE, 0, sensors, sink);
    }

    /** Brakes at the first contact of a blow and follows the run-on; a tool that never gets there drives to the limit. */
    public void brakeAtBlow(int blow, double limitS, SensorChain sensors, SampleSink sink) {
        run(limitS, blow, ClosedLoop.JUDGED_AFTER_S, sensors, sink);
    }

    private void run(double limitS, int brakeAtBlow, double runOnS, SensorChain sensors, SampleSink sink) {
        double endS = limitS;
        double plannedEndS = plant.plan();
        for (long tick = 0; !plant.state().fractured; tick++) {
            double timeS = sensors.suite().timeS(tick);
            while (plannedEndS < Math.min(timeS, endS) && !plant.state().fractured) {
                sensors.beforeCommit(plant, plannedEndS);
                int before = plant.state().blows;
                plant.commit();
                if (plant.state().blows > before) {
                    blows.add(Blow.of(plant.state(), hammerInertiaKgM2, snugAngleRad));
                    if (plant.state().blows == brakeAtBlow) {
                        plant.command(Drive.BRAKE, 0);
                        endS = plant.state().timeS + runOnS;
                    }
                }
                plannedEndS = plant.plan();
            }
            if (plant.state().fractured) {
                return;
            }
            if (timeS > endS) {
                plant.commitAt(endS);
                return;
            }
            sink.accept(timeS, sensors.sample(tick, plant));
        }
    }

    /** All blows so far. */
    public List<Blow> blows() {
        return List.copyOf(blows);
    }
}
