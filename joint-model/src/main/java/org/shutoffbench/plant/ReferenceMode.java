package org.shutoffbench.plant;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.shutoffbench.joint.ClampLaw;
import org.shutoffbench.joint.FreeTorque;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.joint.TorqueTension;
import org.shutoffbench.joint.Yielding;
import org.shutoffbench.tool.Cam;
import org.shutoffbench.tool.ImpactTool;
import org.shutoffbench.tool.Motor;

/**
 * The equations of motion with every branch frozen, so that they stay smooth across the event that ends them, and the
 * margins that say how far the next events are.
 *
 * <p>Unknowns: speeds of carrier, hammer, anvil, nut; delta; psi; socket twist; nut angle; plastic angle.
 */
final class ReferenceMode implements FirstOrderDifferentialEquations {

    static final int CARRIER = 0;
    static final int HAMMER = 1;
    static final int ANVIL = 2;
    static final int NUT = 3;
    static final int DELTA = 4;
    static final int PSI = 5;
    static final int TWIST = 6;
    static final int ANGLE = 7;
    static final int PLASTIC = 8;
    static final int SIZE = 9;

    /** Lugs apart, pressing, or in each other without force. */
    enum Lug {
        FREE,
        PRESSING,
        OPEN
    }

    /** Where the elastic angle of the joint is. */
    enum Seat {
        LOOSE,
        SEATING,
        ELASTIC,
        YIELDING
    }

    final JointLaw joint;
    final ImpactTool tool;
    final double supplyRatio;

    Drive drive = Drive.KEEP;
    double level = 1;
    /** +1 at the upper torque limit, -1 at the lower, 0 between; when coasting the direction of the carrier. */
    int motor;
    /** Side of the cam seat: -1, 0 in the seat, 1. */
    int camSide;
    /** Side on which the groove end is met, 0 for none. */
    int groove;
    /** Side on which the hammer has lifted off, 0 while engaged. */
    int lifted;

    Lug lug = Lug.PRESSING;
    /** Direction of the nut, 0 stuck. */
    int nut;

    int freeZone;
    Seat seat;
    boolean galled;
    boolean fractured;

    ReferenceMode(JointLaw joint, ImpactTool tool, double supplyRatio) {
        this.joint = joint;
        this.tool = tool;
        this.supplyRatio = supplyRatio;
        freeZone = joint.freeTorque().zoneAt(0);
        double elastic = -joint.clamp().snugAngleRad();
        seat = elastic < 0 ? Seat.LOOSE : elastic < joint.clamp().seatingWidthRad() ? Seat.SEATING : Seat.ELASTIC;
        galled = joint.galling().fromAngleRad() <= 0;
    }

    ReferenceMode(ReferenceMode other) {
        joint = other.joint;
        tool = other.tool;
        supplyRatio = other.supplyRatio;
        drive = other.drive;
        level = other.level;
        motor = other.motor;
        camSide = other.camSide;
        groove = other.groove;
        lifted = other.lifted;
        lug = other.lug;
        nut = other.nut;
        freeZone = other.freeZone;
        seat = other.seat;
        galled = other.galled;
        fractured = other.fractured;
    }

    @Override
    public int getDimension() {
        return SIZE;
    }

    @Override
    public void computeDerivatives(double t, double[] y, double[] rate) {
        double cam = camTorque(y);
        double lugTorque = lug == Lug.PRESSING ? pressedLugTorque(y) : 0;
        double socket = socketTorque(y);
        double ofMotor = motorTorque(y);
        rate[CARRIER] = isCarrierHeld() ? 0 : (ofMotor - cam) / tool.motor().inertiaKgM2();
        rate[HAMMER] = (cam - lugTorque) / tool.hammer().inertiaKgM2();
        rate[ANVIL] = (lugTorque - socket) / tool.socket().anvilInertiaKgM2();
        rate[NUT] = nut == 0 ? 0 : (socket - resistance(y)) / tool.socket().nutInertiaKgM2();
        rate[DELTA] = y[CARRIER] - y[HAMMER];
        rate[PSI] = y[HAMMER] - y[ANVIL];
        rate[TWIST] = y[ANVIL] - y[NUT];
        rate[ANGLE] = y[NUT];
        rate[PLASTIC] = seat == Seat.YIELDING ? (1 - joint.yielding().slopeRatio()) * y[NUT] : 0;
    }

