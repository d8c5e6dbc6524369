package org.shutoffbench.plant;

import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.tool.ImpactTool;
import org.shutoffbench.tool.ReferenceTools;

/**
 * The default plant: Taylor series between events, each part of the machine on its own clock while no lug force couples
 * them (docs/adr: solver).
 */
public final class FastPlant implements Plant {

    /** Greatest last term of a series, rad/s. */
    static final double SPEED_TOLERANCE = 3e-6;

    /** Events in a row without progress before the guard steps over them. */
    private static final int GUARD = 64;

    /** What the guard steps, s. */
    private static final double GUARD_STEP_S = 1e-9;

    /** The hammer parts from a ringing anvil beyond so many swings, and joins it within so many. */
    private static final double PART_SWINGS = 1.5;

    private static final double JOIN_SWINGS = 1.1;

    /** An anvil nearer to the hammer than this is followed with it, rad. */
    private static final double NEAR_RAD = 1e-9;

    /** Lugs nearer than this do not part, rad. */
    private static final double LEAST_GAP_RAD = 1e-8;

    /** A hammer that many times as fast as the anvil rings goes over its lug once, not back and forth. */
    private static final double SURE_TO_PASS = 3;

    private static final int PASS_PASSES = 20;

    /** The instant of a pass is sought to this, s. */
    private static final double PASS_ROUNDING_S = 1e-13;

    private final PlantState state = new PlantState();
    private final MotorAndCam drive = new MotorAndCam();
    private final NutFriction nut = new NutFriction();
    private final Upper upper = new Upper(drive);
    private final Lower lower = new Lower(nut);
    private final Together together = new Together(drive, nut);
    private final double speedTolerance;

    private ImpactTool tool = ReferenceTools.LIGHT;
    private double lugPitch;
    private double timeS;
    private double plannedS;
    private boolean isTogether;
    private boolean upperIsStale;
    private boolean lowerIsStale;
    private boolean touchIsDue;
    /** The hammer comes within reach of the ringing anvil. */
    private boolean nearIsDue;
    /** The lifted hammer's lug goes over the lug of an anvil that only rings: nothing else changes. */
    private boolean passIsDue;

    private int lug;
    private boolean lugForceIsZero;
    private boolean blowIsDue;
    private boolean stateIsStale;

    // the four bodies where a stale series starts
    private double carrierSpeed;
    private double hammerSpeed;
    private double anvilSpeed;
    private double nutSpeed;
    private double delta;
    private double psi;
    private double twist;
    private double nutAngle;
    private double hammerAngle;

    public FastPlant() {
        this(SPEED_TOLERANCE);
    }

    /** For convergence studies: the greatest last term of a series in rad/s. */
    FastPlant(double speedTolerance) {
        this.speedTolerance = speedTolerance;
    }

    @Override
    public void start(JointLaw joint, ImpactTool tool, double supplyRatio) {
        this.tool = tool;
        lugPitch = 2 * Math.PI / tool.hammer().lugsPerTurn();
        drive.start(tool, supplyRatio);
        nut.start(joint);
        upper.start(tool, speedTolerance);
        lower.start(tool, speedTolerance);
        together.start(tool, speedTolerance);
        state.reset();
        timeS = 0;
        carrierSpeed = 0;
        hammerSpeed = 0;
        anvilSpeed = 0;
        nutSpeed = 0;
        delta = 0;
        psi = 0;
        twist = 0;
        nutAngle = 0;
        hammerAngle = 0;
        lug = Together.CONTACT;
        isTogether = true;
        upperIsStale = true;
        lowerIsStale = true;
        lugForceIsZero = false;
        blowIsDue = false;
        prepare();
    }

    @Override
    public void command(Drive to, double level) {
        if (!(level >= 0 && level <= 1)) {
            throw new IllegalArgumentException("drive level must lie between 0 and 1");
        }
        if (to == drive.drive && (to != Drive.KEEP || level == drive.level)) {
            return;
        }
        if (isTogether) {
            readTogether();
        } else {
            readUpper();
        }
        drive.drive = to;
        drive.level = level;
        chooseMotorZone();
        upperIsStale = true;
        lowerIsStale |= isTogether;
        prepare();
    }

    private void chooseMotorZone() {
        drive.chooseMotorZone(carrierSpeed, drive.camTorque(delta, carrierSpeed - hammerSpeed));
    }

    @Override
    public double plan() {
        return plannedS;
    }

