package org.shutoffbench.plant;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.joint.FreeTorque;
import org.shutoffbench.joint.JointLaw;

/**
 * The joint law where the nut now is: zone, direction, plastic angle and galling, and the torque that resists as a
 * parabola r0 + r1 y + r2 y^2 in the angle y since the last look.
 *
 * <p>Clamp zones: 0 not snug, 1 seating, 2 elastic, 3 at the yield force and turning on.
 */
final class NutFriction {

    private static final int LOOSE = 0;
    private static final int SEATING = 1;
    private static final int ELASTIC = 2;
    private static final int PLASTIC = 3;

    /** Relative size below which a difference of torques is rounding. */
    private static final double ROUNDING = 1e-9;

    private @Nullable JointLaw law;
    private FreeTorque free = FreeTorque.of(0, java.util.List.of());
    private double forcePerAngle;
    private double snug;
    private double seatingWidth;
    private double seatingCurve;
    private double staticRatio;
    private double yieldRatio;
    private double firstYieldAngle;
    private double fractureAngle;
    private double gallingAngle;
    private double kappaOn;
    private double kappaOff;

    // flags and latches
    int direction;
    private int freeZone;

    // the present zone of the free torque
    private double freeOrigin;
    private double free0;
    private double free1;
    private double free2;

    // limits at the angle of the last slip question
    private double limitsAngle = Double.NaN;
    private double limitOn;
    private double limitOff;
    private int clampZone;
    boolean galled;
    boolean yielded;
    boolean fractured;
    double plasticAngle;

    // the parabola at the last look, and how far the nut may turn on it
    double r0;
    double r1;
    double r2;
    double reach;
    private int limit;

    // clamp force as a parabola in the same angle
    private double force0;
    private double force1;
    private double force2;

    private static final int FREE_LIMIT = 0;
    private static final int CLAMP_LIMIT = 1;
    private static final int GALLING_LIMIT = 2;

    void start(JointLaw joint) {
        law = joint;
        free = joint.freeTorque();
        forcePerAngle = joint.clamp().forcePerAngleNPerRad();
        snug = joint.clamp().snugAngleRad();
        seatingWidth = joint.clamp().seatingWidthRad();
        seatingCurve = forcePerAngle / (2 * seatingWidth);
        staticRatio = joint.staticRatio();
        yieldRatio = joint.yielding().slopeRatio();
        firstYieldAngle = joint.yielding().yieldForceN() / forcePerAngle + seatingWidth / 2;
        fractureAngle = joint.yielding().fractureAngleRad();
        gallingAngle = joint.galling().fromAngleRad();
        kappaOn = joint.torqueTension().kappaOnM();
        kappaOff = joint.torqueTension().kappaOffM();
        direction = 0;
        galled = false;
        yielded = false;
        fractured = false;
        plasticAngle = 0;
        enterFreeZone(free.zoneAt(0));
        limitsAngle = Double.NaN;
        clampZone = LOOSE;
        if (gallingAngle <= 0) {
            gall();
        }
        double elastic = -snug;
        clampZone = elastic < 0 ? LOOSE : elastic < seatingWidth ? SEATING : ELASTIC;
    }

    /** Yield force over elastic slope: the elastic angle at which the bolt now yields. */
    private double yieldAngle() {
        return firstYieldAngle + plasticAngle * yieldRatio / (1 - yieldRatio);
    }

    double clampForce(double nutAngle) {
        double elastic = nutAngle - snug - plasticAngle;
        return switch (clampZone) {
            case LOOSE -> 0;
            case SEATING -> seatingCurve * elastic * elastic;
            default -> forcePerAngle * (elastic - seatingWidth / 2);
        };
    }

    /** Clamp force after a turn y since the last look. */
    double clampForceAfter(double y) {
        return force0 + y * (force1 + y * force2);
    }

    /** Moving torque after a turn y since the last look at a nut angle. */
    double torqueOnAfter(double nutAngle, double y) {
        return freeTorque(nutAngle + y) + kappaOn * clampForceAfter(y);
    }

    double plasticAngleAfter(double y) {
        return clampZone == PLASTIC ? plasticAngle + (1 - yieldRatio) * y : plasticAngle;
    }

    /** The nut turns on without clamp force. */
    boolean turnsLoose() {
        return direction > 0 && clampZone == LOOSE;
    }

    /** Turning on loosely against a torque that does not change. */
    boolean turnsEvenly() {
        return turnsLoose() && free1 == 0 && free2 == 0;
    }

    private double freeTorque(double nutAngle) {
        double u = nutAngle - freeOrigin;
        return free0 + u * (free1 + u * free2);
    }

    double slipLimitOn(double nutAngle) {
        askLimits(nutAngle);
        return limitOn;
    }

    double slipLimitOff(double nutAngle) {
        askLimits(nutAngle);
        return limitOff;
    }

    /** A stuck nut is asked at the same angle again and again. */
    private void askLimits(double nutAngle) {
        if (nutAngle != limitsAngle) {
            limitsAngle = nutAngle;
            double force = clampForce(nutAngle);
            double freely = freeTorque(nutAngle);
            limitOn = staticRatio * (freely + kappaOn * force);
            limitOff = staticRatio * (freely + kappaOff * force);
        }
    }

    private void enterFreeZone(int zone) {
        freeZone = zone;
        freeOrigin = free.originRad(zone);
        free0 = free.coefficient(zone, 0);
        free1 = free.coefficient(zone, 1);
        free2 = free.coefficient(zone, 2);
    }

