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
    private final EventSearch search = new EventSearch();

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
    private double perTolerance;
    private double contactStepS;
    private double apartStepS;

    double baseS;
    double nutAngle;
    private double stepS;
    private double perStep;
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
        perTolerance = 1 / speedTolerance;
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
        boolean contact = lug == CONTACT;
        stepS = Math.min(contact ? contactStepS : apartStepS, drive.stepS);
        coefficients(contact);
        perStep = 1 / stepS;
        if (lugForceIsZero) {
            lugTorque[0] = 0;
        }
        horizon = Steps.usable(
                perTolerance,
                Math.max(
                        Math.max(Series.tail(carrierSpeed), Series.tail(hammerSpeed)),
                        Math.max(Series.tail(anvilSpeed), Series.tail(nutSpeed))));
        watch(lug);
    }

    /**
     * Every speed's next coefficient is one row of a matrix times the present coefficients; rows are written so that the
     * newest value enters last, since the chain from order to order is what a step waits for.
     */
    private void coefficients(boolean contact) {
        boolean sliding = nut.direction != 0;
        boolean curved = nut.r2 != 0;
        double perCarrier = drive.isCarrierHeld() ? 0 : inverseCarrier;
        double perNut = sliding ? inverseNut : 0;
        double camSpring = drive.camStiffness;
        double camDamper = drive.camDamping;
        double lugSpring = contact ? lugStiffness : 0;
        double lugDamper = contact ? lugDamping : 0;
        double carrierByCarrier = -perCarrier * (camDamper + drive.motorSlope);
        double carrierByHammer = perCarrier * camDamper;
        double carrierByLag = -perCarrier * camSpring;
        double hammerByCarrier = inverseHammer * camDamper;
        double hammerByHammer = -inverseHammer * (camDamper + lugDamper);
        double hammerByAnvil = inverseHammer * lugDamper;
        double hammerByLag = inverseHammer * camSpring;
        double hammerByGap = -inverseHammer * lugSpring;
        double anvilByHammer = inverseAnvil * lugDamper;
        double anvilByAnvil = -inverseAnvil * (lugDamper + socketDamping);
        double anvilByNut = inverseAnvil * socketDamping;
        double anvilByGap = inverseAnvil * lugSpring;
        double anvilByTwist = -inverseAnvil * socketStiffness;
        double nutByAnvil = perNut * socketDamping;
        double nutByTwist = perNut * socketStiffness;
        double nutByTurn = -perNut * nut.r1;

        double carrier = carrierSpeed[0];
        double hammer = hammerSpeed[0];
        double anvil = anvilSpeed[0];
        double ofNut = nutSpeed[0];
        double cam = drive.camTorque(delta[0], carrier - hammer);
        double pressed = lugSpring * psi[0] + lugDamper * (hammer - anvil);
        double ofSocket = socketStiffness * twist[0] + socketDamping * (anvil - ofNut);
        double onNut = !sliding ? 0 : ofNut == 0 ? nut.netAtRest(ofSocket) : ofSocket - nut.r0;
        double nextCarrier = perCarrier * drive.netOnCarrier(carrier, drive.motorTorque(carrier), cam);
        double nextHammer = inverseHammer * (cam - pressed);
        double nextAnvil = inverseAnvil * (pressed - ofSocket);
        double nextNut = perNut * onNut;
        for (int k = 1; ; k++) {
            double r = stepS * Series.RECIPROCAL[k];
            double lag = r * (carrier - hammer);
            double gap = r * (hammer - anvil);
            double phi = r * (anvil - ofNut);
            double angle = r * ofNut;
            carrier = r * nextCarrier;
            hammer = r * nextHammer;
            anvil = r * nextAnvil;
            ofNut = r * nextNut;
            carrierSpeed[k] = carrier;
            hammerSpeed[k] = hammer;
            anvilSpeed[k] = anvil;
            nutSpeed[k] = ofNut;
            delta[k] = lag;
            psi[k] = gap;
            twist[k] = phi;
            turn[k] = angle;
            if (k == Series.ORDER) {
                break;
            }
            nextCarrier = Math.fma(carrierByCarrier, carrier, Math.fma(carrierByHammer, hammer, carrierByLag * lag));
            nextHammer = Math.fma(
                    hammerByAnvil,
                    anvil,
                    Math.fma(
                            hammerByHammer,
                            hammer,
                            Math.fma(hammerByCarrier, carrier, Math.fma(hammerByGap, gap, hammerByLag * lag))));
            nextAnvil = Math.fma(
                    anvilByHammer,
                    hammer,
                    Math.fma(
                            anvilByAnvil,
                            anvil,
                            Math.fma(anvilByNut, ofNut, Math.fma(anvilByTwist, phi, anvilByGap * gap))));
            nextNut = Math.fma(
                    nutByAnvil, anvil, Math.fma(-nutByAnvil, ofNut, Math.fma(nutByTwist, phi, nutByTurn * angle)));
            if (curved) {
                nextNut -= perNut * nut.r2 * Lower.square(turn, k);
            }
        }
        followTorques();
    }

    /** Torque through lugs and socket, as if the lugs pressed. */
    private void followTorques() {
        for (int k = 0; k <= Series.ORDER; k++) {
            lugTorque[k] = Math.fma(lugDamping, hammerSpeed[k] - anvilSpeed[k], lugStiffness * psi[k]);
            socketTorque[k] = Math.fma(socketDamping, anvilSpeed[k] - nutSpeed[k], socketStiffness * twist[k]);
        }
    }

    /** Bounds everything in one pass; only what may reach its limit is looked at closely. */
    private void watch(int lug) {
        search.begin(horizon);
        boolean stuck = nut.direction == 0;
        double[] lugWatch = lug == FREE ? psi : lugTorque;
        double part = horizon;
        if (!(Math.min(drive.deltaHigh - delta[0], delta[0] - drive.deltaLow) > Series.excursion(delta, part))) {
            search.watch(Event.CAM_ABOVE, delta, -1, drive.deltaHigh);
            search.watch(Event.CAM_BELOW, delta, 1, drive.deltaLow);
        }
        if (drive.isCarrierHeld()
                || !(Math.min(drive.speedHigh - carrierSpeed[0], carrierSpeed[0] - drive.speedLow)
                        > Series.excursion(carrierSpeed, part))) {
            watchCarrier();
        }
        if (stuck) {
            double on = nut.slipLimitOn(nutAngle) - socketTorque[0];
            double back = nut.slipLimitOff(nutAngle) + socketTorque[0];
            if (!(Math.min(on, back) > Series.excursion(socketTorque, part))
                    && !Series.staysWithin(
                            socketTorque, -nut.slipLimitOff(nutAngle), nut.slipLimitOn(nutAngle), part)) {
                search.watch(Event.NUT_SLIPS_ON, socketTorque, -1, nut.slipLimitOn(nutAngle));
                search.watch(Event.NUT_SLIPS_BACK, socketTorque, 1, -nut.slipLimitOff(nutAngle));
            }
        } else {
            if (!(nut.direction * nutSpeed[0] > Series.excursion(nutSpeed, part))) {
                search.watch(Event.NUT_STOPS, nutSpeed, nut.direction, 0);
            }
            if (!(nut.direction * nut.reach > Series.excursion(turn, part))) {
                search.watch(Event.LAW, turn, -nut.direction, nut.reach);
            }
        }
        if (lug == OPEN || !(Math.abs(lugWatch[0]) > Series.excursion(lugWatch, part))) {
            watchLug(lug);
        }
        event = search.event;
        endS = baseS + search.first * stepS;
    }

    private void watchCarrier() {
        if (drive.isCarrierHeld()) {
            search.watchHeldCarrier(drive, delta, hammerSpeed);
        } else {
            search.watch(Event.MOTOR_ABOVE, carrierSpeed, -1, drive.speedHigh);
            search.watch(Event.MOTOR_BELOW, carrierSpeed, 1, drive.speedLow);
        }
    }

    private void watchLug(int lug) {
        switch (lug) {
            case FREE -> search.watch(Event.TOUCH, psi, -1, 0);
            case CONTACT -> search.watch(Event.PART, lugTorque, 1, 0);
            default -> {
                search.watch(Event.CLEAR, psi, 1, 0);
                search.watch(Event.RESUME, lugTorque, -1, 0);
            }
        }
    }

    double at(double[] c, double timeS) {
        return Series.value(c, (timeS - baseS) * perStep);
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
        perTolerance = other.perTolerance;
        contactStepS = other.contactStepS;
        apartStepS = other.apartStepS;
        baseS = other.baseS;
        nutAngle = other.nutAngle;
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
