package org.shutoffbench.plant;

import org.shutoffbench.tool.ImpactTool;

/** Carrier and hammer on their cam while no lug force acts: a series with a clock of its own. */
final class Upper {

    private final double[] carrierSpeed = Series.allocate();
    private final double[] hammerSpeed = Series.allocate();
    private final double[] delta = Series.allocate();
    private final double[] hammerAngle = Series.allocate();
    private final double[] scratch = Series.allocate();
    private final EventSearch search = new EventSearch();

    private final MotorAndCam drive;
    private double inverseCarrier;
    private double inverseHammer;
    private double perTolerance;

    /** Base of the series. */
    double baseS;

    private double stepS;
    private double perStep;
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
        perTolerance = 1 / speedTolerance;
    }

    /** Expands from a state; the end is the first event of cam and motor or the end of what the series can carry. */
    void expand(double timeS, double omegaCarrier, double omegaHammer, double lag, double angle) {
        baseS = timeS;
        carrierSpeed[0] = omegaCarrier;
        hammerSpeed[0] = omegaHammer;
        delta[0] = lag;
        hammerAngle[0] = angle;
        stepS = drive.stepS;
        perStep = 1 / stepS;
        coefficients();
        horizon = Steps.usable(perTolerance, Math.max(Series.tail(carrierSpeed), Series.tail(hammerSpeed)));
        watch();
    }

    private void coefficients() {
        double perCarrier = drive.isCarrierHeld() ? 0 : inverseCarrier;
        double carrierByCarrier = -perCarrier * (drive.camDamping + drive.motorSlope);
        double carrierByHammer = perCarrier * drive.camDamping;
        double carrierByLag = -perCarrier * drive.camStiffness;
        double hammerByCarrier = inverseHammer * drive.camDamping;
        double hammerByLag = inverseHammer * drive.camStiffness;
        double carrier = carrierSpeed[0];
        double hammer = hammerSpeed[0];
        double cam = drive.camTorque(delta[0], carrier - hammer);
        double nextCarrier = perCarrier * drive.netOnCarrier(carrier, drive.motorTorque(carrier), cam);
        double nextHammer = inverseHammer * cam;
        for (int k = 1; ; k++) {
            double r = stepS * Series.RECIPROCAL[k];
            double lag = r * (carrier - hammer);
            hammerAngle[k] = r * hammer;
            carrier = r * nextCarrier;
            hammer = r * nextHammer;
            carrierSpeed[k] = carrier;
            hammerSpeed[k] = hammer;
            delta[k] = lag;
            if (k == Series.ORDER) {
                return;
            }
            nextCarrier = Math.fma(carrierByCarrier, carrier, Math.fma(carrierByHammer, hammer, carrierByLag * lag));
            nextHammer = Math.fma(hammerByCarrier, carrier, Math.fma(-hammerByCarrier, hammer, hammerByLag * lag));
        }
    }

    private void watch() {
        search.begin(horizon);
        watchBand(delta, drive.deltaLow, Event.CAM_BELOW, drive.deltaHigh, Event.CAM_ABOVE);
        if (drive.isCarrierHeld()) {
            search.watchHeldCarrier(drive, delta, hammerSpeed);
        } else {
            watchBand(carrierSpeed, drive.speedLow, Event.MOTOR_BELOW, drive.speedHigh, Event.MOTOR_ABOVE);
        }
        event = search.event;
        endS = baseS + search.first * stepS;
    }

    /** Looks for the first way out of a band; the side on which the series ends up goes first, it shortens the other search. */
    private void watchBand(double[] c, double low, int below, double high, int above) {
        if (Series.staysWithin(c, low, high, search.first)) {
            return;
        }
        if (Series.value(c, search.first) > 0.5 * (low + high)) {
            search.watch(above, c, -1, high);
            search.watch(below, c, 1, low);
        } else {
            search.watch(below, c, 1, low);
            search.watch(above, c, -1, high);
        }
    }

    /** First time in [fromS, toS] at which the hammer angle rises through a level; infinite if it does not. */
    double reachesS(double level, double fromS, double toS) {
        double t = Series.firstFall(hammerAngle, -1, level, tau(fromS), tau(toS), scratch);
        return t == Series.NEVER ? t : baseS + t * stepS;
    }

    /**
     * First time in [fromS, toS] at which the hammer catches up with something that slows evenly; infinite if it does not.
     *
     * @param angle its angle at fromS, rad
     * @param speed its speed at fromS, rad/s
     * @param slowing what it loses in speed, rad/s2
     */
    double catchesS(double angle, double speed, double slowing, double fromS, double toS) {
        double since = baseS - fromS;
        System.arraycopy(hammerAngle, 0, ahead, 0, ahead.length);
        ahead[0] -= angle + since * (speed - 0.5 * slowing * since);
        ahead[1] -= (speed - slowing * since) * stepS;
        ahead[2] += 0.5 * slowing * stepS * stepS;
        double t = Series.firstFall(ahead, -1, 0, tau(fromS), tau(toS), scratch);
        return t == Series.NEVER ? t : baseS + t * stepS;
    }

    private final double[] ahead = Series.allocate();

    /** Bound on the hammer's acceleration up to a time. */
    double fiercestHammer(double untilS) {
        return Series.steepest(hammerSpeed, tau(untilS)) * perStep;
    }

    private double tau(double timeS) {
        return (timeS - baseS) * perStep;
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
        perTolerance = other.perTolerance;
        baseS = other.baseS;
        stepS = other.stepS;
        perStep = other.perStep;
        horizon = other.horizon;
        endS = other.endS;
        event = other.event;
    }

    private static void copy(double[] from, double[] to) {
        System.arraycopy(from, 0, to, 0, to.length);
    }
}
