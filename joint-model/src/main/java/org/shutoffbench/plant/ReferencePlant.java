package org.shutoffbench.plant;

import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.shutoffbench.joint.FreeTorque;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.plant.ReferenceMode.Lug;
import org.shutoffbench.tool.ImpactTool;
import org.shutoffbench.tool.ReferenceTools;

/**
 * The slow and trusted plant: a general-purpose adaptive integrator (Dormand-Prince 8(5,3) of Commons Math) on one frozen
 * mode at a time, with events located on its dense output. The oracle of the fast plant; the only plant that allocates.
 */
public final class ReferencePlant implements Plant {

    /** Relative tolerance of the integrator, and its absolute tolerance on speeds in rad/s. */
    public static final double TOLERANCE = 1e-10;

    /** Absolute tolerance on angles is this times the tolerance, s: angles change fast where it matters. */
    private static final double ANGLE_SCALE_S = 1e-3;

    private static final double LONGEST_PLAN_S = 4e-3;
    private static final double SHORTEST_PLAN_S = 5e-5;
    private static final double SHORTEST_STEP_S = 1e-14;
    private static final int GUARD = 64;
    private static final double GUARD_STEP_S = 1e-9;

    private final PlantState state = new PlantState();
    private final DormandPrince853Integrator integrator;
    private ReferenceMode mode;
    private DenseStep dense;
    private double lugPitch;
    private boolean blowIsDue;
    private boolean stateIsStale;
    private double timeS;
    private double planS = SHORTEST_PLAN_S;
    private double[] y = new double[ReferenceMode.SIZE];

    public ReferencePlant() {
        this(TOLERANCE);
    }

    /** With another relative tolerance, to compare costs and errors. */
    public ReferencePlant(double tolerance) {
        double[] absolute = new double[ReferenceMode.SIZE];
        double[] relative = new double[ReferenceMode.SIZE];
        for (int i = 0; i < absolute.length; i++) {
            absolute[i] = i <= ReferenceMode.NUT ? tolerance : tolerance * ANGLE_SCALE_S;
            relative[i] = tolerance;
        }
        integrator = new DormandPrince853Integrator(SHORTEST_STEP_S, LONGEST_PLAN_S, absolute, relative);
        mode = new ReferenceMode(Idle.JOINT, ReferenceTools.LIGHT, 1);
        dense = DenseStep.still(0, y);
    }

    /** What a plant holds before its first start. */
    private static final class Idle {
        static final JointLaw JOINT = new JointLaw(
                new org.shutoffbench.joint.TorqueTension(1, 1, 1),
                new org.shutoffbench.joint.ClampLaw(1, 0, 0),
                FreeTorque.of(0, java.util.List.of()),
                1,
                org.shutoffbench.joint.Yielding.OFF,
                org.shutoffbench.joint.Galling.NONE);
    }

    @Override
    public void start(JointLaw joint, ImpactTool tool, double supplyRatio) {
        mode = new ReferenceMode(joint, tool, supplyRatio);
        lugPitch = tool.hammer().lugPitchRad();
        y = new double[ReferenceMode.SIZE];
        timeS = 0;
        planS = SHORTEST_PLAN_S;
        blowIsDue = false;
        state.reset();
        chooseMotorBranch();
        integrate();
    }

    @Override
    public void command(Drive drive, double level) {
        if (!(level >= 0 && level <= 1)) {
            throw new IllegalArgumentException("drive level must lie between 0 and 1");
        }
        y = dense.at(timeS).clone();
        mode.drive = drive;
        mode.level = level;
        chooseMotorBranch();
        integrate();
    }

    private void chooseMotorBranch() {
        double speed = y[ReferenceMode.CARRIER];
        if (mode.drive == Drive.COAST) {
            double drag = mode.tool.motor().dragTorqueNm();
            double cam = mode.camTorque(y);
            mode.motor = speed != 0 ? (int) Math.signum(speed) : cam > drag ? -1 : cam < -drag ? 1 : 0;
        } else {
            double torque = mode.linearMotorTorque(speed);
            double limit = mode.tool.motor().torqueLimitNm();
            mode.motor = torque > limit ? 1 : torque < -limit ? -1 : 0;
        }
    }

    /** Integrates the present mode; events due at once are handled until time can go on. */
    private void integrate() {
        stateIsStale = true;
        for (int i = 0; ; i++) {
            dense = DenseStep.integrate(integrator, mode, timeS, y, timeS + planS);
            // what lies beyond an event is wasted: plan short after one, longer while none comes
            planS = dense.event() == null ? Math.min(LONGEST_PLAN_S, 2 * planS) : SHORTEST_PLAN_S;
            if (dense.endS() > timeS) {
                return;
            }
            if (i > GUARD) {
                state.guardSteps++;
                dense = dense.withoutEvent(timeS + GUARD_STEP_S);
                return;
            }
            handle();
        }
    }

    @Override
    public double plan() {
        return dense.endS();
    }

    @Override
    public void commitAt(double to) {
        if (!(to >= timeS && to <= dense.endS())) {
            throw new IllegalArgumentException("time lies outside the planned step");
        }
        timeS = to;
        stateIsStale = true;
    }

