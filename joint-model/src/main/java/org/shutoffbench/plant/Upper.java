package org.shutoffbench.plant;

import org.shutoffbench.tool.ImpactTool;

/** Carrier and hammer on their cam while no lug force acts: a series with a clock of its own. */
final class Upper {

    private final double[] carrierSpeed = Series.allocate();
    private final double[] hammerSpeed = Series.allocate();
    private final double[] delta = Series.allocate();
    private final double[] hammerAngle = Series.allocate();
    private final double[] scratch = Series.allocate();

    private final MotorAndCam drive;
    private double inverseCarrier;
    private double inverseHammer;
    private double tolerance;

    /** Base of the series. */
    double baseS;

    private double stepS;
    private double horizon;

    /** No event before; what is due there. */
    double endS;

    int event;

    Upper(MotorAndCam drive) {
        this.drive = drive;
    }

    void start(ImpactTool tool, double speedTolerance) {
        inverseCarrier = 1 / tool.motor().inertiaKgM2();
        inverseHammer = 1 / tool.hammer().inertiaKgM2();
        tolerance = speedTolerance;
    }

    /** Expands from a state; the end is the first event of cam and motor or the end of what the series can carry. */
    void expand(double timeS, double omegaCarrier, double omegaHammer, double lag, double angle) {
        baseS = timeS;
        carrierSpeed[0] = omegaCarrier;
        hammerSpeed[0] = omegaHammer;
        delta[0] = lag;
        hammerAngle[0] = angle;
        stepS = Steps.forUpper(drive, inverseCarrier, inverseHammer);
        coefficients();
        horizon = Steps.usable(tolerance, Math.max(Series.tail(carrierSpeed), Series.tail(hammerSpeed)));
        watch();
    }

    private void coefficients() {
        boolean held = drive.isCarrierHeld();
        double stiffness = drive.camStiffness;
        double damping = drive.camDamping;
        double slope = drive.motorSlope;
        double carrier = carrierSpeed[0];
        double hammer = hammerSpeed[0];
        double cam = drive.camTorque(delta[0], carrier - hammer);
        double onCarrier = held ? 0 : drive.netOnCarrier(carrier, drive.motorTorque(carrier), cam);
        for (int k = 0; k < Series.ORDER; k++) {
            double r = stepS * Series.RECIPROCAL[k + 1];
            double lag = r * (carrier - hammer);
            hammerAngle[k + 1] = r * hammer;
            carrier = r * inverseCarrier * onCarrier;
            hammer = r * inverseHammer * cam;
            carrierSpeed[k + 1] = carrier;
            hammerSpeed[k + 1] = hammer;
            delta[k + 1] = lag;
            cam = stiffness * lag + damping * (carrier - hammer);
            onCarrier = held ? 0 : -slope * carrier - cam;
        }
    }

    private void watch() {
        double best = horizon;
        event = Event.NONE;
        double t = Series.firstFall(delta, -1, drive.deltaHigh, 0, best, scratch);
        if (t <= best) {
            best = t;
            event = Event.CAM_ABOVE;
        }
        t = Series.firstFall(delta, 1, drive.deltaLow, 0, best, scratch);
        if (t <= best) {
            best = t;
            event = Event.CAM_BELOW;
        }
        if (drive.isCarrierHeld()) {
            watchHeldCarrier(best);
            return;
        }
        t = Series.firstFall(carrierSpeed, -1, drive.speedHigh, 0, best, scratch);
        if (t <= best) {
            best = t;
            event = Event.MOTOR_ABOVE;
        }
        t = Series.firstFall(carrierSpeed, 1, drive.speedLow, 0, best, scratch);
        if (t <= best) {
            best = t;
            event = Event.MOTOR_BELOW;
        }
        endS = baseS + best * stepS;
    }

    private void watchHeldCarrier(double soFar) {
        double best = soFar;
        double[] cam = heldCamTorque;
        for (int k = 0; k <= Series.ORDER; k++) {
            cam[k] = drive.camStiffness * delta[k] - drive.camDamping * hammerSpeed[k];
        }
        cam[0] += drive.camConstant;
        double t = Series.firstFall(cam, -1, drive.dragTorque(), 0, best, scratch);
        if (t <= best) {
            best = t;
            event = Event.CARRIER_BACK;
        }
        t = Series.firstFall(cam, 1, -drive.dragTorque(), 0, best, scratch);
        if (t <= best) {
            best = t;
            event = Event.CARRIER_ON;
        }
        endS = baseS + best * stepS;
    }

    private final double[] heldCamTorque = Series.allocate();

    /** First time in [fromS, toS] at which the hammer angle rises through a level; infinite if it does not. */
    double reachesS(double level, double fromS, double toS) {
        double t = Series.firstFall(hammerAngle, -1, level, tau(fromS), tau(toS), scratch);
        return t == Series.NEVER ? t : baseS + t * stepS;
    }

    /** Bound on the hammer's speed within the series. */
    double fastestHammer() {
        return Math.abs(hammerSpeed[0]) + Series.excursion(hammerSpeed, horizon);
    }

    private double tau(double timeS) {
        return (timeS - baseS) / stepS;
    }

    double carrierSpeed(double timeS) {
        return Series.value(carrierSpeed, tau(timeS));
    }

    double hammerSpeed(double timeS) {
        return Series.value(hammerSpeed, tau(timeS));
    }

    double delta(double timeS) {
        return Series.value(delta, tau(timeS));
    }

    double hammerAngle(double timeS) {
        return Series.value(hammerAngle, tau(timeS));
    }

    void copyFrom(Upper other) {
        copy(other.carrierSpeed, carrierSpeed);
        copy(other.hammerSpeed, hammerSpeed);
        copy(other.delta, delta);
        copy(other.hammerAngle, hammerAngle);
        inverseCarrier = other.inverseCarrier;
        inverseHammer = other.inverseHammer;
        tolerance = other.tolerance;
        baseS = other.baseS;
        stepS = other.stepS;
        horizon = other.horizon;
        endS = other.endS;
        event = other.event;
    }

    private static void copy(double[] from, double[] to) {
        System.arraycopy(from, 0, to, 0, to.length);
    }
}