    @Override
    public void commitAt(double to) {
        if (!(to >= timeS && to <= plannedS)) {
            throw new IllegalArgumentException("time lies outside the planned step");
        }
        timeS = to;
        stateIsStale = true;
    }

    @Override
    public void commit() {
        timeS = plannedS;
        handle();
        prepare();
    }

    /** Expands what is stale and handles events that are due at once, until time can go on. */
    private void prepare() {
        stateIsStale = true;
        for (int i = 0; ; i++) {
            expandWhatIsStale();
            if (plannedS > timeS) {
                return;
            }
            if (i > GUARD) {
                state.guardSteps++;
                plannedS = Math.max(Math.nextUp(timeS), timeS + GUARD_STEP_S);
                ignoreDueEvents();
                return;
            }
            handle();
        }
    }

    private void ignoreDueEvents() {
        if (isTogether) {
            together.event = Event.NONE;
            together.endS = plannedS;
            return;
        }
        touchIsDue = false;
        passIsDue = false;
        if (upper.endS < plannedS) {
            upper.event = Event.NONE;
            upper.endS = plannedS;
        }
        if (lower.endS < plannedS) {
            lower.event = Event.NONE;
            lower.endS = plannedS;
        }
    }

    private void expandWhatIsStale() {
        if (isTogether && mayPart()) {
            hammerAngle = psi + twist + nutAngle + lugPitch * state.lugsPassed;
            isTogether = false;
            upperIsStale = true;
            lowerIsStale = true;
        }
        if (!isTogether) {
            expandApart();
            if (!isTogether) {
                return;
            }
        }
        together.carrierSpeed[0] = carrierSpeed;
        together.hammerSpeed[0] = hammerSpeed;
        together.anvilSpeed[0] = anvilSpeed;
        together.nutSpeed[0] = nutSpeed;
        together.delta[0] = delta;
        together.psi[0] = psi;
        together.twist[0] = twist;
        together.expand(timeS, nutAngle, lug, lugForceIsZero);
        lugForceIsZero = false;
        plannedS = together.endS;
    }

    /** The lugs are far enough apart for clocks of their own. */
    private boolean mayPart() {
        if (lug != Together.FREE || psi > -LEAST_GAP_RAD) {
            return false;
        }
        if (lower.ringsFreely(nutAngle, twist, anvilSpeed)) {
            return -(psi + twist) > PART_SWINGS * lower.swing(twist, anvilSpeed);
        }
        double closing = Math.max(0, hammerSpeed - anvilSpeed) + 2 * Math.abs(anvilSpeed - nutSpeed);
        return -psi > closing * together.apartStepS() + 2 * Math.abs(twist)
                || (psi < 0 && lower.rests(nut.direction, twist, anvilSpeed));
    }

    private void expandApart() {
        if (upperIsStale) {
            upper.expand(timeS, carrierSpeed, hammerSpeed, delta, hammerAngle);
            upperIsStale = false;
        }
        if (lowerIsStale) {
            lower.expand(timeS, anvilSpeed, nutSpeed, twist, nutAngle);
            lowerIsStale = false;
        }
        plannedS = Math.min(upper.endS, lower.endS);
        touchIsDue = false;
        nearIsDue = false;
        passIsDue = false;
        if (lower.gliding) {
            planBehindGlidingAnvil();
        } else if (lower.ringing) {
            planBesideRingingAnvil();
        } else if (lower.still) {
            double touch = upper.reachesS(lower.nutAngle + lugPitch * state.lugsPassed, timeS, plannedS);
            if (touch <= plannedS) {
                plannedS = touch;
                touchIsDue = true;
            }
        } else if (mayMeet()) {
            join();
        }
    }

    private void join() {
        readUpper();
        readLower();
        psi = hammerAngle - nutAngle - twist - lugPitch * state.lugsPassed;
        isTogether = true;
    }

    /** The hammer flies on its own until it comes within the swing of the anvil. */
    private void planBesideRingingAnvil() {
        double swing = lower.swingFrom(timeS);
        double level = lower.nutAngle + lugPitch * state.lugsPassed;
        if (level - upper.hammerAngle(timeS) <= JOIN_SWINGS * swing) {
            join();
            return;
        }
        double near = upper.reachesS(level - swing, timeS, plannedS);
        if (near <= plannedS) {
            double pass = drive.isEngaged() ? Series.NEVER : passS(near, level, swing);
            passIsDue = pass <= plannedS;
            nearIsDue = !passIsDue;
            plannedS = passIsDue ? pass : near;
        }
    }

