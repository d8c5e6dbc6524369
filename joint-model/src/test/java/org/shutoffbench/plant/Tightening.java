package org.shutoffbench.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.shutoffbench.joint.ClampLaw;
import org.shutoffbench.joint.FreeTorque;
import org.shutoffbench.joint.Galling;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.joint.TorqueTension;
import org.shutoffbench.joint.Yielding;
import org.shutoffbench.tool.Cam;
import org.shutoffbench.tool.Hammer;
import org.shutoffbench.tool.ImpactTool;
import org.shutoffbench.tool.Motor;
import org.shutoffbench.tool.ReferenceTools;
import org.shutoffbench.tool.Socket;

/** A random joint with a random tool, driven to 40 blows (or 3 s) and then stopped: what solvers are compared on. */
record Tightening(JointLaw joint, ImpactTool tool, double supply, double level, Drive stop) {

    /** How far the draws reach: about the demo families, or well outside them. */
    record Reach(
            double softest,
            double stiffest,
            double leastPrevailing,
            double mostPrevailing,
            double mostStatic,
            double tool) {
        static final Reach FAMILIES = new Reach(60e6, 400e6, 4, 14, 1.15, 0.05);
        static final Reach FAR_OUT = new Reach(10e6, 1000e6, 0, 60, 1.4, 0.3);
    }

    private static final double LIMIT_S = 3;
    private static final double GRAZING_RAD = 1e-7;
    /** Instants of a step at which the lugs are looked at. */
    private static final int LOOKS = 16;

    static Tightening draw(long seed, Reach reach) {
        SplittableRandom random = new SplittableRandom(seed);
        double snug = 2 * Math.PI * random.nextDouble(1, 3.5);
        JointLaw joint = joint(random, reach, snug);
        ImpactTool base = random.nextBoolean() ? ReferenceTools.LIGHT : ReferenceTools.HEAVY;
        return new Tightening(
                joint,
                tool(base, random, reach.tool),
                random.nextDouble(0.75, 1),
                random.nextBoolean() ? 1 : random.nextDouble(0.4, 1),
                random.nextBoolean() ? Drive.BRAKE : Drive.COAST);
    }

    private static JointLaw joint(SplittableRandom random, Reach reach, double snug) {
        double pitch = 1.75e-3;
        double d = 12e-3;
        double mu = random.nextDouble(0.08, 0.2);
        TorqueTension tension =
                TorqueTension.of(pitch, d - 0.64952 * pitch, 1.3 * d, mu, mu * random.nextDouble(0.9, 1.1));
        double stiffness = Math.exp(random.nextDouble(Math.log(reach.softest), Math.log(reach.stiffest)));
        double perAngle = stiffness * pitch / (2 * Math.PI);
        double seating = Math.toRadians(random.nextInt(20) == 0 ? 0 : random.nextDouble(4, 45));
        FreeTorque free = FreeTorque.of(random.nextInt(8) == 0 ? 0 : 0.2, pieces(random, reach, snug));
        Yielding yielding = random.nextInt(4) == 0
                ? Yielding.at(Math.max(perAngle * seating * 0.65, random.nextDouble(30e3, 80e3)))
                : Yielding.OFF;
        Galling galling = random.nextInt(6) == 0
                ? new Galling(snug + random.nextDouble(0, 1), random.nextDouble(1.1, 2))
                : Galling.NONE;
        double s = random.nextInt(3) == 0 ? 1 : random.nextDouble(1, reach.mostStatic);
        return new JointLaw(tension, new ClampLaw(perAngle, snug, seating), free, s, yielding, galling);
    }

    private static List<FreeTorque.Piece> pieces(SplittableRandom random, Reach reach, double snug) {
        List<FreeTorque.Piece> all = new ArrayList<>();
        int kind = random.nextInt(5);
        if (kind > 0) {
            double from = snug - 2 * Math.PI * random.nextDouble(0.6, 1.4);
            double most = random.nextDouble(reach.leastPrevailing, reach.mostPrevailing);
            all.addAll(ReferenceJoints.lockNut(from, 2 * Math.PI, most));
        }
        if (kind == 2) {
            all.add(FreeTorque.Piece.constantFrom(0, random.nextDouble(2, 10)));
        }
        if (kind == 3) {
            double width = random.nextDouble(0.3, 1.5);
            double height = random.nextDouble(1, 8);
            for (int k = 0; k < 4; k++) {
                double from = snug - 2 + Math.PI * k;
                all.add(new FreeTorque.Piece(from, from + width, 0, 4 * height / width, -4 * height / (width * width)));
            }
        }
        if (kind == 4) {
            all.add(new FreeTorque.Piece(0, 100, 0, random.nextDouble(0.1, 0.4), 0));
        }
        return all;
    }

