package org.shutoffbench.harness.lesson;

import java.util.ArrayList;
import java.util.List;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.plant.FastPlant;
import org.shutoffbench.plant.PlantState;
import org.shutoffbench.plant.Run;
import org.shutoffbench.tool.ImpactTool;
import org.shutoffbench.tool.ReferenceTools;

/**
 * One joint on the real plant, struck blow by blow. The tool counts: it brakes at the first contact of the last blow set, and
 * the run-on is waited for. Without a count it goes on striking.
 *
 * <p>Not safe for several threads.
 */
final class LiveTightening {

    /** Without a count the page stops here. */
    static final int MOST_BLOWS = 60;

    private static final ImpactTool TOOL = ReferenceTools.LIGHT;
    private static final double LIMIT_S = 10;
    private static final int WORK_STEPS = 64;

    private final JointLaw law;
    private final int count;
    private final Run run = new Run(new FastPlant());
    private final List<BlowFrame> frames = new ArrayList<>();
    private PlantState state;

    /**
     * Starts from rest and goes to the first contact.
     *
     * @param count blows that the tool is set to; 0 for none
     */
    LiveTightening(Knobs knobs, int count) {
        if (count < 0 || count > MOST_BLOWS) {
            throw new IllegalArgumentException("the count must lie between 0 and " + MOST_BLOWS);
        }
        this.law = knobs.law();
        this.count = count;
        run.start(law, TOOL, knobs.battery());
        state = run.untilBlow(1, LIMIT_S);
        frames.add(frame(0, state.timeS, 0, 0, state.nutAngleRad));
    }

    /** Whether the tool has stopped itself, or must be stopped. */
    boolean stopped() {
        return blows() >= (count == 0 ? MOST_BLOWS : count) || state.fractured || state.timeS >= LIMIT_S;
    }

    /** Whether the tool says that the joint is done. */
    boolean done() {
        return count > 0 && blows() >= count;
    }

    int blows() {
        return frames.size() - 1;
    }

    /** One more blow. */
    BlowFrame strike() {
        if (stopped()) {
            throw new IllegalStateException("the tool has stopped");
        }
        int blow = frames.size();
        double timeS = state.lastBlowTimeS;
        double speed = state.lastBlowHammerSpeedRadPerS;
        double energyJ = TOOL.hammer().inertiaKgM2() * speed * speed / 2;
        double fromRad = state.nutAngleRad;
        state = blow == count ? run.brakedAtBlow(blow, LIMIT_S) : run.untilBlow(blow + 1, LIMIT_S);
        BlowFrame frame = frame(blow, timeS, energyJ, fromRad, state.nutAngleRad);
        frames.add(frame);
        return frame;
    }

    private BlowFrame frame(int blow, double timeS, double energyJ, double fromRad, double toRad) {
        double insertJ = 0;
        double clampingJ = 0;
        double step = (toRad - fromRad) / WORK_STEPS;
        for (int i = 0; i < WORK_STEPS && blow > 0; i++) {
            double angleRad = fromRad + (i + 0.5) * step;
            insertJ += law.freeTorque().torqueNm(angleRad) * step;
            clampingJ += clampingNm(angleRad) * step;
        }
        return new BlowFrame(
                blow,
                timeS,
                Math.toDegrees(toRad - law.clamp().snugAngleRad()),
                state.clampForceN / 1000,
                law.torqueTension().kappaOnM() * state.clampForceN,
                state.torqueToMoveNm,
                energyJ,
                insertJ,
                clampingJ,
                insertJ + clampingJ > energyJ || Math.toDegrees(toRad - fromRad) > SPIN_DEG);
    }

    private static final double SPIN_DEG = 180;

    private double clampingNm(double angleRad) {
        return law.torqueTension().kappaOnM()
                * law.clamp().forceN(angleRad - law.clamp().snugAngleRad());
    }

    /** Strikes until so many blows, or until it stops. */
    LiveTightening strikeTo(int blows) {
        while (blows() < blows && !stopped()) {
            strike();
        }
        return this;
    }

    /** The start and every blow up to now. */
    List<BlowFrame> frames() {
        return List.copyOf(frames);
    }

    BlowFrame last() {
        return frames.get(frames.size() - 1);
    }
}