    /** When a hammer faster than the anvil can ring goes over its lug, from a time at which it comes within its swing. */
    private double passS(double nearS, double level, double swing) {
        double t = nearS;
        for (int i = 0; i < PASS_PASSES; i++) {
            double speed = upper.hammerSpeed(t);
            if (speed < SURE_TO_PASS * lower.fastestRinging(swing)) {
                return Series.NEVER;
            }
            double gap = level + lower.twist(t) - upper.hammerAngle(t);
            double step = gap / (speed - lower.anvilSpeed(t));
            t += step;
            if (Math.abs(step) <= PASS_ROUNDING_S) {
                return t > timeS ? t : Series.NEVER;
            }
        }
        return Series.NEVER;
    }

    /** The hammer flies on its own until it may catch up with the anvil that rings about its even course. */
    private void planBehindGlidingAnvil() {
        Glide anvil = lower.glide;
        double swing = anvil.swingFrom(timeS) + NEAR_RAD;
        double course = lower.nutAngle + anvil.courseAngle(timeS) + lugPitch * state.lugsPassed;
        if (course - upper.hammerAngle(timeS) <= JOIN_SWINGS * swing) {
            join();
            return;
        }
        double near = upper.catchesS(course - swing, anvil.centreSpeed(timeS), anvil.slowing(), timeS, plannedS);
        if (near <= plannedS) {
            plannedS = near;
            nearIsDue = true;
        }
    }

    /** The gap may close within the planned step, however badly the speeds change. */
    private boolean mayMeet() {
        double gap = lower.nutAngle
                + lower.turn(timeS)
                + lower.twist(timeS)
                + lugPitch * state.lugsPassed
                - upper.hammerAngle(timeS);
        double span = plannedS - timeS;
        double closing = upper.hammerSpeed(timeS)
                - lower.anvilSpeed(timeS)
                + span * (upper.fiercestHammer(plannedS) + lower.fiercestAnvil());
        return gap <= Math.max(0, closing) * span;
    }

    // ---- moving on

    /** Moves to the planned end and handles what is due there. */
    private void handle() {
        if (isTogether) {
            readTogether();
            upperIsStale = true;
            lowerIsStale = true;
            handle(together.event);
            return;
        }
        if (nearIsDue) {
            nearIsDue = false;
            return;
        }
        if (passIsDue || (touchIsDue && !drive.isEngaged())) {
            pass();
            return;
        }
        if (touchIsDue) {
            readUpper();
            readLower();
            psi = 0;
            hammerAngle = nutAngle + twist + lugPitch * state.lugsPassed;
            isTogether = true;
            handle(Event.TOUCH);
        } else if (upper.endS <= plannedS) {
            readUpper();
            upperIsStale = true;
            handle(upper.event);
        } else {
            readLower();
            lowerIsStale = true;
            handle(lower.event);
        }
    }

    private void readUpper() {
        carrierSpeed = upper.carrierSpeed(timeS);
        hammerSpeed = upper.hammerSpeed(timeS);
        delta = upper.delta(timeS);
        hammerAngle = upper.hammerAngle(timeS);
    }

    private void readLower() {
        anvilSpeed = lower.anvilSpeed(timeS);
        nutSpeed = lower.nutSpeed(timeS);
        twist = lower.twist(timeS);
        turnNut(lower.nutAngle, lower.turn(timeS));
    }

    private void readTogether() {
        carrierSpeed = together.at(together.carrierSpeed, timeS);
        hammerSpeed = together.at(together.hammerSpeed, timeS);
        anvilSpeed = together.at(together.anvilSpeed, timeS);
        nutSpeed = together.at(together.nutSpeed, timeS);
        delta = together.at(together.delta, timeS);
        psi = together.at(together.psi, timeS);
        twist = together.at(together.twist, timeS);
        turnNut(together.nutAngle, together.at(together.turn, timeS));
    }

    private void turnNut(double from, double by) {
        nut.turned(by);
        nutAngle = from + by;
    }

    // ---- events

