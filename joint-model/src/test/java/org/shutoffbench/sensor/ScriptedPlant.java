package org.shutoffbench.sensor;

import java.util.function.DoubleUnaryOperator;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.plant.Drive;
import org.shutoffbench.plant.Plant;
import org.shutoffbench.plant.PlantState;
import org.shutoffbench.tool.ImpactTool;

/** A plant whose every quantity is a given function of time; its steps end at multiples of a length and at given events. */
final class ScriptedPlant implements Plant {

    DoubleUnaryOperator carrierAngle = t -> 0;
    DoubleUnaryOperator carrierSpeed = t -> 0;
    DoubleUnaryOperator anvilAngle = t -> 0;
    DoubleUnaryOperator motorTorque = t -> 0;
    DoubleUnaryOperator socketTorque = t -> 0;
    DoubleUnaryOperator lugTorque = t -> 0;
    double stepS = 1e-3;
    double[] eventTimesS = {};
    double[] blowTimesS = {};
    double hammerSpeedAtBlow = 200;

    private final PlantState state = new PlantState();
    private double plannedEndS;

    @Override
    public void start(JointLaw joint, ImpactTool tool, double supplyRatio) {
        restart();
    }

    void restart() {
        state.timeS = 0;
        state.blows = 0;
    }

    @Override
    public void command(Drive drive, double level) {}

    @Override
    public double plan() {
        plannedEndS = (Math.floor(state.timeS / stepS * (1 + 1e-12)) + 1) * stepS;
        for (double eventS : eventTimesS) {
            plannedEndS = eventS > state.timeS ? Math.min(plannedEndS, eventS) : plannedEndS;
        }
        for (double blowS : blowTimesS) {
            plannedEndS = blowS > state.timeS ? Math.min(plannedEndS, blowS) : plannedEndS;
        }
        return plannedEndS;
    }

    @Override
    public void commit() {
        commitAt(plannedEndS);
        for (double blowS : blowTimesS) {
            if (blowS == state.timeS) {
                state.blows++;
                state.lastBlowTimeS = blowS;
                state.lastBlowHammerSpeedRadPerS = hammerSpeedAtBlow;
            }
        }
    }

    @Override
    public void commitAt(double timeS) {
        state.timeS = timeS;
    }

    @Override
    public PlantState state() {
        return state;
    }

    @Override
    public boolean isSettled() {
        return false;
    }

    @Override
    public void copyFrom(Plant other) {
        throw new UnsupportedOperationException();
    }

    @Override
    public double carrierAngleRad(double timeS) {
        return inside(timeS, carrierAngle);
    }

    @Override
    public double carrierSpeedRadPerS(double timeS) {
        return inside(timeS, carrierSpeed);
    }

    @Override
    public double hammerAngleRad(double timeS) {
        throw new UnsupportedOperationException("no sensor sees the hammer");
    }

    @Override
    public double hammerSpeedRadPerS(double timeS) {
        throw new UnsupportedOperationException("no sensor sees the hammer");
    }

    @Override
    public double anvilAngleRad(double timeS) {
        return inside(timeS, anvilAngle);
    }

    @Override
    public double nutAngleRad(double timeS) {
        throw new UnsupportedOperationException("no sensor sees the nut");
    }

    @Override
    public double anvilSpeedRadPerS(double timeS) {
        throw new UnsupportedOperationException("no sensor sees the anvil's speed");
    }

    @Override
    public double nutSpeedRadPerS(double timeS) {
        throw new UnsupportedOperationException("no sensor sees the nut");
    }

    @Override
    public double clampForceN(double timeS) {
        throw new UnsupportedOperationException("no sensor sees the clamp force");
    }

    @Override
    public double motorTorqueNm(double timeS) {
        return inside(timeS, motorTorque);
    }

    @Override
    public double socketTorqueNm(double timeS) {
        return inside(timeS, socketTorque);
    }

    @Override
    public double lugTorqueNm(double timeS) {
        return inside(timeS, lugTorque);
    }

    private double inside(double timeS, DoubleUnaryOperator quantity) {
        if (!(timeS >= state.timeS && timeS <= plannedEndS)) {
            throw new AssertionError("look-up at " + timeS + " outside " + state.timeS + " to " + plannedEndS);
        }
        return quantity.applyAsDouble(timeS);
    }
}
