package org.shutoffbench.harness.study.calibrate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.controller.signal.PulseArea;
import org.shutoffbench.plant.FastPlant;
import org.shutoffbench.plant.PlantState;
import org.shutoffbench.sensor.ArmMotion;
import org.shutoffbench.sensor.BlowDetector;
import org.shutoffbench.sensor.ChannelSensor;
import org.shutoffbench.sensor.LowPass;
import org.shutoffbench.sensor.Quantity;
import org.shutoffbench.sensor.SensorChain;
import org.shutoffbench.sensor.SensorErrors;
import org.shutoffbench.sensor.SensorPresets;
import org.shutoffbench.sensor.SensorSuite;
import org.shutoffbench.tool.ImpactTool;

/** Strikes plain joints with one tool at full drive and writes down every run-down, blow and trimmed blow. */
final class StrikingBench {

    /** Torque to move the nut at which a joint is left, N m. */
    private static final double LEFT_AT_NM = 140;

    private static final int MOST_BLOWS = 120;
    private static final double TIME_LIMIT_S = 6;
    private static final double TICK_S = 1e-4;
    /** The carrier keeps its speed this long after a contact, s. */
    private static final double HEARD_S = 3.5e-3;
    /** Smoothing of the carrier's speed in a run-down, s. */
    private static final double SMOOTHED_S = 1.5e-3;
    /** Blows before which a nut with stiff threads is not looked at. */
    private static final int STARTING_BLOWS = 2;
    /** Every so many blows the next is struck on a copy at reduced drive first. */
    private static final int TRIM_EVERY = 3;
    /** Torques between which a last blow is likely, N m. */
    private static final double LEAST_TRIM_NM = 50;

    private static final double GREATEST_TRIM_NM = 110;

    /** Torque as a good sensor of the nominal tool reads it: bandwidth, no errors. */
    private static final SensorSuite TORQUE_SENSOR = new SensorSuite(
            "calibration bench",
            10_000,
            0,
            Map.of(Quantity.TORQUE, ChannelSensor.IDEAL.withLowPass(LowPass.butterworth(2_000))),
            BlowDetector.IDEAL,
            ArmMotion.NONE,
            SensorPresets.IDEAL.nominalVoltageV(),
            SensorPresets.IDEAL.accelerationPerTorque());

    private final ImpactTool tool;
    private final double[] levels;
    private final FastPlant plant = new FastPlant();
    private final SensorChain sensors = new SensorChain(TORQUE_SENSOR);
    private final PulseArea pulse = new PulseArea((float) TICK_S);
    private final TrimBench trimBench = new TrimBench();
    private double plannedS;
    private long tick;
    private int nextLevel;

    final List<StruckBlow> blows = new ArrayList<>();
    final List<Rundown> rundowns = new ArrayList<>();
    final List<TrimmedBlow> trimmed = new ArrayList<>();

    /** @param levels drive levels of the last blows to be tried */
    StrikingBench(ImpactTool tool, double[] levels) {
        this.tool = tool;
        this.levels = levels.clone();
    }

    /** First contact of a blow. */
    private record Contact(double timeS, double carrierRad, double nutRad, double energyJ, boolean nutRests) {}

    /** A blow at reduced drive whose full counterpart is still to come. */
    private record Reduced(double meanSpeedRadPerS, double level, double advanceRad) {}

