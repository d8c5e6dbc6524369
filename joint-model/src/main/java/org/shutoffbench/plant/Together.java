package org.shutoffbench.plant;

import org.shutoffbench.tool.ImpactTool;

/**
 * All four bodies on one clock: in lug contact, with the lugs open without force, or near each other.
 *
 * <p>The gap psi and the socket's twist are states of their own: taken from absolute angles they would carry rounding
 * errors large enough to make the contact chatter.
 */
final class Together {

    static final int FREE = 0;
    static final int CONTACT = 1;
    static final int OPEN = 2;

    final double[] carrierSpeed = Series.allocate();
    final double[] hammerSpeed = Series.allocate();
    final double[] anvilSpeed = Series.allocate();
    final double[] nutSpeed = Series.allocate();
    final double[] delta = Series.allocate();
    final double[] psi = Series.allocate();
    final double[] twist = Series.allocate();
    final double[] turn = Series.allocate();
    final double[] lugTorque = Series.allocate();
    final double[] socketTorque = Series.allocate();
    private final double[] turnSquared = Series.allocate();
    private final double[] heldCamTorque = Series.allocate();
    private final double[] scratch = Series.allocate();

    private final MotorAndCam drive;
    private final NutFriction nut;
    private double inverseCarrier;
    private double inverseHammer;
    private double inverseAnvil;
    private double inverseNut;
    private double lugStiffness;
    private double lugDamping;
    private double socketStiffness;
    private double socketDamping;
    private double tolerance;
    private double contactStepS;
    private double apartStepS;

    double baseS;
    double nutAngle;
    private double stepS;
    private double horizon;
    double endS;
    int event;

    Together(MotorAndCam drive, NutFriction nut) {
        this.drive = drive;
        this.nut = nut;
    }

    void start(ImpactTool tool, double speedTolerance) {
        inverseCarrier = 1 / tool.motor().inertiaKgM2();
        inverseHammer = 1 / tool.hammer().inertiaKgM2();
        inverseAnvil = 1 / tool.socket().anvilInertiaKgM2();
        inverseNut = 1 / tool.socket().nutInertiaKgM2();
        lugStiffness = tool.hammer().lugStiffnessNmPerRad();
        lugDamping = tool.hammer().lugDampingNmSPerRad();
        socketStiffness = tool.socket().stiffnessNmPerRad();
        socketDamping = tool.socket().dampingNmSPerRad();
        tolerance = speedTolerance;
        double lug = inverseHammer + inverseAnvil;
        double socket = inverseAnvil + inverseNut;
        double socketRate = Steps.rate(socketStiffness * socket, socketDamping * socket);
        double lugRate = Steps.rate(lugStiffness * lug, lugDamping * lug);
        contactStepS = Steps.forRate(Math.sqrt(lugRate * lugRate + socketRate * socketRate));
        apartStepS = Steps.forRate(socketRate);
    }

    /**
     * Expands from the constant terms of the speeds, delta, psi and twist, which the caller has set.
     *
     * @param lug FREE, CONTACT or OPEN
     * @param lugForceIsZero the lug force passes zero at this very instant
     */
    void expand(double timeS, double angle, int lug, boolean lugForceIsZero) {
        baseS = timeS;
        nutAngle = angle;
        turn[0] = 0;
        nut.look(angle);
        stepS = lug == CONTACT ? contactStepS : apartStepS;
        double upper = Steps.forUpper(drive, inverseCarrier, inverseHammer);
        stepS = Math.min(stepS, upper);
        coefficients(lug);
        if (lugForceIsZero) {
            lugTorque[0] = 0;
        }
        horizon = Math.min(
                Steps.usable(tolerance, hammerSpeed, anvilSpeed), Steps.usable(tolerance, carrierSpeed, nutSpeed));
        watch(lug);
    }

    private void coefficients(int lug) {
        boolean held = drive.isCarrierHeld();
        boolean contact = lug == CONTACT;
        boolean sliding = nut.direction != 0;
        double cam = drive.camTorque(delta[0], carrierSpeed[0] - hammerSpeed[0]);
        double motor = drive.motorTorque(carrierSpeed[0]);
        for (int k = 0; k <= Series.ORDER; k++) {
            double ofLug = lugStiffness * psi[k] + lugDamping * (hammerSpeed[k] - anvilSpeed[k]);
            double ofSocket = socketStiffness * twist[k] + socketDamping * (anvilSpeed[k] - nutSpeed[k]);
            lugTorque[k] = ofLug;
            socketTorque[k] = ofSocket;
            if (k == Series.ORDER) {
                return;
            }
            if (k > 0) {
                cam = drive.camStiffness * delta[k] + drive.camDamping * (carrierSpeed[k] - hammerSpeed[k]);
                motor = -drive.motorSlope * carrierSpeed[k];
            }
            double onHammer = contact ? cam - ofLug : cam;
            double onAnvil = contact ? ofLug - ofSocket : -ofSocket;
            double r = stepS * Series.RECIPROCAL[k + 1];
            carrierSpeed[k + 1] = held
                    ? 0
                    : r * inverseCarrier * (k == 0 ? drive.netOnCarrier(carrierSpeed[0], motor, cam) : motor - cam);
            hammerSpeed[k + 1] = r * inverseHammer * onHammer;
            anvilSpeed[k + 1] = r * inverseAnvil * onAnvil;
            nutSpeed[k + 1] = sliding ? r * inverseNut * onNut(k, ofSocket) : 0;
            delta[k + 1] = r * (carrierSpeed[k] - hammerSpeed[k]);
            psi[k + 1] = r * (hammerSpeed[k] - anvilSpeed[k]);
            twist[k + 1] = r * (anvilSpeed[k] - nutSpeed[k]);
            turn[k + 1] = r * nutSpeed[k];
        }
    }

