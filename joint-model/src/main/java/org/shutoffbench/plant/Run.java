package org.shutoffbench.plant;

import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.tool.ImpactTool;

/** A plant driven alone, without sensors or strategy: for a time, or braked at the first contact of a blow. */
public final class Run {

    /** How long a joint is watched after the stop, s. */
    public static final double RUN_ON_S = 0.5;

    /** Sees the plant's state at the first contact of every blow. */
    @FunctionalInterface
    public interface BlowObserver {
        void onBlow(PlantState atFirstContact);
    }

    private final Plant plant;
    private final BlowObserver observer;

    public Run(Plant plant, BlowObserver observer) {
        this.plant = plant;
        this.observer = observer;
    }

    public Run(Plant plant) {
        this(plant, state -> {});
    }

    /** Starts from rest at full drive; other levels by {@code plant.command} before the run goes on. */
    public Run start(JointLaw joint, ImpactTool tool, double supplyRatio) {
        plant.start(joint, tool, supplyRatio);
        return this;
    }

    /** Goes on to a time; ends early at fracture. */
    public PlantState until(double timeS) {
        while (!plant.isFractured() && plant.plan() < timeS) {
            step();
        }
        if (!plant.isFractured()) {
            plant.commitAt(timeS);
        }
        return plant.state();
    }

    /** Goes on to the first contact of a blow, or to a time limit or fracture if they come first. */
    public PlantState untilBlow(int blow, double limitS) {
        while (!plant.isFractured() && plant.blows() < blow) {
            if (plant.plan() > limitS) {
                plant.commitAt(limitS);
                break;
            }
            step();
        }
        return plant.state();
    }

    /** Brakes at the first contact of a blow and goes on until the nut is settled, at most for {@link #RUN_ON_S}. */
    public PlantState brakedAtBlow(int blow, double limitS) {
        untilBlow(blow, limitS);
        plant.command(Drive.BRAKE, 0);
        return runOn();
    }

    /** Goes on after a stop command until the nut is settled, at most for {@link #RUN_ON_S}; ends early at fracture. */
    public PlantState runOn() {
        double end = plant.state().timeS + RUN_ON_S;
        while (!plant.isSettled() && !plant.isFractured()) {
            if (plant.plan() >= end) {
                plant.commitAt(end);
                break;
            }
            step();
        }
        return plant.state();
    }

    private void step() {
        int before = plant.blows();
        plant.commit();
        if (plant.blows() != before) {
            observer.onBlow(plant.state());
        }
    }
}
