package org.shutoffbench.harness.run;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.controller.Command;
import org.shutoffbench.harness.run.ClosedLoop.Witness;
import org.shutoffbench.plant.Drive;
import org.shutoffbench.plant.Plant;
import org.shutoffbench.plant.PlantState;
import org.shutoffbench.sensor.SensorChain;
import org.shutoffbench.sensor.SensorReading;

/**
 * One plant with its sensors on its way through the ticks, and the commands that are still travelling to the motor.
 *
 * <p>Strategies that have asked for the same commands so far share a lane. A lane becomes an exact copy of another by
 * {@link #copyFrom}; nothing is allocated on the way.
 */
final class Lane {

    private final Plant plant;
    private final SensorChain sensors;
    private final LoopTiming timing;
    /** A ring: the command that acts at the present tick lies in the present slot. */
    private final Command[] actsAt;

    private int slot;
    /** Ticks until no command travels any more. */
    private int travelling;

    private final boolean[] members;
    private int memberCount;
    private Command requested = Command.FULL;
    private Command acting = Command.FULL;
    private double plannedEndS;
    private int tick;

    Lane(Plant plant, SensorChain sensors, LoopTiming timing, int strategies) {
        this.plant = plant;
        this.sensors = sensors;
        this.timing = timing;
        this.actsAt = new Command[timing.latencyTicks() + 2];
        this.members = new boolean[strategies];
    }

    /** Begins a tightening at full drive; plant and sensors have been started. */
    void begin() {
        requested = Command.FULL;
        acting = Command.FULL;
        Arrays.fill(actsAt, Command.FULL);
        slot = 0;
        travelling = 0;
        tick = 0;
        plannedEndS = plant.plan();
    }

    void copyFrom(Lane other) {
        copyMotionFrom(other);
        sensors.copyFrom(other.sensors);
    }

    /** Copies plant and travelling commands, but not the sensors: enough for a run-on. */
    void copyMotionFrom(Lane other) {
        plant.copyFrom(other.plant);
        requested = other.requested;
        acting = other.acting;
        System.arraycopy(other.actsAt, 0, actsAt, 0, actsAt.length);
        plannedEndS = other.plannedEndS;
        slot = other.slot;
        travelling = other.travelling;
        tick = other.tick;
    }

    // members

    void clearMembers() {
        Arrays.fill(members, false);
        memberCount = 0;
    }

    void join(int strategy) {
        members[strategy] = true;
        memberCount++;
    }

    void leave(int strategy) {
        members[strategy] = false;
        memberCount--;
    }

    boolean hasMember(int strategy) {
        return members[strategy];
    }

    int memberCount() {
        return memberCount;
    }

    // motion

    /** Moves every event before the present tick into the past; stops early at a fracture. */
    void advance(boolean sensing, @Nullable Witness witness) {
        double timeS = sensors.timeS(tick);
        while (plannedEndS < timeS && !plant.isFractured()) {
            if (sensing) {
                sensors.beforeCommit(plant, plannedEndS);
            }
            commit(witness);
        }
    }

    private void commit(@Nullable Witness witness) {
        plant.commit();
        if (witness != null) {
            witness.onCommit(plant);
        }
        plannedEndS = plant.plan();
    }

    SensorReading sample() {
        return sensors.sample(tick, plant);
    }

    /** Takes a command given at the present tick; it acts one tick later at the earliest, plus the latency. */
    void request(Command command) {
        requested = command;
        travelling = actsAt.length;
        actsAt[(slot + 1 + timing.latencyTicks()) % actsAt.length] = command;
    }

    /** Lets the command that is due at the present tick act, and goes to the next tick. */
    void act(boolean sensing) {
        if (travelling > 0) {
            travelling--;
            actOn(nextDue(), sensing);
        }
        tick++;
    }

    private Command nextDue() {
        Command due = actsAt[slot];
        actsAt[slot] = requested;
        slot = slot + 1 == actsAt.length ? 0 : slot + 1;
        return due;
    }

    private void actOn(Command due, boolean sensing) {
        if (due != acting && !plant.isFractured()) {
            double timeS = sensors.timeS(tick);
            if (sensing) {
                sensors.beforeCommit(plant, timeS);
            }
            plant.commitAt(timeS);
            plant.command(drive(due), due.level());
            acting = due;
            plannedEndS = plant.plan();
        }
    }

    /** Goes on without sampling for a time from {@code state().timeS}; ends early where the nut is
     * settled or the bolt broke. */
    void runOn(double durationS, @Nullable Witness witness) {
        double untilS = plant.state().timeS + durationS;
        while (plannedEndS < untilS && !plant.isFractured() && !plant.isSettled()) {
            commit(witness);
        }
        if (!plant.isFractured() && !plant.isSettled()) {
            plant.commitAt(untilS);
        }
    }

    /** Nut angle at the present tick, rad. */
    double nutAngleRad() {
        return plant.nutAngleRad(sensors.timeS(tick));
    }

    int tick() {
        return tick;
    }

    private static Drive drive(Command command) {
        return switch (command.kind()) {
            case KEEP -> Drive.KEEP;
            case COAST -> Drive.COAST;
            case BRAKE -> Drive.BRAKE;
        };
    }

    Command requested() {
        return requested;
    }

    Plant plant() {
        return plant;
    }

    PlantState state() {
        return plant.state();
    }

    SensorChain sensors() {
        return sensors;
    }
}
