package org.shutoffbench.controller.strategy.adaptive;

import java.util.Map;
import org.shutoffbench.controller.Settings;

/** An invented joint that is struck without noise: every blow is made by the law of the joint itself. */
final class StruckJoint {

    static final float ENERGY_J = 4;
    /** Variances of a good sensor on a quiet arm. */
    static final float STEP_VARIANCE = square(0.02f * (float) Math.PI / 180);

    /** The same on the arm of a person, 0.14 deg. */
    static final float USUAL_STEP_VARIANCE = square(0.14f * (float) Math.PI / 180);

    static final float ENERGY_VARIANCE = square(0.002f);

    final JointLawGuess law = new JointLawGuess();
    final ToolCalibration tool;
    final JointPrior prior;
    final BlowHistory history = new BlowHistory();
    final JointFit fit;

    StruckJoint(float rate, float snugRad, float seatingRad, float base, float prevailing, float prevailingStartRad) {
        this(Map.of(), rate, snugRad, seatingRad, base, prevailing, prevailingStartRad);
    }

    StruckJoint(
            Map<String, Double> given,
            float rate,
            float snugRad,
            float seatingRad,
            float base,
            float prevailing,
            float prevailingStartRad) {
        Settings settings = settings(given);
        tool = new ToolCalibration(settings);
        prior = new JointPrior(settings);
        fit = new JointFit(tool, prior, history);
        fit.reset();
        history.reset();
        law.value[JointLawGuess.LOG_RATE] = (float) Math.log(rate);
        law.value[JointLawGuess.SNUG] = snugRad;
        law.value[JointLawGuess.LOG_SEATING] = (float) Math.log(seatingRad);
        law.value[JointLawGuess.BASE] = base;
        law.value[JointLawGuess.PREVAILING] = prevailing;
        law.value[JointLawGuess.PREVAILING_START] = prevailingStartRad;
        law.prepare();
    }

    static Settings settings(Map<String, Double> given) {
        return Settings.of(AdaptiveSettings.ALL, given);
    }

    /** A plain, hard joint whose nut ran into snug. */
    static StruckJoint hard() {
        return new StruckJoint(180, -0.25f, 0.14f, 0.3f, 0, -7);
    }

    /** A lock nut with snug ahead of the first rest. */
    static StruckJoint locked() {
        return new StruckJoint(105, 1.2f, 0.28f, 4, 9, -4.5f);
    }

    float endRad() {
        return history.endRad();
    }

    /** Whole torque at an angle, N m. */
    float torqueNm(float angleRad) {
        return law.clampingNm(angleRad) + law.freeNm(angleRad);
    }

    /** Advance in rad of a blow of an energy from an angle, by bisection of the energy balance. */
    float advanceRad(float fromRad, float energyJ) {
        double least = 0;
        double most = 8;
        for (int i = 0; i < 60; i++) {
            double tried = 0.5 * (least + most);
            double needed = workJ(fromRad, (float) (fromRad + tried));
            tool.lookUp((float) (needed / tried), tool.tauPerNm(energyJ));
            if (needed < energyJ * tool.share) {
                least = tried;
            } else {
                most = tried;
            }
        }
        return (float) (0.5 * (least + most));
    }

    private double workJ(float fromRad, float toRad) {
        law.look(toRad);
        double to = law.energyJ;
        law.look(fromRad);
        return to - law.energyJ;
    }

    /** Strikes blows that are measured with an error in rad. */
    StruckJoint strike(int blows, float errorRad) {
        for (int i = 0; i < blows; i++) {
            float advance = advanceRad(endRad(), ENERGY_J);
            history.add(advance + errorRad, ENERGY_J, 1, ENERGY_VARIANCE, STEP_VARIANCE);
        }
        return this;
    }

    StruckJoint strike(int blows) {
        return strike(blows, 0);
    }

    /** Fits until nothing moves; the number of pieces of work. */
    int solve(boolean spunFreely, boolean ranIntoSnug) {
        prior.believe(spunFreely, ranIntoSnug);
        FirstGuess first = new FirstGuess(tool, history);
        if (!first.make(spunFreely, prior, fit.guess)) {
            throw new IllegalStateException("no stretch lies past snug");
        }
        int pieces = 0;
        for (int again = 0; again < 5; again++) {
            fit.begin(40, 1e-4f);
            while (!fit.finished) {
                fit.work();
                pieces++;
            }
        }
        return pieces;
    }

    private static float square(float x) {
        return x * x;
    }
}
