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
    private final double[] heldCamTorque = Series.allocate();
    private final double[] scratch = Series.allocate();

    /** Anvil, socket and nut each on their own. */
    private static final int FULL = 0;
    /** Anvil and nut turn as one, the hammer flies. */
    private static final int LUMPED = 1;
    /** Hammer, anvil and nut turn as one. */
    private static final int RIGID = 2;

    /** A lumped socket rings less than this, rad. */
    private static final double LUMPED_RINGING_RAD = 1e-12;
    /** Rigid contact: ringing torque over lug torque. */
    private static final double RIGID_RINGING = 1e-7;
    /** Creep of lugs and socket is parts per thousand of the speed; each pass gains as many digits. */
    private static final int CREEP_PASSES = 3;
    /** Lugs nearer than this are not lumped, rad. */
    private static final double LUMPED_GAP_RAD = 1e-6;

    private final MotorAndCam drive;
    private final NutFriction nut;
    private double carrierInertia;
    private double hammerInertia;
    private double anvilInertia;
    private double nutInertia;
    private double socketRate;
    private int bodies;
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
        carrierInertia = tool.motor().inertiaKgM2();
        hammerInertia = tool.hammer().inertiaKgM2();
        anvilInertia = tool.socket().anvilInertiaKgM2();
        nutInertia = tool.socket().nutInertiaKgM2();
        inverseCarrier = 1 / carrierInertia;
        inverseHammer = 1 / hammerInertia;
        inverseAnvil = 1 / anvilInertia;
        inverseNut = 1 / nutInertia;
        lugStiffness = tool.hammer().lugStiffnessNmPerRad();
        lugDamping = tool.hammer().lugDampingNmSPerRad();
        socketStiffness = tool.socket().stiffnessNmPerRad();
        socketDamping = tool.socket().dampingNmSPerRad();
        tolerance = speedTolerance;
        double lug = inverseHammer + inverseAnvil;
        double socket = inverseAnvil + inverseNut;
        socketRate = Steps.rate(socketStiffness * socket, socketDamping * socket);
        double lugRate = Steps.rate(lugStiffness * lug, lugDamping * lug);
        contactStepS = Steps.forRate(Math.sqrt(lugRate * lugRate + socketRate * socketRate));
        apartStepS = Steps.forRate(socketRate);
    }

    /**
     * Expands from the constant terms of the speeds, delta, psi and twist, which the caller has set.
     *
     * @param lug FREE, CONTACT or OPEN
     * @param afterEvent something has just changed: the fast modes are followed for a step at least
     * @param lugForceIsZero the lug force passes zero at this very instant
     */
    void expand(double timeS, double angle, int lug, boolean lugForceIsZero, boolean afterEvent) {
        baseS = timeS;
        nutAngle = angle;
        turn[0] = 0;
        nut.look(angle);
        bodies = chooseBodies(lug, afterEvent);
        switch (bodies) {
            case FULL -> {
                double upper = Steps.forUpper(drive, inverseCarrier, inverseHammer);
                stepS = Math.min(lug == CONTACT ? contactStepS : apartStepS, upper);
                expandFull(lug == CONTACT);
            }
            case LUMPED -> {
                stepS = Steps.forUpper(drive, inverseCarrier, inverseHammer);
                expandLumped();
            }
            default -> {
                stepS = rigidStepS();
                expandRigid();
            }
        }
        if (lugForceIsZero) {
            lugTorque[0] = 0;
        }
        horizon = Steps.usable(
                tolerance,
                Math.max(
                        Math.max(Series.tail(carrierSpeed), Series.tail(hammerSpeed)),
                        Math.max(Series.tail(anvilSpeed), Series.tail(nutSpeed))));
        watch(lug);
    }

    /**
     * Every speed's next coefficient is one row of a matrix times the present coefficients; rows are written so that the
     * newest value enters last, since the chain from order to order is what a step waits for.
     */
    private void expandFull(boolean contact) {
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

    /** Which bodies turn as one: a nut that runs down freely lets the fast modes die and follows slowly. */
    private int chooseBodies(int lug, boolean afterEvent) {
        if (afterEvent || nut.direction <= 0 || lug == OPEN || !nut.isRunningDown(socketStiffness)) {
            return FULL;
        }
        double torqueRate = nut.r1 * nutSpeed[0];
        if (lug == FREE) {
            double still = lumpedSocketTorque(nut.r0) / socketStiffness;
            double creep = lumpedSocketTorque(torqueRate) / socketStiffness;
            double slip = Math.abs(anvilSpeed[0] - nutSpeed[0] - creep);
            boolean rests = Math.abs(twist[0] - still) + slip / socketRate < LUMPED_RINGING_RAD;
            if (!rests || psi[0] > -LUMPED_GAP_RAD) {
                return FULL;
            }
            lump(still);
            return LUMPED;
        }
        double cam = drive.camTorque(delta[0], carrierSpeed[0] - hammerSpeed[0]);
        double acceleration = (cam - nut.r0) / (hammerInertia + anvilInertia + nutInertia);
        double ofLug = cam - hammerInertia * acceleration;
        double ofSocket = nutInertia * acceleration + nut.r0;
        double creep = torqueRate / socketStiffness;
        double ringing = Math.abs(lugStiffness * psi[0] - ofLug)
                + lugDamping * Math.abs(hammerSpeed[0] - anvilSpeed[0])
                + Math.abs(socketStiffness * twist[0] - ofSocket)
                + (socketDamping + socketStiffness / socketRate) * Math.abs(anvilSpeed[0] - nutSpeed[0] - creep);
        if (ringing > RIGID_RINGING * ofLug) {
            return FULL;
        }
        unite(ofLug / lugStiffness, ofSocket / socketStiffness);
        return RIGID;
    }

    /** Socket torque that slows the anvil down with a nut under friction. */
    private double lumpedSocketTorque(double friction) {
        return anvilInertia / (anvilInertia + nutInertia) * friction;
    }

    /** Anvil and nut move on about their centre of mass; their momentum stays. */
    private void lump(double phi) {
        double share = anvilInertia / (anvilInertia + nutInertia);
        double shift = share * (twist[0] - phi);
        psi[0] += twist[0] - phi - shift;
        settle(phi, shift);
    }

    /** Hammer, anvil and nut move on about their centre of mass; their momentum stays. */
    private void unite(double gap, double phi) {
        double whole = hammerInertia + anvilInertia + nutInertia;
        double shift = ((anvilInertia + hammerInertia) * (twist[0] - phi) + hammerInertia * (psi[0] - gap)) / whole;
        delta[0] += psi[0] - gap + twist[0] - phi - shift;
        psi[0] = gap;
        settle(phi, shift);
    }

    private void settle(double phi, double shift) {
        twist[0] = phi;
        nutAngle += shift;
        nut.look(nutAngle);
    }

    /** The momentum of anvil and nut decides; the anvil gains on the nut as the socket winds up. */
    private void expandLumped() {
        boolean held = drive.isCarrierHeld();
        double whole = anvilInertia + nutInertia;
        double cam = drive.camTorque(delta[0], carrierSpeed[0] - hammerSpeed[0]);
        double onCarrier = held ? 0 : drive.netOnCarrier(carrierSpeed[0], drive.motorTorque(carrierSpeed[0]), cam);
        double friction = nut.r0;
        double momentum = anvilInertia * anvilSpeed[0] + nutInertia * nutSpeed[0];
        lugTorque[0] = 0;
        socketTorque[0] = lumpedSocketTorque(friction);
        for (int k = 0; k < Series.ORDER; k++) {
            double r = stepS * Series.RECIPROCAL[k + 1];
            double creep = 0;
            double nextFriction = 0;
            for (int i = 0; i < CREEP_PASSES; i++) {
                nutSpeed[k] = (momentum - anvilInertia * creep) / whole;
                turn[k + 1] = r * nutSpeed[k];
                nextFriction = nut.r1 * turn[k + 1];
                socketTorque[k + 1] = lumpedSocketTorque(nextFriction);
                twist[k + 1] = socketTorque[k + 1] / socketStiffness;
                creep = twist[k + 1] / r;
            }
            anvilSpeed[k] = nutSpeed[k] + creep;
            carrierSpeed[k + 1] = r * inverseCarrier * onCarrier;
            hammerSpeed[k + 1] = r * inverseHammer * cam;
            delta[k + 1] = r * (carrierSpeed[k] - hammerSpeed[k]);
            psi[k + 1] = r * (hammerSpeed[k] - anvilSpeed[k]);
            cam = drive.camStiffness * delta[k + 1] + drive.camDamping * (carrierSpeed[k + 1] - hammerSpeed[k + 1]);
            onCarrier = held ? 0 : -drive.motorSlope * carrierSpeed[k + 1] - cam;
            momentum = -r * friction;
            friction = nextFriction;
            lugTorque[k + 1] = 0;
        }
        nutSpeed[Series.ORDER] = momentum / whole;
        anvilSpeed[Series.ORDER] = nutSpeed[Series.ORDER];
    }

    /** The momentum of all three decides; hammer and anvil gain on the nut as lugs and socket wind up. */
    private void expandRigid() {
        boolean held = drive.isCarrierHeld();
        double whole = hammerInertia + anvilInertia + nutInertia;
        double cam = drive.camTorque(delta[0], carrierSpeed[0] - hammerSpeed[0]);
        double onCarrier = held ? 0 : drive.netOnCarrier(carrierSpeed[0], drive.motorTorque(carrierSpeed[0]), cam);
        double friction = nut.r0;
        double momentum = hammerInertia * hammerSpeed[0] + anvilInertia * anvilSpeed[0] + nutInertia * nutSpeed[0];
        followRigid(0, cam, friction);
        for (int k = 0; k < Series.ORDER; k++) {
            double r = stepS * Series.RECIPROCAL[k + 1];
            carrierSpeed[k + 1] = r * inverseCarrier * onCarrier;
            double nextMomentum = r * (cam - friction);
            double nextSlip = carrierSpeed[k + 1] - nextMomentum / whole;
            double socketCreep = 0;
            double lugCreep = 0;
            for (int i = 0; i < CREEP_PASSES; i++) {
                nutSpeed[k] =
                        (momentum - (anvilInertia + hammerInertia) * socketCreep - hammerInertia * lugCreep) / whole;
                anvilSpeed[k] = nutSpeed[k] + socketCreep;
                hammerSpeed[k] = anvilSpeed[k] + lugCreep;
                turn[k + 1] = r * nutSpeed[k];
                friction = nut.r1 * turn[k + 1];
                delta[k + 1] = r * (carrierSpeed[k] - hammerSpeed[k]);
                cam = drive.camStiffness * delta[k + 1] + drive.camDamping * nextSlip;
                followRigid(k + 1, cam, friction);
                socketCreep = twist[k + 1] / r;
                lugCreep = psi[k + 1] / r;
            }
            onCarrier = held ? 0 : -drive.motorSlope * carrierSpeed[k + 1] - cam;
            momentum = nextMomentum;
        }
        nutSpeed[Series.ORDER] = momentum / whole;
        anvilSpeed[Series.ORDER] = nutSpeed[Series.ORDER];
        hammerSpeed[Series.ORDER] = nutSpeed[Series.ORDER];
    }

    /** What lugs and socket carry while all turn as one, and how far it bends them. */
    private void followRigid(int k, double cam, double friction) {
        double acceleration = (cam - friction) / (hammerInertia + anvilInertia + nutInertia);
        lugTorque[k] = cam - hammerInertia * acceleration;
        socketTorque[k] = nutInertia * acceleration + friction;
        psi[k] = lugTorque[k] / lugStiffness;
        twist[k] = socketTorque[k] / socketStiffness;
    }

    private double rigidStepS() {
        return Steps.forUpper(drive, inverseCarrier, 1 / (hammerInertia + anvilInertia + nutInertia));
    }

    private double best;

    /** Bounds everything in one pass; only what may reach its limit is looked at closely. */
    private void watch(int lug) {
        best = horizon;
        event = Event.NONE;
        boolean stuck = nut.direction == 0;
        double[] lugWatch = lug == FREE ? psi : lugTorque;
        double part = best;
        if (!(Math.min(drive.deltaHigh - delta[0], delta[0] - drive.deltaLow) > Series.excursion(delta, part))) {
            watchFor(Event.CAM_ABOVE, delta, -1, drive.deltaHigh);
            watchFor(Event.CAM_BELOW, delta, 1, drive.deltaLow);
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
                watchFor(Event.NUT_SLIPS_ON, socketTorque, -1, nut.slipLimitOn(nutAngle));
                watchFor(Event.NUT_SLIPS_BACK, socketTorque, 1, -nut.slipLimitOff(nutAngle));
            }
        } else {
            if (!(nut.direction * nutSpeed[0] > Series.excursion(nutSpeed, part))) {
                watchFor(Event.NUT_STOPS, nutSpeed, nut.direction, 0);
            }
            if (!(nut.direction * nut.reach > Series.excursion(turn, part))) {
                watchFor(Event.LAW, turn, -nut.direction, nut.reach);
            }
        }
        if (lug == OPEN || !(Math.abs(lugWatch[0]) > Series.excursion(lugWatch, part))) {
            watchLug(lug);
        }
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
        carrierInertia = other.carrierInertia;
        hammerInertia = other.hammerInertia;
        anvilInertia = other.anvilInertia;
        nutInertia = other.nutInertia;
        socketRate = other.socketRate;
        bodies = other.bodies;
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
