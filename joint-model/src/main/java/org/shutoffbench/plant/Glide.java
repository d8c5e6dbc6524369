package org.shutoffbench.plant;

import org.shutoffbench.tool.Socket;

/**
 * Anvil and nut turning on against a constant resisting torque with nothing else to touch, known for all times at once:
 * their centre of mass slows evenly while the socket rings about the twist that slows the anvil down with the nut.
 */
final class Glide {

    /** No glide is followed further, s: within the reach of the ring's powers. */
    private static final double LONGEST_S = 0.02;

    private final Ring ring = new Ring();
    private double wholeInertia;
    private double anvilShare;
    private double rate;
    private double socketStiffness;

    private double baseS;
    private double still;
    private double ringing0;
    private double speed0;
    private double slowing;

    void start(Socket socket) {
        double anvil = socket.anvilInertiaKgM2();
        double nut = socket.nutInertiaKgM2();
        wholeInertia = anvil + nut;
        anvilShare = anvil / wholeInertia;
        socketStiffness = socket.stiffnessNmPerRad();
        double inverse = 1 / anvil + 1 / nut;
        rate = Math.sqrt(socketStiffness * inverse);
        ring.start(socketStiffness, socket.dampingNmSPerRad(), inverse);
    }

    /** The socket is springy enough to be followed this way. */
    boolean isPossible() {
        return ring.oscillates();
    }

    /**
     * Begins from a state.
     *
     * @param resisting constant torque on the nut, N m
     * @param reach how far the nut may turn, rad
     * @return until when the nut certainly neither stops nor turns further than its reach, s
     */
    double begin(double timeS, double anvilSpeed, double nutSpeed, double twist, double resisting, double reach) {
        baseS = timeS;
        still = anvilShare * resisting / socketStiffness;
        ringing0 = twist - still;
        speed0 = nutSpeed + anvilShare * (anvilSpeed - nutSpeed);
        slowing = resisting / wholeInertia;
        ring.begin(timeS, ringing0, anvilSpeed - nutSpeed);
        double swing = anvilShare * ring.swing(ringing0, anvilSpeed - nutSpeed);
        double untilStop = (speed0 - rate * swing) / slowing;
        double untilReach = (reach - 2 * swing) / speed0;
        return timeS + Math.min(LONGEST_S, Math.min(untilStop, untilReach));
    }

    private double centreTurn(double timeS) {
        double since = timeS - baseS;
        return since * (speed0 - 0.5 * slowing * since);
    }

    /** Speed of the centre of mass, which is that of the anvil's mean course, rad/s. */
    double centreSpeed(double timeS) {
        return speed0 - slowing * (timeS - baseS);
    }

    double anvilSpeed(double timeS) {
        return centreSpeed(timeS) + (1 - anvilShare) * ring.speed(timeS);
    }

    double nutSpeed(double timeS) {
        return centreSpeed(timeS) - anvilShare * ring.speed(timeS);
    }

    double twist(double timeS) {
        return still + ring.twist(timeS);
    }

    /** Angle of the nut since the beginning, rad. */
    double turn(double timeS) {
        return centreTurn(timeS) - anvilShare * (ring.twist(timeS) - ringing0);
    }

    double torque(double timeS) {
        return socketStiffness * still + ring.torque(timeS);
    }

    /** How far the anvil can ring back from its mean course from a time on, rad. */
    double swingFrom(double timeS) {
        return (1 - anvilShare) * ring.swingFrom(timeS);
    }

    /** Mean course of the anvil, without ringing, from the nut's angle at the beginning: angle, rad. */
    double courseAngle(double timeS) {
        return centreTurn(timeS) + anvilShare * ringing0 + still;
    }

    /** What the centre of mass loses in speed, rad/s2. */
    double slowing() {
        return slowing;
    }

    void copyFrom(Glide other) {
        ring.copyFrom(other.ring);
        wholeInertia = other.wholeInertia;
        anvilShare = other.anvilShare;
        rate = other.rate;
        socketStiffness = other.socketStiffness;
        baseS = other.baseS;
        still = other.still;
        ringing0 = other.ringing0;
        speed0 = other.speed0;
        slowing = other.slowing;
    }
}
