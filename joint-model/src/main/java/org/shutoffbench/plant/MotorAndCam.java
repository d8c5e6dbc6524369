package org.shutoffbench.plant;

import org.shutoffbench.tool.Cam;
import org.shutoffbench.tool.ImpactTool;
import org.shutoffbench.tool.Motor;

/**
 * Motor and cam torque on their present branches: T_m = motorConstant - motorSlope omega_m and T_cam = camConstant +
 * camStiffness delta + camDamping (omega_m - omega_h), with the limits of each branch.
 *
 * <p>Cam zones: 0 seat, +-1 in the groove and engaged, +-2 lifted off, +-3 beyond the groove end. Motor zones when
 * powered: -1 at the upper torque limit, 0 linear, 1 at the lower limit; when coasting: the direction of the carrier.
 */
final class MotorAndCam {

    /** Relative size below which a difference of torques is rounding. */
    private static final double ROUNDING = 1e-9;

    // parameters
    private double stallTorque;
    private double torqueLimit;
    private double noLoadSpeed;
    private double drag;
    private double preload;
    private double spring;
    private double damper;
    private double seat;
    private double liftOff;
    private double grooveEnd;
    private double grooveSpring;
    private double grooveDamper;
    private double supplyRatio;
    private double inverseCarrier;
    private double inverseHammer;

    // flags
    Drive drive = Drive.KEEP;
    double level = 1;
    int camZone;
    int motorZone;

    // the present branches
    double motorConstant;
    double motorSlope;
    double speedLow;
    double speedHigh;
    double camConstant;
    double camStiffness;
    double camDamping;
    double deltaLow;
    double deltaHigh;

    /** Duration of a series of carrier and hammer on the present branches, s. */
    double stepS;

    void start(ImpactTool tool, double supply) {
        Motor motor = tool.motor();
        stallTorque = motor.stallTorqueNm();
        torqueLimit = motor.torqueLimitNm();
        noLoadSpeed = motor.noLoadSpeedRadPerS();
        drag = motor.dragTorqueNm();
        Cam cam = tool.cam();
        preload = cam.preloadTorqueNm();
        spring = cam.stiffnessNmPerRad();
        damper = cam.dampingNmSPerRad();
        seat = cam.seatAngleRad();
        liftOff = cam.liftOffAngleRad();
        grooveEnd = cam.grooveEndRad();
        grooveSpring = cam.grooveStiffnessNmPerRad();
        grooveDamper = cam.grooveDampingNmSPerRad();
        supplyRatio = supply;
        inverseCarrier = 1 / motor.inertiaKgM2();
        inverseHammer = 1 / tool.hammer().inertiaKgM2();
        drive = Drive.KEEP;
        level = 1;
        enterCamZone(0);
        chooseMotorZone(0, 0);
    }

    boolean isEngaged() {
        return camZone >= -1 && camZone <= 1;
    }

    /** A coasting tool's carrier rests in its drag. */
    boolean isCarrierHeld() {
        return drive == Drive.COAST && motorZone == 0;
    }

    double dragTorque() {
        return drag;
    }

    void enterCamZone(int zone) {
        camZone = zone;
        double side = Math.signum((double) zone);
        switch (Math.abs(zone)) {
            case 0 -> {
                branch(0, preload / seat + spring, damper);
                limits(-seat, seat);
            }
            case 1 -> {
                branch(side * preload, spring, damper);
                limits(side, seat, liftOff);
            }
            case 2 -> {
                branch(side * preload, spring, damper);
                limits(side, liftOff, grooveEnd);
            }
            default -> {
                branch(side * (preload - grooveSpring * grooveEnd), spring + grooveSpring, damper + grooveDamper);
                limits(side, grooveEnd, Double.POSITIVE_INFINITY);
            }
        }
    }

    private void branch(double constant, double stiffness, double damping) {
        camConstant = constant;
        camStiffness = stiffness;
        camDamping = damping;
        measureStep();
    }

    private void limits(double low, double high) {
        deltaLow = low;
        deltaHigh = high;
    }

    private void limits(double side, double inner, double outer) {
        if (side > 0) {
            limits(inner, outer);
        } else {
            limits(-outer, -inner);
        }
    }

