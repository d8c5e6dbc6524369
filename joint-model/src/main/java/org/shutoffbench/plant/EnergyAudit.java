package org.shutoffbench.plant;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.shutoffbench.joint.ClampLaw;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.tool.Cam;
import org.shutoffbench.tool.ImpactTool;

/**
 * Follows a plant from outside and balances its energy: motor work against what is stored, rubbed away, damped and lost
 * at the lugs. Works on look-ups alone, so it audits any plant and costs nothing where it is not used.
 *
 * <p>Drive the plant through {@link #commit()} and {@link #commitAt} of the audit, not of the plant.
 */
public final class EnergyAudit {

    private static final GaussIntegrator QUADRATURE = new GaussIntegratorFactory().legendre(10);

    /** A fraction of the fastest vibration that a planned step may hold many of, s. */
    private static final double LONGEST_PART_S = 1e-4;

    private final Plant plant;
    private final JointLaw joint;
    private final ImpactTool tool;
    private final double startJ;

    private double motorWorkJ;
    private double frictionJ;
    private double plasticJ;
    private double camDampingJ;
    private double lugDampingJ;
    private double socketDampingJ;
    private double lugLossJ;
    private double jumpJ;

    /** Starts to follow a plant from its present state; joint and tool are those it was started with. */
    public EnergyAudit(Plant plant, JointLaw joint, ImpactTool tool) {
        this.plant = plant;
        this.joint = joint;
        this.tool = tool;
        startJ = storedJ(plant.state().timeS) + elasticJ();
    }

    /** Commits the planned step and books it. */
    public void commit() {
        double end = plant.plan();
        follow(end);
        double lugBefore = lugJ(end);
        double before = storedJ(end);
        double plastic = plant.state().plasticAngleRad;
        double force = plant.state().clampForceN;
        plant.commit();
        bookPlasticWork(plastic, force);
        double lugAfter = lugJ(end);
        lugLossJ += lugBefore - lugAfter;
        jumpJ += before - lugBefore - (storedJ(end) - lugAfter);
    }

    /** Commits a part of the planned step and books it. */
    public void commitAt(double timeS) {
        follow(timeS);
        double plastic = plant.state().plasticAngleRad;
        double force = plant.state().clampForceN;
        plant.commitAt(timeS);
        bookPlasticWork(plastic, force);
    }

    /** The force runs straight over the plastic angle, so its mean is exact. */
    private void bookPlasticWork(double plasticBefore, double forceBefore) {
        PlantState now = plant.state();
        double turn = now.plasticAngleRad - plasticBefore;
        plasticJ += joint.torqueTension().helixLeverM() * turn * (now.clampForceN + forceBefore) / 2;
    }

    private void follow(double toS) {
        double from = plant.state().timeS;
        int parts = 1 + (int) ((toS - from) / LONGEST_PART_S);
        double half = (toS - from) / parts / 2;
        for (int part = 0; part < parts; part++) {
            double middle = from + (2 * part + 1) * half;
            for (int i = 0; i < QUADRATURE.getNumberOfPoints(); i++) {
                add(middle + half * QUADRATURE.getPoint(i), half * QUADRATURE.getWeight(i));
            }
        }
    }

    private void add(double t, double weight) {
        double carrier = plant.carrierSpeedRadPerS(t);
        double hammer = plant.hammerSpeedRadPerS(t);
        double anvil = plant.anvilSpeedRadPerS(t);
        double nut = plant.nutSpeedRadPerS(t);
        motorWorkJ += weight * plant.motorTorqueNm(t) * carrier;
        double damped = carrier - hammer;
        double damper = tool.cam().dampingNmSPerRad();
        if (Math.abs(delta(t)) > tool.cam().grooveEndRad()) {
            damper += tool.cam().grooveDampingNmSPerRad();
        }
        camDampingJ += weight * damper * damped * damped;
        double gap = gap(t);
        if (plant.state().inContact) {
            double spring = tool.hammer().lugStiffnessNmPerRad() * gap;
            lugDampingJ += weight * (plant.lugTorqueNm(t) - spring) * (hammer - anvil);
        }
        socketDampingJ += weight * tool.socket().dampingNmSPerRad() * (anvil - nut) * (anvil - nut);
        double helix = joint.torqueTension().helixLeverM() * plant.clampForceN(t) * nut;
        frictionJ += weight * (resistance(t) * nut - helix);
    }