    void strike(PlainJoint joint) {
        plant.start(joint.law(), tool, joint.supplyRatio());
        sensors.start(tool, SensorErrors.NONE, joint.supplyRatio(), 0, Quantity.TORQUE.bit());
        pulse.reset();
        tick = 0;
        plannedS = plant.plan();
        Contact before = firstRest(joint);
        Contact earlier = null;
        Reduced reduced = null;
        for (int i = 0; i < MOST_BLOWS && before != null; i++) {
            double torqueNm = joint.torqueNm(before.nutRad());
            if (torqueNm > LEFT_AT_NM) {
                return;
            }
            pulse.take();
            double contactSpeed = speedAfter(before.timeS());
            double meanSpeed = earlier == null ? contactSpeed : meanSpeed(earlier, before);
            boolean trims = i % TRIM_EVERY == 1 && LEAST_TRIM_NM < torqueNm && torqueNm < GREATEST_TRIM_NM;
            Reduced next = trims ? reduce(before, meanSpeed) : null;
            Contact after = untilBlow(plant.state().blows + 1);
            double area = pulse.take();
            if (after != null && before.nutRests() && after.nutRests() && after.nutRad() > before.nutRad()) {
                blows.add(blow(joint, before, after, meanSpeed, contactSpeed, earlier == null, area));
                if (reduced != null) {
                    double share = reduced.advanceRad() / (after.nutRad() - before.nutRad());
                    trimmed.add(new TrimmedBlow(reduced.meanSpeedRadPerS(), reduced.level(), share));
                }
            }
            reduced = next;
            earlier = before;
            before = after;
        }
    }

    private static StruckBlow blow(
            PlainJoint joint,
            Contact before,
            Contact after,
            double meanSpeed,
            double contactSpeed,
            boolean isFirst,
            double area) {
        double work = joint.workJ(before.nutRad(), after.nutRad());
        double torque = 0.5 * (joint.torqueNm(before.nutRad()) + joint.torqueNm(after.nutRad()));
        return new StruckBlow(
                meanSpeed,
                contactSpeed,
                before.energyJ(),
                work,
                torque,
                isFirst,
                isFirst && joint.runsFreely(),
                joint.torqueNm(after.nutRad()),
                area);
    }

    private Reduced reduce(Contact before, double meanSpeed) {
        double level = levels[nextLevel++ % levels.length];
        return new Reduced(meanSpeed, level, trimBench.advanceRad(plant, plannedS, before.timeS(), level));
    }

    /** Goes on to the first blow that finds the nut at rest after its free run; null if there is none. */
    private @Nullable Contact firstRest(PlainJoint joint) {
        double smoothed = 0;
        double highest = 0;
        double snugRad = joint.law().clamp().snugAngleRad();
        for (int tick = 1; tick * TICK_S < TIME_LIMIT_S; tick++) {
            double timeS = tick * TICK_S;
            while (plannedS < timeS) {
                int struck = plant.state().blows;
                commit();
                PlantState state = plant.state();
                boolean ranDown = joint.runsFreely() ? state.nutAngleRad > snugRad : state.blows > STARTING_BLOWS;
                if (state.blows > struck && state.nutDirection == 0 && ranDown) {
                    if (joint.runsFreely()) {
                        rundowns.add(new Rundown(highest, joint.workJ(snugRad, state.nutAngleRad)));
                    }
                    return contact();
                }
            }
            smoothed += TICK_S / SMOOTHED_S * (plant.carrierSpeedRadPerS(timeS) - smoothed);
            highest = Math.max(highest, smoothed);
        }
        return null;
    }

    private Contact contact() {
        PlantState state = plant.state();
        double speed = state.lastBlowHammerSpeedRadPerS;
        double energyJ = 0.5 * tool.hammer().inertiaKgM2() * speed * speed;
        return new Contact(state.timeS, state.carrierAngleRad, state.nutAngleRad, energyJ, state.nutDirection == 0);
    }

    private static double meanSpeed(Contact from, Contact to) {
        return (to.carrierRad() - from.carrierRad()) / (to.timeS() - from.timeS());
    }

    private double speedAfter(double contactS) {
        double endS = contactS + HEARD_S;
        double from = plant.state().carrierAngleRad;
        while (plannedS < endS) {
            commit();
        }
        return (plant.carrierAngleRad(endS) - from) / HEARD_S;
    }

    private @Nullable Contact untilBlow(int blow) {
        while (plant.state().blows < blow) {
            if (plannedS > TIME_LIMIT_S) {
                return null;
            }
            commit();
        }
        return contact();
    }

    private void commit() {
        for (; sensors.timeS(tick) <= plannedS; tick++) {
            pulse.update(sensors.sample(tick, plant).torqueNm);
        }
        sensors.beforeCommit(plant, plannedS);
        plant.commit();
        plannedS = plant.plan();
    }
}
