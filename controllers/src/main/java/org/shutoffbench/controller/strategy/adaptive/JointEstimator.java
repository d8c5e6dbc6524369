package org.shutoffbench.controller.strategy.adaptive;

import org.shutoffbench.controller.Settings;

/** Takes blow after blow and keeps the fit of the joint law up to date, in bounded pieces of work. */
final class JointEstimator {

    private static final float DEG = (float) (Math.PI / 180);
    /** A nut that advances more than this may still move when the blow is read; it is read again before the next, rad. */
    private static final float SLOW_RAD = 8 * DEG;
    /** A nut that advances more than this has run on freely, rad. */
    private static final float RAN_ON_RAD = 92 * DEG;
    /** A nut that first rests beyond this spun freely, rad. */
    private static final float FREE_RAD = 315 * DEG;
    /** A pause so much longer than the one before holds a blow that nobody reported. */
    private static final float PAUSE = 1.6f;
    /** Fits begin when torque has risen by this share of the target. */
    private static final float BEGIN_AT = 0.3f;

    /** Relative standard deviation of the energy that one usual blow transmits. */
    private static final float USUAL_SPREAD = 0.012f;

    private static final int FIRST_ITERATIONS = 8;
    private static final int ITERATIONS = 3;
    /** Fits end when the clamping torque moves less, as a share of the target. */
    private static final float TOLERANCE = 0.001f;

    private final ToolCalibration tool;
    private final JointPrior prior;
    private final BlowHistory history = new BlowHistory();
    private final SwayGauge sway;
    private final FirstGuess firstGuess;

    final JointFit fit;

    private float targetNm;
    private boolean hasPath;
    private boolean spunFreely;
    private boolean newestIsSlow;
    private float lastRestBeforeRad;
    private float lastRestAfterRad;
    private float firstRestRad;
    private float rundownSpeedRadPerS;
    private int lastPeriod;

    /** Energy of the last blow, J. */
    float lastEnergyJ;
    /** Whether there is a fit. */
    boolean hasFit;

    JointEstimator(Settings settings, ToolCalibration tool) {
        this.tool = tool;
        prior = new JointPrior(settings);
        sway = new SwayGauge(settings.get(AdaptiveSettings.STEP_NOISE) * DEG);
        firstGuess = new FirstGuess(tool, history);
        fit = new JointFit(tool, prior, history);
    }

    void reset(float newTargetNm) {
        targetNm = newTargetNm;
        history.reset();
        sway.reset();
        fit.reset();
        hasPath = false;
        spunFreely = false;
        newestIsSlow = false;
        lastRestBeforeRad = 0;
        lastRestAfterRad = 0;
        firstRestRad = 0;
        rundownSpeedRadPerS = 0;
        lastEnergyJ = 0;
        hasFit = false;
        lastPeriod = 0;
    }

    /**
     * Takes a blow.
     *
     * @param pulseAreaNms area of its torque pulse, N m s; 0 where there is no torque channel
     * @param startRad anvil angle at the start of the tightening, rad
     */
    void take(BlowObserver blow, float pulseAreaNms, float startRad) {
        boolean ranOn = newestIsSlow && blow.restBeforeRad - lastRestBeforeRad > RAN_ON_RAD;
        float energy;
        float spread = USUAL_SPREAD;
        if (!hasPath || ranOn) {
            if (!blow.wasAtRest) {
                return;
            }
            beginPath(blow.restBeforeRad - startRad);
            firstRestRad = blow.restBeforeRad;
            rundownSpeedRadPerS = blow.highestSpeedRadPerS;
            energy = tool.firstBlowEnergyJ(blow.contactSpeedRadPerS);
            spread = tool.firstBlowSpread;
        } else {
            completeLast(blow);
            energy = tool.blowEnergyJ(blow.meanSpeedRadPerS);
        }
        float advance = blow.restAfterRad - blow.restBeforeRad;
        newestIsSlow = advance > SLOW_RAD;
        history.add(advance, energy, 1, spread * spread, newestIsSlow ? sway.driftVariance() : sway.stepVariance());
        history.hearPulse(tool.pulseTorqueNm(pulseAreaNms));
        lastRestBeforeRad = blow.restBeforeRad;
        lastRestAfterRad = blow.restAfterRad;
        lastEnergyJ = energy;
    }

    /**
     * Takes the last blow, struck at reduced drive: its energy is known roughly, yet what it did to the nut tells whether the
     * torque is what it seemed.
     *
     * @param energyJ energy that it should have had, J
     */
    void takeLast(BlowObserver blow, float energyJ) {
        if (newestIsSlow) {
            history.correctNewest(blow.restBeforeRad - lastRestBeforeRad, lastEnergyJ, 1, sway.driftVariance());
        }
        float spread = tool.lastBlowSpread * lastEnergyJ / Math.max(0.1f, energyJ);
        history.add(
                blow.restAfterRad - blow.restBeforeRad,
                energyJ,
                1,
                spread * spread + USUAL_SPREAD * USUAL_SPREAD,
                sway.stepVariance());
    }

    /** The nut rests for the first time, or has run on freely since its last blow: its path begins here. */
    private void beginPath(float sinceStartRad) {
        hasPath = true;
        hasFit = false;
        history.reset();
        spunFreely = sinceStartRad > FREE_RAD;
    }

    /** The rest before a blow tells where a slow nut came to rest after the last one, and whether a blow was missed. */
    private void completeLast(BlowObserver blow) {
        float drift = blow.restBeforeRad - lastRestAfterRad;
        boolean missedOne = lastPeriod > 0 && blow.period > PAUSE * lastPeriod;
        if (newestIsSlow) {
            float blows = missedOne ? 2 : 1;
            float advance = blow.restBeforeRad - lastRestBeforeRad;
            history.correctNewest(advance, blows * lastEnergyJ, blows, sway.driftVariance());
        } else if (missedOne) {
            history.add(Math.max(0, drift), lastEnergyJ, 1, USUAL_SPREAD * USUAL_SPREAD, sway.driftVariance());
        } else {
            sway.hear(drift);
        }
        if (!missedOne) {
            lastPeriod = blow.period;
        }
    }

    /** Begins a fit; false where the joint cannot be close to its target yet. */
    boolean beginFit() {
        if (hasFit) {
            fit.begin(ITERATIONS, TOLERANCE * targetNm);
            return true;
        }
        boolean ranIntoSnug = firstGuess.ranIntoSnug(spunFreely);
        prior.believe(spunFreely, ranIntoSnug);
        if (!firstGuess.make(spunFreely, prior, fit.guess) || firstGuess.risenNm() < BEGIN_AT * targetNm) {
            return false;
        }
        hasFit = true;
        fit.setRundown(ranIntoSnug ? tool.rundownEnergyJ(rundownSpeedRadPerS) : 0, tool.rundownSpread);
        fit.begin(FIRST_ITERATIONS, TOLERANCE * targetNm);
        return true;
    }

    /** Anvil angle at the first rest, from which angles of the fit count, rad. */
    float firstRestRad() {
        return firstRestRad;
    }

    /** How restless the arm is, 1 as believed. */
    float restlessness() {
        return sway.restlessness();
    }

    /** Angle of the newest rest from the first, rad. */
    float endRad() {
        return history.endRad();
    }
}
