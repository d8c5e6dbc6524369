package org.shutoffbench.controller.strategy.adaptive;

import org.shutoffbench.controller.Command;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.Target;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.controller.signal.BlowChannel;
import org.shutoffbench.controller.signal.PulseArea;
import org.shutoffbench.controller.strategy.ShutoffLatch;

/**
 * Lets the estimator happen tick by tick: hear, observe, fit, decide.
 *
 * <p>A sample that is not finite repeats the last one. A tool that has been blind for {@link #BLIND_S} brakes and is UNSURE.
 */
final class AdaptiveStrategy implements ShutoffStrategy {

    private static final float BLIND_S = 0.2f;
    /** A last blow that has not come after so many usual periods will not come. */
    private static final float WAIT_FOR_LAST = 2.5f;

    private final ToolCalibration tool;
    private final HousingFollower housing;
    private final BlowObserver observer;
    private final PulseArea pulse;
    private final JointEstimator estimator;
    private final StopRule stopRule;
    private final Certainty certainty;
    private final ShutoffLatch latch = new ShutoffLatch();
    private final float aim;
    private final int blindTicks;

    private float targetNm;
    private float angleRad;
    private float speedRadPerS;
    private float startRad;
    private float level;
    private int blind;
    private int usualPeriod;
    private boolean started;
    private boolean deciding;
    private boolean ending;

    AdaptiveStrategy(Settings settings, Provision provision) {
        tool = new ToolCalibration(settings);
        housing = new HousingFollower(settings, provision.periodS());
        observer = new BlowObserver(provision.periodS());
        pulse = new PulseArea(provision.periodS());
        estimator = new JointEstimator(settings, tool);
        stopRule = new StopRule(tool, settings.get(AdaptiveSettings.TRIM) >= 0.5f);
        certainty = new Certainty(settings);
        aim = settings.get(AdaptiveSettings.AIM);
        blindTicks = Math.round(BLIND_S / provision.periodS());
    }

    @Override
    public void arm(Target target) {
        latch.arm(target);
        targetNm = aim * target.clampingTorqueNm();
        certainty.arm(target);
        housing.reset();
        observer.reset();
        pulse.reset();
        estimator.reset(targetNm);
        angleRad = 0;
        speedRadPerS = 0;
        startRad = 0;
        level = 1;
        blind = 0;
        usualPeriod = 0;
        started = false;
        deciding = false;
        ending = false;
    }

    @Override
    public Command onSample(SensorFrame frame) {
        if (latch.isOpen()) {
            if (latch.hasNothingToReach()) {
                latch.shut(Verdict.REACHED);
            } else {
                hear(frame);
                work();
            }
        }
        return latch.isOpen() && level < 1 ? Command.keep(level) : latch.command();
    }

    private void hear(SensorFrame frame) {
        pulse.update(frame.torqueNm);
        boolean sees = Float.isFinite(frame.anvilAngleRad) && Float.isFinite(frame.carrierSpeedRadPerS);
        blind = sees ? 0 : blind + 1;
        if (Float.isFinite(frame.carrierSpeedRadPerS)) {
            speedRadPerS = frame.carrierSpeedRadPerS;
        }
        float housingRad = housing.follow(level, speedRadPerS);
        if (Float.isFinite(frame.anvilAngleRad)) {
            angleRad = frame.anvilAngleRad + housingRad;
            if (!started) {
                started = true;
                startRad = angleRad;
            }
        }
        if (blind > blindTicks) {
            latch.shut(Verdict.UNSURE);
        } else if (observer.observe(angleRad, speedRadPerS, BlowChannel.plausible(frame.blows))) {
            takeBlow();
        } else if (ending && !deciding && observer.sinceContact() > WAIT_FOR_LAST * usualPeriod) {
            end();
        }
    }

    private void takeBlow() {
        if (ending) {
            level = 0;
            estimator.takeLast(observer, stopRule.lastBlowJ);
            deciding = estimator.beginFit();
            return;
        }
        estimator.take(observer, pulse.take(), startRad);
        usualPeriod = observer.period;
        deciding = estimator.beginFit();
    }

    private void work() {
        if (deciding) {
            estimator.fit.work();
            if (estimator.fit.finished) {
                deciding = false;
                decide();
            }
        }
    }

    private void decide() {
        if (ending) {
            end();
            return;
        }
        float next = stopRule.nextLevel(
                estimator.fit.guess, estimator.endRad(), estimator.lastEnergyJ, observer.meanSpeedRadPerS, targetNm);
        if (next == StopRule.STOP) {
            end();
        } else if (next < 1) {
            level = next;
            ending = true;
        }
    }

    private void end() {
        latch.shut(certainty.verdict(estimator.fit, estimator.endRad(), estimator.restlessness()));
    }

    @Override
    public Verdict verdict() {
        return latch.verdict();
    }

    @Override
    public int estimates(float[] into) {
        boolean known = estimator.hasFit;
        JointLawGuess guess = estimator.fit.guess;
        float end = estimator.endRad();
        into[0] = known ? guess.clampingNm(end) : Float.NaN;
        into[1] = known ? estimator.fit.deviationNm(end) : Float.NaN;
        into[2] = known ? guess.freeNm(end) : Float.NaN;
        into[3] = known ? estimator.firstRestRad() + guess.value[JointLawGuess.SNUG] - startRad : Float.NaN;
        into[4] = known ? guess.rate : Float.NaN;
        into[5] = known ? estimator.fit.misfit() : Float.NaN;
        return 6;
    }
}