    private static ImpactTool tool(ImpactTool base, SplittableRandom random, double spread) {
        DoubleUnaryOperator vary = x -> x * (1 + spread * (2 * random.nextDouble() - 1));
        Motor m = base.motor();
        Cam c = base.cam();
        Hammer h = base.hammer();
        Socket s = base.socket();
        return new ImpactTool(
                new Motor(
                        vary.applyAsDouble(m.inertiaKgM2()),
                        vary.applyAsDouble(m.stallTorqueNm()),
                        vary.applyAsDouble(m.torqueLimitNm()),
                        vary.applyAsDouble(m.noLoadSpeedRadPerS()),
                        m.dragTorqueNm()),
                new Cam(
                        vary.applyAsDouble(c.preloadTorqueNm()),
                        vary.applyAsDouble(c.stiffnessNmPerRad()),
                        vary.applyAsDouble(c.dampingNmSPerRad()),
                        vary.applyAsDouble(c.seatAngleRad()),
                        c.liftOffAngleRad() * (1 + 0.3 * spread * (2 * random.nextDouble() - 1)),
                        c.grooveEndRad() * (1 + 0.3 * spread * random.nextDouble()),
                        c.grooveStiffnessNmPerRad(),
                        c.grooveDampingNmSPerRad()),
                new Hammer(
                        vary.applyAsDouble(h.inertiaKgM2()),
                        h.lugsPerTurn(),
                        vary.applyAsDouble(h.lugStiffnessNmPerRad()),
                        vary.applyAsDouble(h.lugDampingNmSPerRad())),
                new Socket(
                        vary.applyAsDouble(s.anvilInertiaKgM2()),
                        vary.applyAsDouble(s.nutInertiaKgM2()),
                        vary.applyAsDouble(s.stiffnessNmPerRad()),
                        vary.applyAsDouble(s.dampingNmSPerRad())),
                base.housing());
    }

    void start(Plant plant) {
        plant.start(joint, tool, supply);
        plant.command(Drive.KEEP, level);
    }

    /** What solvers are compared on; bounces before the stop, as a run-on may end between two of them. */
    record End(double clampForceN, int blows, int bouncesAtStop, int guardSteps) {}

    End run(Plant plant) {
        start(plant);
        Run run = new Run(plant);
        int bounces = run.untilBlow(40, LIMIT_S).bounces;
        plant.command(stop, 0);
        PlantState end = run.runOn();
        return new End(end.clampForceN, end.blows, bounces, end.guardSteps);
    }

    PlantState on(Plant plant) {
        start(plant);
        Run run = new Run(plant);
        run.untilBlow(40, LIMIT_S);
        plant.command(stop, 0);
        return run.runOn();
    }

    /** Bounces before the stop before which the lugs hardly touched or hardly parted: less than {@link #GRAZING_RAD}. */
    int grazes(Plant plant) {
        start(plant);
        double lugPitch = 2 * Math.PI / tool.hammer().lugsPerTurn();
        int grazes = 0;
        int bounces = 0;
        double pressedRad = 0;
        double apartRad = 0;
        while (plant.state().blows < 40 && !plant.state().fractured && plant.plan() < LIMIT_S) {
            double from = plant.state().timeS;
            double step = (plant.plan() - from) / LOOKS;
            for (int look = 0; look <= LOOKS; look++) {
                double t = Math.min(from + look * step, plant.plan());
                double gap = plant.hammerAngleRad(t) - plant.anvilAngleRad(t) - lugPitch * plant.state().lugsPassed;
                pressedRad = Math.max(pressedRad, gap);
                apartRad = Math.max(apartRad, -gap);
            }
            int touches = plant.state().blows + plant.state().bounces;
            plant.commit();
            if (plant.state().bounces != bounces) {
                grazes += Math.min(pressedRad, apartRad) < GRAZING_RAD ? 1 : 0;
                bounces = plant.state().bounces;
            }
            if (plant.state().blows + plant.state().bounces != touches) {
                pressedRad = 0;
                apartRad = 0;
            }
        }
        return grazes;
    }

    /** The same with the books kept. */
    EnergyAudit.Balance audited(Plant plant) {
        start(plant);
        EnergyAudit audit = new EnergyAudit(plant, joint, tool);
        while (plant.state().blows < 40 && !plant.state().fractured && plant.plan() < LIMIT_S) {
            audit.commit();
        }
        plant.command(stop, 0);
        double end = plant.state().timeS + Run.RUN_ON_S;
        while (!plant.isSettled() && !plant.state().fractured && plant.plan() < end) {
            audit.commit();
        }
        return audit.balance();
    }
}
