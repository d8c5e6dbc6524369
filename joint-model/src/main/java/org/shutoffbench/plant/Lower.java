package org.shutoffbench.plant;

import org.shutoffbench.tool.ImpactTool;

/** Anvil, socket and nut while no lug force acts: a series with a clock of its own, or rest. */
final class Lower {

    /** A stuck nut's anvil with less swing than this rests, rad. */
    private static final double RESTING_SWING_RAD = 1e-9;

    /** A shorter glide is not worth beginning, series. */
    private static final double SHORTEST_GLIDE = 1.5;

    private final double[] anvilSpeed = Series.allocate();
    private final double[] nutSpeed = Series.allocate();
    private final double[] twist = Series.allocate();
    private final double[] turn = Series.allocate();
    private final double[] torque = Series.allocate();
    private final EventSearch search = new EventSearch();

    private final NutFriction nut;
    private double inverseAnvil;
    private double inverseNut;
    private double stiffness;
    private double damping;
    private double perTolerance;
    private double ringRate;
    private double stuckStepS;
    private double slidingStepS;

    double baseS;
    double nutAngle;
    private double stepS;
    private double perStep;
    private double horizon;
    double endS;
    int event;
    /** Nothing moves here. */
    boolean still;
    /** The anvil rings on a stuck nut without the strength to move it. */
    boolean ringing;

    /** The nut turns on against a constant torque. */
    boolean gliding;

    private final Ring ring = new Ring();
    final Glide glide = new Glide();

    Lower(NutFriction nut) {
        this.nut = nut;
    }

    void start(ImpactTool tool, double speedTolerance) {
        inverseAnvil = 1 / tool.socket().anvilInertiaKgM2();
        inverseNut = 1 / tool.socket().nutInertiaKgM2();
        stiffness = tool.socket().stiffnessNmPerRad();
        damping = tool.socket().dampingNmSPerRad();
        perTolerance = 1 / speedTolerance;
        ringRate = Steps.rate(stiffness * inverseAnvil, damping * inverseAnvil);
        stuckStepS = Steps.forRate(ringRate);
        ring.start(stiffness, damping, inverseAnvil);
        double both = inverseAnvil + inverseNut;
        slidingStepS = Steps.forRate(Steps.rate(stiffness * both, damping * both));
        glide.start(tool.socket());
        still = false;
        ringing = false;
        gliding = false;
    }

    /** Expands from a state. */
    void expand(double timeS, double omegaAnvil, double omegaNut, double phi, double angle) {
        baseS = timeS;
        nutAngle = angle;
        anvilSpeed[0] = omegaAnvil;
        nutSpeed[0] = omegaNut;
        twist[0] = phi;
        turn[0] = 0;
        nut.look(angle);
        still = rests(nut.direction, phi, omegaAnvil);
        ringing = false;
        gliding = false;
        if (still) {
            endS = Double.POSITIVE_INFINITY;
            event = Event.NONE;
            return;
        }
        if (ringsFreely(angle, phi, omegaAnvil)) {
            ringing = true;
            ring.begin(timeS, phi, omegaAnvil);
            endS = ring.fallenS(RESTING_SWING_RAD / 2);
            event = Event.NONE;
            return;
        }
        if (glides()) {
            endS = glide.begin(timeS, omegaAnvil, omegaNut, phi, nut.r0, nut.reach);
            gliding = endS - timeS > SHORTEST_GLIDE * slidingStepS;
            if (gliding) {
                event = Event.NONE;
                return;
            }
        }
        stepS = nut.direction == 0 ? stuckStepS : slidingStepS;
        perStep = 1 / stepS;
        coefficients();
        horizon = Steps.usable(perTolerance, Math.max(Series.tail(anvilSpeed), Series.tail(nutSpeed)));
        watch();
    }

    /** A stuck nut whose anvil has stopped ringing. */
    boolean rests(int direction, double phi, double omegaAnvil) {
        return direction == 0 && ringRate * Math.abs(phi) + Math.abs(omegaAnvil) < ringRate * RESTING_SWING_RAD;
    }

    /** The nut turns on against a constant torque, and the socket's ringing is known for all times. */
    boolean glides() {
        return nut.turnsEvenly() && glide.isPossible();
    }

    /** The nut is stuck and the swing of the anvil cannot move it. */
    boolean ringsFreely(double angle, double phi, double omegaAnvil) {
        return nut.direction == 0
                && ring.staysBelow(Math.min(nut.slipLimitOn(angle), nut.slipLimitOff(angle)), phi, omegaAnvil);
    }

    /** Bound on the twist of a ringing socket from a time on. */
    double swingFrom(double timeS) {
        return ring.swingFrom(timeS);
    }

    /** Bound on the twist that a state can swing to. */
    double swing(double phi, double omegaAnvil) {
        return ring.swing(phi, omegaAnvil);
    }

    /** Bound on the speed of a ringing anvil with a swing, rad/s. */
    double fastestRinging(double swing) {
        return ringRate * swing;
    }