    private void handle(int event) {
        switch (event) {
            case Event.CAM_ABOVE -> enterCamZone(drive.camZone + 1, drive.deltaHigh);
            case Event.CAM_BELOW -> enterCamZone(drive.camZone - 1, drive.deltaLow);
            case Event.MOTOR_ABOVE -> enterMotorZone(1, drive.speedHigh);
            case Event.MOTOR_BELOW -> enterMotorZone(-1, drive.speedLow);
            case Event.CARRIER_ON -> drive.enterMotorZone(1);
            case Event.CARRIER_BACK -> drive.enterMotorZone(-1);
            case Event.NUT_SLIPS_ON -> slip(1);
            case Event.NUT_SLIPS_BACK -> slip(-1);
            case Event.NUT_STOPS -> stop();
            case Event.LAW -> nut.cross();
            case Event.TOUCH -> touch();
            case Event.PART -> {
                lug = psi > 0 ? Together.OPEN : Together.FREE;
                lugForceIsZero = true;
            }
            case Event.RESUME -> {
                lug = Together.CONTACT;
                lugForceIsZero = true;
            }
            case Event.CLEAR -> {
                lug = Together.FREE;
                psi = 0;
            }
            default -> {
                // the series has been used up
            }
        }
    }

    private void enterCamZone(int zone, double boundary) {
        delta = boundary;
        drive.enterCamZone(zone);
        if (isTogether && !drive.isEngaged() && lug != Together.FREE) {
            lug = Together.FREE;
            passTogether();
        }
    }

    private void enterMotorZone(int step, double boundary) {
        carrierSpeed = boundary;
        if (drive.drive == Drive.COAST) {
            chooseMotorZone();
        } else {
            drive.enterMotorZone(drive.motorZone + step);
        }
    }

    private void slip(int direction) {
        nutSpeed = 0;
        nut.setDirection(direction);
    }

    /** The nut comes to rest; the socket decides at once whether it stays there. */
    private void stop() {
        nutSpeed = 0;
        double torque = lower.socketTorque(twist, anvilSpeed);
        nut.setDirection(0);
        if (torque > nut.slipLimitOn(nutAngle)) {
            nut.setDirection(1);
        } else if (torque < -nut.slipLimitOff(nutAngle)) {
            nut.setDirection(-1);
        }
    }

    private void touch() {
        psi = 0;
        if (!drive.isEngaged()) {
            passTogether();
            return;
        }
        lug = Together.CONTACT;
        if (blowIsDue) {
            blowIsDue = false;
            state.blows++;
            state.lastBlowTimeS = timeS;
            state.lastBlowHammerSpeedRadPerS = hammerSpeed;
        } else {
            state.bounces++;
        }
    }

    /** The lifted hammer's lug goes over the anvil's. */
    private void pass() {
        state.lugsPassed++;
        blowIsDue = true;
    }

    private void passTogether() {
        pass();
        psi -= lugPitch;
    }

    // ---- look-ups

    @Override
    public PlantState state() {
        if (stateIsStale) {
            fillState();
            stateIsStale = false;
        }
        return state;
    }

    @Override
    public int blows() {
        return state.blows;
    }

    @Override
    public boolean isFractured() {
        return nut.fractured;
    }

    private void fillState() {
        double turn = isTogether ? together.at(together.turn, timeS) : lower.turn(timeS);
        double angle = (isTogether ? together.nutAngle : lower.nutAngle) + turn;
        state.timeS = timeS;
        state.carrierAngleRad = carrierAngleRad(timeS);
        state.carrierSpeedRadPerS = carrierSpeedRadPerS(timeS);
        state.hammerAngleRad = hammerAngleRad(timeS);
        state.hammerSpeedRadPerS = hammerSpeedRadPerS(timeS);
        state.anvilAngleRad = anvilAngleRad(timeS);
        state.anvilSpeedRadPerS = anvilSpeedRadPerS(timeS);
        state.nutAngleRad = angle;
        state.nutSpeedRadPerS = nutSpeedRadPerS(timeS);
        state.plasticAngleRad = nut.plasticAngleAfter(turn);
        state.clampForceN = nut.clampForceAfter(turn);
        state.torqueToMoveNm = nut.torqueOnAfter(angle - turn, turn);
        state.engaged = drive.isEngaged();
        state.inContact = isTogether && lug == Together.CONTACT;
        state.galled = nut.galled;
        state.yielded = nut.yielded;
        state.fractured = nut.fractured;
        state.nutDirection = nut.direction;
    }

    @Override
    public double carrierAngleRad(double t) {
        return hammerAngleRad(t) + (isTogether ? together.at(together.delta, t) : upper.delta(t));
    }

    @Override
    public double carrierSpeedRadPerS(double t) {
        return isTogether ? together.at(together.carrierSpeed, t) : upper.carrierSpeed(t);
    }

    @Override
    public double hammerAngleRad(double t) {
        return isTogether
                ? anvilAngleRad(t) + together.at(together.psi, t) + lugPitch * state.lugsPassed
                : upper.hammerAngle(t);
    }