    private double onNut(int k, double ofSocket) {
        if (k == 0 && nutSpeed[0] == 0) {
            return nut.netAtRest(ofSocket);
        }
        return ofSocket - Lower.resistance(nut, turn, turnSquared, k);
    }

    private double best;

    private void watch(int lug) {
        best = horizon;
        event = Event.NONE;
        watchFor(Event.CAM_ABOVE, delta, -1, drive.deltaHigh);
        watchFor(Event.CAM_BELOW, delta, 1, drive.deltaLow);
        watchCarrier();
        watchNut();
        watchLug(lug);
        endS = baseS + best * stepS;
    }

    private void watchFor(int what, double[] c, double sign, double level) {
        double t = Series.firstFall(c, sign, level, 0, best, scratch);
        if (t <= best) {
            best = t;
            event = what;
        }
    }

    private void watchCarrier() {
        if (!drive.isCarrierHeld()) {
            watchFor(Event.MOTOR_ABOVE, carrierSpeed, -1, drive.speedHigh);
            watchFor(Event.MOTOR_BELOW, carrierSpeed, 1, drive.speedLow);
            return;
        }
        for (int k = 0; k <= Series.ORDER; k++) {
            heldCamTorque[k] = drive.camStiffness * delta[k] - drive.camDamping * hammerSpeed[k];
        }
        heldCamTorque[0] += drive.camConstant;
        watchFor(Event.CARRIER_BACK, heldCamTorque, -1, drive.dragTorque());
        watchFor(Event.CARRIER_ON, heldCamTorque, 1, -drive.dragTorque());
    }

    private void watchNut() {
        if (nut.direction == 0) {
            watchFor(Event.NUT_SLIPS_ON, socketTorque, -1, nut.slipLimitOn(nutAngle));
            watchFor(Event.NUT_SLIPS_BACK, socketTorque, 1, -nut.slipLimitOff(nutAngle));
        } else {
            watchFor(Event.NUT_STOPS, nutSpeed, nut.direction, 0);
            watchFor(Event.LAW, turn, -nut.direction, nut.reach);
        }
    }

    private void watchLug(int lug) {
        switch (lug) {
            case FREE -> watchFor(Event.TOUCH, psi, -1, 0);
            case CONTACT -> watchFor(Event.PART, lugTorque, 1, 0);
            default -> {
                watchFor(Event.CLEAR, psi, 1, 0);
                watchFor(Event.RESUME, lugTorque, -1, 0);
            }
        }
    }

    double at(double[] c, double timeS) {
        return Series.value(c, (timeS - baseS) / stepS);
    }

    /** Duration of a step without lug contact, s. */
    double apartStepS() {
        return apartStepS;
    }

    void copyFrom(Together other) {
        copy(other.carrierSpeed, carrierSpeed);
        copy(other.hammerSpeed, hammerSpeed);
        copy(other.anvilSpeed, anvilSpeed);
        copy(other.nutSpeed, nutSpeed);
        copy(other.delta, delta);
        copy(other.psi, psi);
        copy(other.twist, twist);
        copy(other.turn, turn);
        copy(other.lugTorque, lugTorque);
        copy(other.socketTorque, socketTorque);
        inverseCarrier = other.inverseCarrier;
        inverseHammer = other.inverseHammer;
        inverseAnvil = other.inverseAnvil;
        inverseNut = other.inverseNut;
        lugStiffness = other.lugStiffness;
        lugDamping = other.lugDamping;
        socketStiffness = other.socketStiffness;
        socketDamping = other.socketDamping;
        tolerance = other.tolerance;
        contactStepS = other.contactStepS;
        apartStepS = other.apartStepS;
        baseS = other.baseS;
        nutAngle = other.nutAngle;
        stepS = other.stepS;
        horizon = other.horizon;
        endS = other.endS;
        event = other.event;
    }

    private static void copy(double[] from, double[] to) {
        System.arraycopy(from, 0, to, 0, to.length);
    }
}