    /** Socket torque on a nut at rest. */
    double socketTorque(double phi, double omegaAnvil) {
        return stiffness * phi + damping * omegaAnvil;
    }

    private void coefficients() {
        boolean sliding = nut.direction != 0;
        boolean curved = nut.r2 != 0;
        double perNut = sliding ? inverseNut : 0;
        double anvilByAnvil = -inverseAnvil * damping;
        double anvilByTwist = -inverseAnvil * stiffness;
        double nutByAnvil = perNut * damping;
        double nutByTwist = perNut * stiffness;
        double nutByTurn = -perNut * nut.r1;
        double anvil = anvilSpeed[0];
        double ofNut = nutSpeed[0];
        double ofSocket = stiffness * twist[0] + damping * (anvil - ofNut);
        double nextAnvil = -inverseAnvil * ofSocket;
        double nextNut = !sliding ? 0 : perNut * (ofNut == 0 ? nut.netAtRest(ofSocket) : ofSocket - nut.r0);
        torque[0] = ofSocket;
        for (int k = 1; ; k++) {
            double r = stepS * Series.RECIPROCAL[k];
            double phi = r * (anvil - ofNut);
            double angle = r * ofNut;
            anvil = r * nextAnvil;
            ofNut = r * nextNut;
            anvilSpeed[k] = anvil;
            nutSpeed[k] = ofNut;
            twist[k] = phi;
            turn[k] = angle;
            torque[k] = Math.fma(damping, anvil - ofNut, stiffness * phi);
            if (k == Series.ORDER) {
                return;
            }
            nextAnvil = Math.fma(anvilByAnvil, anvil, Math.fma(-anvilByAnvil, ofNut, anvilByTwist * phi));
            nextNut = Math.fma(
                    nutByAnvil, anvil, Math.fma(-nutByAnvil, ofNut, Math.fma(nutByTwist, phi, nutByTurn * angle)));
            if (curved) {
                nextNut -= perNut * nut.r2 * square(turn, k);
            }
        }
    }

    /** Coefficient k of the square of a series without constant term. */
    static double square(double[] c, int k) {
        double sum = 0;
        for (int i = 1; i < k; i++) {
            sum += c[i] * c[k - i];
        }
        return sum;
    }

    private void watch() {
        search.begin(horizon);
        if (nut.direction == 0) {
            search.watch(Event.NUT_SLIPS_ON, torque, -1, nut.slipLimitOn(nutAngle));
            search.watch(Event.NUT_SLIPS_BACK, torque, 1, -nut.slipLimitOff(nutAngle));
        } else {
            search.watch(Event.NUT_STOPS, nutSpeed, nut.direction, 0);
            search.watch(Event.LAW, turn, -nut.direction, nut.reach);
        }
        event = search.event;
        endS = baseS + search.first * stepS;
    }

    /** Bound on the anvil's acceleration within the series. */
    double fiercestAnvil() {
        return Series.steepest(anvilSpeed, horizon) * perStep;
    }

    private double series(double[] c, double timeS) {
        return Series.value(c, (timeS - baseS) * perStep);
    }

    double anvilSpeed(double timeS) {
        return still ? 0 : ringing ? ring.speed(timeS) : gliding ? glide.anvilSpeed(timeS) : series(anvilSpeed, timeS);
    }

    double nutSpeed(double timeS) {
        return still || ringing ? 0 : gliding ? glide.nutSpeed(timeS) : series(nutSpeed, timeS);
    }

    double twist(double timeS) {
        return still ? 0 : ringing ? ring.twist(timeS) : gliding ? glide.twist(timeS) : series(twist, timeS);
    }

    double turn(double timeS) {
        return still || ringing ? 0 : gliding ? glide.turn(timeS) : series(turn, timeS);
    }

    double torque(double timeS) {
        return still ? 0 : ringing ? ring.torque(timeS) : gliding ? glide.torque(timeS) : series(torque, timeS);
    }

    void copyFrom(Lower other) {
        copy(other.anvilSpeed, anvilSpeed);
        copy(other.nutSpeed, nutSpeed);
        copy(other.twist, twist);
        copy(other.turn, turn);
        copy(other.torque, torque);
        inverseAnvil = other.inverseAnvil;
        inverseNut = other.inverseNut;
        stiffness = other.stiffness;
        damping = other.damping;
        perTolerance = other.perTolerance;
        ringRate = other.ringRate;
        stuckStepS = other.stuckStepS;
        slidingStepS = other.slidingStepS;
        baseS = other.baseS;
        nutAngle = other.nutAngle;
        stepS = other.stepS;
        perStep = other.perStep;
        horizon = other.horizon;
        endS = other.endS;
        event = other.event;
        still = other.still;
        ringing = other.ringing;
        gliding = other.gliding;
        ring.copyFrom(other.ring);
        glide.copyFrom(other.glide);
    }

    private static void copy(double[] from, double[] to) {
        System.arraycopy(from, 0, to, 0, to.length);
    }
}