    // ---- torques on the frozen branches

    boolean isCarrierHeld() {
        return drive == Drive.COAST && motor == 0;
    }

    double motorTorque(double[] y) {
        Motor m = tool.motor();
        if (drive == Drive.COAST) {
            return motor == 0 ? camTorque(y) : -motor * m.dragTorqueNm();
        }
        return motor == 0 ? linearMotorTorque(y[CARRIER]) : motor * m.torqueLimitNm();
    }

    double linearMotorTorque(double speed) {
        double u = drive == Drive.BRAKE ? 0 : level * supplyRatio;
        return tool.motor().stallTorqueNm() * (u - speed / tool.motor().noLoadSpeedRadPerS());
    }

    double camTorque(double[] y) {
        Cam c = tool.cam();
        double delta = y[DELTA];
        double slip = y[CARRIER] - y[HAMMER];
        double torque = c.preloadTorqueNm() * (camSide == 0 ? delta / c.seatAngleRad() : camSide)
                + c.stiffnessNmPerRad() * delta
                + c.dampingNmSPerRad() * slip;
        if (groove != 0) {
            torque += c.grooveStiffnessNmPerRad() * (delta - groove * c.grooveEndRad())
                    + c.grooveDampingNmSPerRad() * slip;
        }
        return torque;
    }

    double pressedLugTorque(double[] y) {
        return tool.hammer().lugStiffnessNmPerRad() * y[PSI]
                + tool.hammer().lugDampingNmSPerRad() * (y[HAMMER] - y[ANVIL]);
    }

    double socketTorque(double[] y) {
        return tool.socket().stiffnessNmPerRad() * y[TWIST] + tool.socket().dampingNmSPerRad() * (y[ANVIL] - y[NUT]);
    }

    /** Torque against a sliding nut, signed by its direction. */
    private double resistance(double[] y) {
        return nut > 0 ? torqueOn(y) : -torqueOff(y);
    }

    double torqueOn(double[] y) {
        return freeTorque(y[ANGLE]) + tension().kappaOnM() * clampForce(y);
    }

    double torqueOff(double[] y) {
        return freeTorque(y[ANGLE]) + tension().kappaOffM() * clampForce(y);
    }

    private TorqueTension tension() {
        return galled
                ? joint.torqueTension().withThreadFrictionTimes(joint.galling().frictionFactor())
                : joint.torqueTension();
    }

    private double freeTorque(double angle) {
        FreeTorque free = joint.freeTorque();
        double u = angle - free.originRad(freeZone);
        return free.coefficient(freeZone, 0)
                + free.coefficient(freeZone, 1) * u
                + free.coefficient(freeZone, 2) * u * u;
    }

    double elasticAngle(double[] y) {
        return y[ANGLE] - joint.clamp().snugAngleRad() - y[PLASTIC];
    }

    double clampForce(double[] y) {
        ClampLaw clamp = joint.clamp();
        double e = elasticAngle(y);
        return switch (seat) {
            case LOOSE -> 0;
            case SEATING -> clamp.forcePerAngleNPerRad() * e * e / (2 * clamp.seatingWidthRad());
            default -> clamp.forcePerAngleNPerRad() * (e - clamp.seatingWidthRad() / 2);
        };
    }

    /** Elastic angle at which the bolt yields, hardened by the plastic angle so far. */
    double yieldAngle(double plastic) {
        Yielding yielding = joint.yielding();
        double first = yielding.yieldForceN() / joint.clamp().forcePerAngleNPerRad()
                + joint.clamp().seatingWidthRad() / 2;
        return first + plastic * yielding.slopeRatio() / (1 - yielding.slopeRatio());
    }
}