    @Override
    public double hammerSpeedRadPerS(double t) {
        return isTogether ? together.at(together.hammerSpeed, t) : upper.hammerSpeed(t);
    }

    @Override
    public double anvilAngleRad(double t) {
        return nutAngleRad(t) + (isTogether ? together.at(together.twist, t) : lower.twist(t));
    }

    @Override
    public double nutAngleRad(double t) {
        return isTogether ? together.nutAngle + together.at(together.turn, t) : lower.nutAngle + lower.turn(t);
    }

    @Override
    public double anvilSpeedRadPerS(double t) {
        return isTogether ? together.at(together.anvilSpeed, t) : lower.anvilSpeed(t);
    }

    @Override
    public double nutSpeedRadPerS(double t) {
        return isTogether ? together.at(together.nutSpeed, t) : lower.nutSpeed(t);
    }

    @Override
    public double clampForceN(double t) {
        return nut.clampForceAfter(isTogether ? together.at(together.turn, t) : lower.turn(t));
    }

    @Override
    public double motorTorqueNm(double t) {
        if (drive.isCarrierHeld()) {
            double relative = -hammerSpeedRadPerS(t);
            return drive.camTorque(isTogether ? together.at(together.delta, t) : upper.delta(t), relative);
        }
        return drive.isAtLimit() ? drive.motorConstant : drive.motorTorque(carrierSpeedRadPerS(t));
    }

    @Override
    public double socketTorqueNm(double t) {
        return isTogether ? together.at(together.socketTorque, t) : lower.torque(t);
    }

    @Override
    public double lugTorqueNm(double t) {
        return isTogether && lug == Together.CONTACT ? Math.max(0, together.at(together.lugTorque, t)) : 0;
    }

    @Override
    public boolean isSettled() {
        if (nut.direction != 0 || drive.isPowered() || !drive.isEngaged()) {
            return false;
        }
        double angle = isTogether ? together.nutAngle : lower.nutAngle;
        double limit = Math.min(nut.slipLimitOn(angle), nut.slipLimitOff(angle));
        double energy = energyJ();
        return tool.socket().greatestTorqueNm(energy) < limit
                && Settling.noBlowCanFall(tool, drive.drive, energy, blowIsDue, -gapRad());
    }

    private double gapRad() {
        return hammerAngleRad(timeS) - anvilAngleRad(timeS) - lugPitch * state.lugsPassed;
    }

    private double energyJ() {
        double relative = isTogether ? together.at(together.delta, timeS) : upper.delta(timeS);
        double gap = isTogether ? Math.max(0, together.at(together.psi, timeS)) : 0;
        double phi = isTogether ? together.at(together.twist, timeS) : lower.twist(timeS);
        return tool.kineticEnergyJ(
                        carrierSpeedRadPerS(timeS),
                        hammerSpeedRadPerS(timeS),
                        isTogether ? together.at(together.anvilSpeed, timeS) : lower.anvilSpeed(timeS),
                        isTogether ? together.at(together.nutSpeed, timeS) : lower.nutSpeed(timeS))
                + drive.springEnergyJ(relative)
                + tool.hammer().lugEnergyJ(gap)
                + tool.socket().energyJ(phi);
    }

    @Override
    public void copyFrom(Plant other) {
        if (!(other instanceof FastPlant from)) {
            throw new IllegalArgumentException("a plant copies from its own kind only");
        }
        drive.copyFrom(from.drive);
        nut.copyFrom(from.nut);
        upper.copyFrom(from.upper);
        lower.copyFrom(from.lower);
        together.copyFrom(from.together);
        state.copyFrom(from.state);
        tool = from.tool;
        lugPitch = from.lugPitch;
        timeS = from.timeS;
        plannedS = from.plannedS;
        isTogether = from.isTogether;
        upperIsStale = from.upperIsStale;
        lowerIsStale = from.lowerIsStale;
        touchIsDue = from.touchIsDue;
        passIsDue = from.passIsDue;
        nearIsDue = from.nearIsDue;
        lug = from.lug;
        lugForceIsZero = from.lugForceIsZero;
        blowIsDue = from.blowIsDue;
        stateIsStale = true;
        carrierSpeed = from.carrierSpeed;
        hammerSpeed = from.hammerSpeed;
        anvilSpeed = from.anvilSpeed;
        nutSpeed = from.nutSpeed;
        delta = from.delta;
        psi = from.psi;
        twist = from.twist;
        nutAngle = from.nutAngle;
        hammerAngle = from.hammerAngle;
    }
}