    /**
     * Net torque on a sliding nut that is at rest at this instant. Where it has just slipped, breakaway less moving torque
     * is known exactly; the difference of two rounded torques would have a random sign.
     */
    double netAtRest(double socketTorque) {
        double net = socketTorque - r0;
        double surplus = (staticRatio - 1) * r0;
        return Math.abs(net - surplus) <= ROUNDING * Math.abs(r0) ? surplus : net;
    }

    /** Expands the resisting torque about a nut angle, signed: positive when it holds a nut that turns on. */
    void look(double nutAngle) {
        double f2 = free2;
        double f1 = free1 + 2 * f2 * (nutAngle - freeOrigin);
        double f0 = freeTorque(nutAngle);
        double elastic = nutAngle - snug - plasticAngle;
        double kappa = direction >= 0 ? kappaOn : kappaOff;
        force0 = clampForce(nutAngle);
        force1 = 0;
        force2 = 0;
        if (clampZone == SEATING) {
            force1 = 2 * seatingCurve * elastic;
            force2 = seatingCurve;
        } else if (clampZone == ELASTIC) {
            force1 = forcePerAngle;
        } else if (clampZone == PLASTIC) {
            force1 = forcePerAngle * yieldRatio;
        }
        double sign = direction >= 0 ? 1 : -1;
        r0 = sign * (f0 + kappa * force0);
        r1 = sign * (f1 + kappa * force1);
        r2 = sign * (f2 + kappa * force2);
        if (direction > 0) {
            lookAhead(nutAngle, elastic);
        } else if (direction < 0) {
            lookBack(nutAngle, elastic);
        }
    }

    private void lookAhead(double nutAngle, double elastic) {
        reach = free.endRad(freeZone) - nutAngle;
        limit = FREE_LIMIT;
        double clampReach = switch (clampZone) {
            case LOOSE -> -elastic;
            case SEATING -> seatingWidth - elastic;
            case ELASTIC -> yieldAngle() - elastic;
            default -> fractured ? Double.POSITIVE_INFINITY : (fractureAngle - plasticAngle) / (1 - yieldRatio);
        };
        if (clampReach < reach) {
            reach = clampReach;
            limit = CLAMP_LIMIT;
        }
        if (!galled && gallingAngle - nutAngle < reach) {
            reach = gallingAngle - nutAngle;
            limit = GALLING_LIMIT;
        }
    }

    private void lookBack(double nutAngle, double elastic) {
        reach = free.startRad(freeZone) - nutAngle;
        limit = FREE_LIMIT;
        double clampReach = switch (clampZone) {
            case LOOSE -> Double.NEGATIVE_INFINITY;
            case SEATING -> -elastic;
            default -> seatingWidth - elastic;
        };
        if (clampReach > reach) {
            reach = clampReach;
            limit = CLAMP_LIMIT;
        }
    }

    /** Handles the end of the zone found by the last look. */
    void cross() {
        limitsAngle = Double.NaN;
        if (limit == FREE_LIMIT) {
            enterFreeZone(freeZone + direction);
        } else if (limit == GALLING_LIMIT) {
            gall();
        } else if (direction > 0) {
            crossClampAhead();
        } else {
            clampZone = clampZone == SEATING || seatingWidth == 0 ? LOOSE : SEATING;
        }
    }

    private void crossClampAhead() {
        switch (clampZone) {
            case LOOSE -> clampZone = seatingWidth > 0 ? SEATING : ELASTIC;
            case SEATING -> clampZone = ELASTIC;
            case ELASTIC -> {
                clampZone = PLASTIC;
                yielded = true;
            }
            default -> fractured = true;
        }
    }

    private void gall() {
        galled = true;
        JointLaw joint = Objects.requireNonNull(law);
        var tension =
                joint.torqueTension().withThreadFrictionTimes(joint.galling().frictionFactor());
        kappaOn = tension.kappaOnM();
        kappaOff = tension.kappaOffM();
    }

    /** Books the plastic share of a turn since the last look. */
    void turned(double angle) {
        plasticAngle = plasticAngleAfter(angle);
    }

    /** Sets the direction of motion; a nut that no longer turns on leaves the plastic branch. */
    void setDirection(int to) {
        direction = to;
        limitsAngle = Double.NaN;
        if (clampZone == PLASTIC && to <= 0) {
            clampZone = ELASTIC;
        }
    }

    void copyFrom(NutFriction other) {
        law = other.law;
        free = other.free;
        forcePerAngle = other.forcePerAngle;
        snug = other.snug;
        seatingWidth = other.seatingWidth;
        seatingCurve = other.seatingCurve;
        staticRatio = other.staticRatio;
        yieldRatio = other.yieldRatio;
        firstYieldAngle = other.firstYieldAngle;
        fractureAngle = other.fractureAngle;
        gallingAngle = other.gallingAngle;
        kappaOn = other.kappaOn;
        kappaOff = other.kappaOff;
        direction = other.direction;
        enterFreeZone(other.freeZone);
        limitsAngle = Double.NaN;
        clampZone = other.clampZone;
        galled = other.galled;
        yielded = other.yielded;
        fractured = other.fractured;
        plasticAngle = other.plasticAngle;
        r0 = other.r0;
        r1 = other.r1;
        r2 = other.r2;
        reach = other.reach;
        limit = other.limit;
        force0 = other.force0;
        force1 = other.force1;
        force2 = other.force2;
    }
}
