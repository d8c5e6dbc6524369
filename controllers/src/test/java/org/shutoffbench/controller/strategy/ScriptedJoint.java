package org.shutoffbench.controller.strategy;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Command;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.Target;

/**
 * An invented joint played to a strategy without noise, blow by blow: torque is constant up to snug and a straight line past
 * it, and every blow does the same work. What a strategy should do with it can be said in advance.
 */
final class ScriptedJoint {

    static final int RATE_HZ = 10_000;
    /** Ticks from contact to contact: 40 ms. */
    static final int SPACING = 400;
    /** Ticks from the contact to the sample at which a step is measured: 4 ms. */
    static final int MEASURED = 40;
    /** Ticks from the contact to the dip of the carrier's speed: 6 ms. */
    static final int DIP = 60;

    /** Ticks of a torque pulse: 2 ms. */
    static final int PULSE = 20;
    /** Ticks of quiet that end it: 3 ms. */
    static final int QUIET = 30;

    static final float SPEED_RAD_PER_S = 140;

    private final double runningNm;
    private final double snugRad;
    private final double rateNmPerRad;
    private final double workJ;
    private final List<Double> restsRad = new ArrayList<>(List.of(0.0));
    private final List<Float> peaksNm = new ArrayList<>();
    private double turnsFreelyRad;
    private int pulseTicks = PULSE;

    ScriptedJoint(double runningNm, double snugRad, double rateNmPerRad, double workJ) {
        this.runningNm = runningNm;
        this.snugRad = snugRad;
        this.rateNmPerRad = rateNmPerRad;
        this.workJ = workJ;
    }

    /** Turns the nut before the first blow. */
    ScriptedJoint afterTurningFreely(double angleRad) {
        turnsFreelyRad = angleRad;
        restsRad.set(0, angleRad);
        return this;
    }

    /** Strikes until the nut has taken so many blows. */
    ScriptedJoint struck(int blows) {
        while (restsRad.size() <= blows) {
            double from = restRad(restsRad.size() - 1);
            double free = Math.max(0, snugRad - from);
            double beforeSnug = runningNm * free;
            double to = beforeSnug >= workJ
                    ? from + workJ / runningNm
                    : Math.max(from, snugRad) + rise(torqueNm(Math.max(from, snugRad)), workJ - beforeSnug);
            restsRad.add(to);
            peaksNm.add((float) torqueNm(to));
        }
        return this;
    }

    /** T d + R d^2/2 = W solved for d. */
    private double rise(double torque, double work) {
        return (Math.sqrt(torque * torque + 2 * rateNmPerRad * work) - torque) / rateNmPerRad;
    }

    /** Gives every blow a torque pulse of its own height in place of the joint's torque. */
    ScriptedJoint withPeaks(float... peaks) {
        struck(peaks.length);
        for (int i = 0; i < peaks.length; i++) {
            peaksNm.set(i, peaks[i]);
        }
        return this;
    }

    /** Gives every blow a torque pulse of so many ticks, an even number, in place of {@link #PULSE}. */
    ScriptedJoint withPulses(int ticks) {
        pulseTicks = ticks;
        return this;
    }

    /** Angle at rest after a blow, rad; blow 0 is the start. */
    double restRad(int blow) {
        return restsRad.get(blow);
    }

    double torqueNm(double angleRad) {
        return runningNm + rateNmPerRad * Math.max(0, angleRad - snugRad);
    }

    /** Clamping torque after a blow, N m. */
    double clampingNm(int blow) {
        return torqueNm(restRad(blow)) - runningNm;
    }

    /** Tick of a blow's contact. */
    static int contact(int blow) {
        return blow * SPACING;
    }

    private int blows() {
        return restsRad.size() - 1;
    }

    private SensorFrame frame(int tick) {
        int last = Math.min(tick / SPACING, blows());
        int since = tick - contact(last);
        SensorFrame frame = new SensorFrame();
        double from = restRad(Math.max(0, last - 1));
        double to = restRad(last);
        frame.anvilAngleRad = (float)
                (last == 0
                        ? turnsFreelyRad * Math.min(1, since / (SPACING - 100.0))
                        : from + (to - from) * Math.min(1, (since + 1) / 5.0));
        frame.blows = last > 0 && since == 0 ? 1 : 0;
        boolean dips = last > 0 && since >= DIP && since < DIP + 50;
        frame.carrierSpeedRadPerS = dips ? 0.75f * SPEED_RAD_PER_S : SPEED_RAD_PER_S;
        frame.torqueNm = last > 0 && since < pulseTicks
                ? peaksNm.get(last - 1) * halfSine(since + 1) / halfSine(pulseTicks / 2)
                : 0;
        return frame;
    }

    private float halfSine(int sample) {
        return (float) Math.sin(Math.PI * sample / (pulseTicks + 1));
    }

    /** A strategy and the tick at which it stopped; -1 where it never did. */
    record Heard(ShutoffStrategy strategy, int stopTick) {

        float estimate(int index) {
            float[] into = new float[8];
            strategy.estimates(into);
            return into[index];
        }
    }

    Heard playTo(StrategyFactory factory, Map<String, Double> settings) {
        return playTo(factory, settings, 84, EnumSet.allOf(Channel.class));
    }

    /** Plays the blows that were struck, then one spacing of silence. */
    Heard playTo(StrategyFactory factory, Map<String, Double> settings, float targetNm, EnumSet<Channel> channels) {
        ShutoffStrategy strategy = factory.create(
                Settings.of(factory.descriptor().settings(), settings), new Provision(RATE_HZ, channels));
        strategy.arm(new Target(targetNm, 0.15f));
        for (int tick = 0; tick < contact(blows() + 1); tick++) {
            SensorFrame frame = frame(tick);
            frame.blows = channels.contains(Channel.BLOWS) ? frame.blows : 0;
            Command command = strategy.onSample(frame);
            if (command.isShutoff()) {
                return new Heard(strategy, tick);
            }
        }
        return new Heard(strategy, -1);
    }
}