    /** Picks the motor's branch for a speed; a coasting carrier at rest is held if the cam torque allows. */
    void chooseMotorZone(double speed, double camTorque) {
        if (drive == Drive.COAST) {
            if (speed != 0) {
                enterMotorZone(speed > 0 ? 1 : -1);
            } else {
                enterMotorZone(camTorque > drag ? -1 : camTorque < -drag ? 1 : 0);
            }
            return;
        }
        double torque = stallTorque * (effectiveLevel() - speed / noLoadSpeed);
        enterMotorZone(torque > torqueLimit ? -1 : torque < -torqueLimit ? 1 : 0);
    }

    void enterMotorZone(int zone) {
        motorZone = zone;
        if (drive == Drive.COAST) {
            coast(zone);
        } else {
            power(zone);
        }
        measureStep();
    }

    private void coast(int zone) {
        motorSlope = 0;
        motorConstant = -zone * drag;
        speedLow = zone == 1 ? 0 : Double.NEGATIVE_INFINITY;
        speedHigh = zone == -1 ? 0 : Double.POSITIVE_INFINITY;
    }

    private void power(int zone) {
        double atLimit = noLoadSpeed * (effectiveLevel() - torqueLimit / stallTorque);
        double atLowerLimit = noLoadSpeed * (effectiveLevel() + torqueLimit / stallTorque);
        motorSlope = zone == 0 ? stallTorque / noLoadSpeed : 0;
        motorConstant = zone == 0 ? stallTorque * effectiveLevel() : -zone * torqueLimit;
        speedLow = zone == -1 ? Double.NEGATIVE_INFINITY : zone == 0 ? atLimit : atLowerLimit;
        speedHigh = zone == 1 ? Double.POSITIVE_INFINITY : zone == 0 ? atLowerLimit : atLimit;
    }

    private void measureStep() {
        stepS = Steps.forUpper(this, inverseCarrier, inverseHammer);
    }

    private double effectiveLevel() {
        return drive == Drive.BRAKE ? 0 : level * supplyRatio;
    }

    /** The motor's torque does not depend on its speed. */
    boolean isAtLimit() {
        return motorSlope == 0;
    }

    double motorTorque(double speed) {
        return motorConstant - motorSlope * speed;
    }

    /** Net torque on the carrier; exactly zero where a coasting carrier at rest is just being turned. */
    double netOnCarrier(double speed, double motor, double cam) {
        double net = motor - cam;
        boolean isRounding = Math.abs(net) <= ROUNDING * (drag + preload);
        return drive == Drive.COAST && speed == 0 && isRounding ? 0 : net;
    }

    double camTorque(double delta, double relativeSpeed) {
        return camConstant + camStiffness * delta + camDamping * relativeSpeed;
    }

    /** The motor can put energy in. */
    boolean isPowered() {
        return drive == Drive.KEEP && level > 0;
    }

    /** Energy stored in cam spring and groove end. */
    double springEnergyJ(double delta) {
        double reach = Math.abs(delta);
        double beyond = Math.max(0, reach - grooveEnd);
        double ofPreload = reach < seat ? preload * reach * reach / (2 * seat) : preload * (reach - seat / 2);
        return ofPreload + 0.5 * spring * reach * reach + 0.5 * grooveSpring * beyond * beyond;
    }

    void copyFrom(MotorAndCam other) {
        stallTorque = other.stallTorque;
        torqueLimit = other.torqueLimit;
        noLoadSpeed = other.noLoadSpeed;
        drag = other.drag;
        preload = other.preload;
        spring = other.spring;
        damper = other.damper;
        seat = other.seat;
        liftOff = other.liftOff;
        grooveEnd = other.grooveEnd;
        grooveSpring = other.grooveSpring;
        grooveDamper = other.grooveDamper;
        supplyRatio = other.supplyRatio;
        inverseCarrier = other.inverseCarrier;
        inverseHammer = other.inverseHammer;
        drive = other.drive;
        level = other.level;
        enterCamZone(other.camZone);
        enterMotorZone(other.motorZone);
    }
}
