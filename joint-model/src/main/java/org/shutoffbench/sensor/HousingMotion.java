package org.shutoffbench.sensor;

import org.jspecify.annotations.Nullable;
import org.shutoffbench.draw.NoiseStream;
import org.shutoffbench.tool.Housing;

/**
 * The housing on the operator's arm: J_b b'' + c_b b' + k_b b = -T_m, exact at the sample rate for a motor torque that goes
 * in a straight line from sample to sample, plus sway: an Ornstein-Uhlenbeck process, exact at the sample rate, its noise
 * keyed by the tick.
 */
final class HousingMotion {

    private final ArmMotion arm;
    private final double periodS;
    private final double swayKept;
    private final double swayAdded;
    private final LinearFilter yielding = new LinearFilter(LinearStep.of(LowPass.NONE, 1));

    private @Nullable Housing housing;
    private long swayKey;
    private double sway;
    private double swayAtStart;
    private double lastTorqueNm;
    private double angleRad;
    private double turnedRad;

    HousingMotion(ArmMotion arm, double periodS) {
        this.arm = arm;
        this.periodS = periodS;
        swayKept = StrictMath.exp(-periodS / arm.swayTimeS());
        swayAdded = arm.swayRad() * Math.sqrt(-StrictMath.expm1(-2 * periodS / arm.swayTimeS()));
    }

    void start(Housing toolHousing, long key) {
        if (arm.yields() && !toolHousing.equals(housing)) {
            housing = toolHousing;
            yielding.settle(
                    0,
                    LinearStep.oscillator(
                            housing.inertiaKgM2(), housing.dampingNmSPerRad(), housing.stiffnessNmPerRad(), periodS));
        }
        yielding.settle(0);
        swayKey = key;
        sway = arm.swayRad() * NoiseStream.normal(key, 0);
        swayAtStart = sway;
        lastTorqueNm = 0;
        angleRad = 0;
        turnedRad = 0;
    }

    /** Moves on to a tick at which the motor's torque is given; ticks come one after the other from 0. */
    void advance(long tick, double motorTorqueNm) {
        if (tick > 0) {
            double before = angleRad;
            sway = swayKept * sway + swayAdded * NoiseStream.normal(swayKey, tick);
            double yielded = arm.yields() ? yielding.advance(-lastTorqueNm, -motorTorqueNm) : 0;
            angleRad = yielded + (sway - swayAtStart);
            turnedRad = angleRad - before;
        }
        lastTorqueNm = motorTorqueNm;
    }

    /** Turn of the housing since the start, rad; positive = tightening. */
    double angleRad() {
        return angleRad;
    }

    /** Mean turning rate since the last tick, rad/s. */
    double rateRadPerS() {
        return turnedRad / periodS;
    }

    void copyFrom(HousingMotion other) {
        housing = other.housing;
        yielding.copyFrom(other.yielding);
        swayKey = other.swayKey;
        sway = other.sway;
        swayAtStart = other.swayAtStart;
        lastTorqueNm = other.lastTorqueNm;
        angleRad = other.angleRad;
        turnedRad = other.turnedRad;
    }
}