    private double resistance(double t) {
        int direction = plant.state().nutDirection;
        if (direction == 0) {
            return 0;
        }
        var tension = plant.state().galled
                ? joint.torqueTension().withThreadFrictionTimes(joint.galling().frictionFactor())
                : joint.torqueTension();
        double force = plant.clampForceN(t);
        double free = joint.freeTorque().torqueNm(plant.nutAngleRad(t));
        return direction > 0 ? free + tension.kappaOnM() * force : -(free + tension.kappaOffM() * force);
    }

    private double delta(double t) {
        return plant.carrierAngleRad(t) - plant.hammerAngleRad(t);
    }

    private double gap(double t) {
        return plant.hammerAngleRad(t)
                - plant.anvilAngleRad(t)
                - tool.hammer().lugPitchRad() * plant.state().lugsPassed;
    }

    /** Energy in the pressed lugs. */
    private double lugJ(double t) {
        return plant.state().inContact ? tool.hammer().lugEnergyJ(gap(t)) : 0;
    }

    /** Kinetic and spring energy without the joint's own. */
    private double storedJ(double t) {
        double twist = plant.anvilAngleRad(t) - plant.nutAngleRad(t);
        return tool.kineticEnergyJ(
                        plant.carrierSpeedRadPerS(t),
                        plant.hammerSpeedRadPerS(t),
                        plant.anvilSpeedRadPerS(t),
                        plant.nutSpeedRadPerS(t))
                + camJ(Math.abs(delta(t)))
                + lugJ(t)
                + tool.socket().energyJ(twist);
    }

    private double camJ(double reach) {
        Cam cam = tool.cam();
        double seated = Math.min(reach, cam.seatAngleRad());
        double beyond = Math.max(0, reach - cam.grooveEndRad());
        return cam.preloadTorqueNm() * (seated * seated / (2 * cam.seatAngleRad()) + reach - seated)
                + cam.stiffnessNmPerRad() * reach * reach / 2
                + cam.grooveStiffnessNmPerRad() * beyond * beyond / 2;
    }

    /** Elastic energy of the joint from its clamp force alone, helix lever times the area under the elastic law. */
    private double elasticJ() {
        ClampLaw clamp = joint.clamp();
        double e = clamp.angleForForceRad(plant.state().clampForceN);
        double width = clamp.seatingWidthRad();
        double seated = Math.min(e, width);
        double area = width > 0 ? seated * seated * seated / (6 * width) : 0;
        double linear = Math.max(0, e - width);
        area += linear * (width / 2 + linear / 2);
        return joint.torqueTension().helixLeverM() * clamp.forcePerAngleNPerRad() * area;
    }

    /** The books as of the plant's present state. */
    public Balance balance() {
        return new Balance(
                motorWorkJ,
                storedJ(plant.state().timeS) + elasticJ() - startJ,
                frictionJ,
                plasticJ,
                camDampingJ,
                lugDampingJ,
                socketDampingJ,
                lugLossJ,
                jumpJ);
    }

    /**
     * Where the motor's work went, J.
     *
     * @param motorWorkJ work of the motor, drag and braking counted negative
     * @param storedJ gain of kinetic, spring and elastic joint energy
     * @param frictionJ rubbed away at threads, bearing face, prevailing and running torque
     * @param plasticJ plastic work on the bolt
     * @param camDampingJ damped in cam and groove end
     * @param lugDampingJ damped between pressing lugs
     * @param socketDampingJ damped in the socket
     * @param lugLossJ spring energy lost when lugs slip off or part before their spring is relaxed
     * @param neglectedJ what the solver left out: residual ringing that it laid to rest
     */
    public record Balance(
            double motorWorkJ,
            double storedJ,
            double frictionJ,
            double plasticJ,
            double camDampingJ,
            double lugDampingJ,
            double socketDampingJ,
            double lugLossJ,
            double neglectedJ) {

        /** What the books miss, J. */
        public double gapJ() {
            return motorWorkJ
                    - storedJ
                    - frictionJ
                    - plasticJ
                    - camDampingJ
                    - lugDampingJ
                    - socketDampingJ
                    - lugLossJ
                    - neglectedJ;
        }

        /** What the books miss over the work done: all that was dissipated or stored. */
        public double relativeGap() {
            double turnover = Math.abs(motorWorkJ) + frictionJ + plasticJ + camDampingJ + lugDampingJ + socketDampingJ;
            return turnover > 0 ? Math.abs(gapJ()) / turnover : 0;
        }
    }
}