    @Override
    public void commit() {
        timeS = dense.endS();
        y = dense.at(timeS).clone();
        handle();
        integrate();
    }

    private void handle() {
        ReferenceEvent event = dense.event();
        if (event == null) {
            return;
        }
        event.apply(mode, y);
        if (event == ReferenceEvent.LIFT_OFF && mode.lug != Lug.FREE) {
            mode.lug = Lug.FREE;
            passLug();
        } else if (event == ReferenceEvent.LUGS_MEET) {
            meet();
        } else if (event == ReferenceEvent.CLAMP_ZONE_ENDS && mode.seat == ReferenceMode.Seat.YIELDING) {
            state.yielded = true;
        }
    }

    private void meet() {
        if (mode.lifted != 0) {
            passLug();
        } else if (blowIsDue) {
            blowIsDue = false;
            state.blows++;
            state.lastBlowTimeS = timeS;
            state.lastBlowHammerSpeedRadPerS = y[ReferenceMode.HAMMER];
        } else {
            state.bounces++;
        }
    }

    private void passLug() {
        state.lugsPassed++;
        y[ReferenceMode.PSI] -= lugPitch;
        blowIsDue = true;
    }

    @Override
    public PlantState state() {
        if (stateIsStale) {
            fillState();
            stateIsStale = false;
        }
        return state;
    }

    private void fillState() {
        double[] now = dense.at(timeS);
        state.timeS = timeS;
        state.carrierAngleRad = carrierAngleRad(timeS);
        state.carrierSpeedRadPerS = now[ReferenceMode.CARRIER];
        state.hammerAngleRad = hammerAngleRad(timeS);
        state.hammerSpeedRadPerS = now[ReferenceMode.HAMMER];
        state.anvilAngleRad = anvilAngleRad(timeS);
        state.anvilSpeedRadPerS = now[ReferenceMode.ANVIL];
        state.nutAngleRad = now[ReferenceMode.ANGLE];
        state.nutSpeedRadPerS = now[ReferenceMode.NUT];
        state.plasticAngleRad = now[ReferenceMode.PLASTIC];
        state.clampForceN = mode.clampForce(now);
        state.torqueToMoveNm = mode.torqueOn(now);
        state.engaged = mode.lifted == 0;
        state.inContact = mode.lug == Lug.PRESSING;
        state.galled = mode.galled;
        state.fractured = mode.fractured;
        state.nutDirection = mode.nut;
    }

    @Override
    public boolean isSettled() {
        double[] now = dense.at(timeS);
        if (mode.nut != 0 || mode.lifted != 0 || (mode.drive == Drive.KEEP && mode.level > 0)) {
            return false;
        }
        double limit = mode.joint.staticRatio() * Math.min(mode.torqueOn(now), mode.torqueOff(now));
        double energy = ReferenceEnergy.storedJ(mode, now);
        return mode.tool.socket().greatestTorqueNm(energy) < limit
                && Settling.noBlowCanFall(mode.tool, mode.drive, energy, blowIsDue, -now[ReferenceMode.PSI]);
    }

    @Override
    public void copyFrom(Plant other) {
        if (!(other instanceof ReferencePlant from)) {
            throw new IllegalArgumentException("a plant copies from its own kind only");
        }
        mode = new ReferenceMode(from.mode);
        dense = from.dense.copy();
        state.copyFrom(from.state);
        lugPitch = from.lugPitch;
        blowIsDue = from.blowIsDue;
        stateIsStale = true;
        timeS = from.timeS;
        planS = from.planS;
        y = from.y.clone();
    }

    // ---- look-ups

    @Override
    public double carrierAngleRad(double t) {
        return hammerAngleRad(t) + dense.at(t)[ReferenceMode.DELTA];
    }

    @Override
    public double carrierSpeedRadPerS(double t) {
        return dense.at(t)[ReferenceMode.CARRIER];
    }

    @Override
    public double hammerAngleRad(double t) {
        return anvilAngleRad(t) + dense.at(t)[ReferenceMode.PSI] + lugPitch * state.lugsPassed;
    }

    @Override
    public double hammerSpeedRadPerS(double t) {
        return dense.at(t)[ReferenceMode.HAMMER];
    }

    @Override
    public double anvilAngleRad(double t) {
        double[] then = dense.at(t);
        return then[ReferenceMode.ANGLE] + then[ReferenceMode.TWIST];
    }

    @Override
    public double anvilSpeedRadPerS(double t) {
        return dense.at(t)[ReferenceMode.ANVIL];
    }

    @Override
    public double nutAngleRad(double t) {
        return dense.at(t)[ReferenceMode.ANGLE];
    }

    @Override
    public double nutSpeedRadPerS(double t) {
        return dense.at(t)[ReferenceMode.NUT];
    }

    @Override
    public double clampForceN(double t) {
        return mode.clampForce(dense.at(t));
    }

    @Override
    public double motorTorqueNm(double t) {
        return mode.motorTorque(dense.at(t));
    }

    @Override
    public double socketTorqueNm(double t) {
        return mode.socketTorque(dense.at(t));
    }

    @Override
    public double lugTorqueNm(double t) {
        return mode.lug == Lug.PRESSING ? Math.max(0, mode.pressedLugTorque(dense.at(t))) : 0;
    }
}
