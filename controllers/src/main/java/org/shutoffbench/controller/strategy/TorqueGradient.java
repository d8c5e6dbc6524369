package org.shutoffbench.controller.strategy;

import java.util.List;
import java.util.Set;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Command;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.Setting.Role;
import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.Target;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.controller.signal.BlowSteps;
import org.shutoffbench.controller.signal.PulseDetector;
import org.shutoffbench.controller.signal.RecursiveLeastSquares;
import org.shutoffbench.controller.signal.SnugDetector;

/**
 * Looks for yield: past snug, fits pulse peak against anvil angle with forgetting, and brakes when the slope has fallen to a
 * fraction of the steepest seen, and says REACHED. It aims at the bolt's yield, not at the target torque, and an impact
 * tool that nears its own limit flattens the curve as yield does.
 */
public final class TorqueGradient implements ShutoffStrategy {

    private static final String FRACTION = "gradient fraction";
    private static final String LEAST_TORQUE = "least pulse torque";

    private static final float FORGETTING = 0.85f;
    private static final float START_VARIANCE = 1e6f;
    /** Points before a slope is believed: two lie on any line. */
    private static final int LEAST_POINTS = 4;

    private static final StrategyDescriptor DESCRIPTOR = new StrategyDescriptor(
            "torque gradient",
            "stop when torque over angle flattens, as it does at yield",
            Set.of(Channel.TORQUE, Channel.ANVIL_ANGLE),
            Set.of(),
            List.of(
                    new Setting(
                            FRACTION, "1", 0.02, 0.98, 0.5, "slope over the steepest slope at the stop", Role.TUNED),
                    new Setting(
                            LEAST_TORQUE, "N*m", 1, 2000, 100, "peak below which no slope stops the tool", Role.TUNED),
                    SnugSettings.BLOW_WORK,
                    SnugSettings.SLOWEST_SEATING),
            List.of("last peak [N m]", "snug angle [rad]", "gradient [N m/rad]"),
            540);

    private final float fraction;
    private final float leastTorqueNm;
    private final PulseDetector pulses;
    private final BlowSteps steps;
    private final SnugDetector snug;
    private final float workJ;
    private final RecursiveLeastSquares line = new RecursiveLeastSquares(2, FORGETTING, START_VARIANCE);
    private final float[] regressors = {1, 0};
    private final ShutoffLatch latch = new ShutoffLatch();
    private boolean hasPeak;
    private boolean hasAngle;
    private int points;
    private float steepestNmPerRad;

    private TorqueGradient(
            float fraction,
            float leastTorqueNm,
            PulseDetector pulses,
            BlowSteps steps,
            SnugDetector snug,
            float workJ) {
        this.fraction = fraction;
        this.leastTorqueNm = leastTorqueNm;
        this.pulses = pulses;
        this.steps = steps;
        this.snug = snug;
        this.workJ = workJ;
    }

    @Override
    public void arm(Target target) {
        latch.arm(target);
        pulses.reset();
        steps.reset();
        snug.reset();
        line.reset();
        hasPeak = false;
        hasAngle = false;
        points = 0;
        steepestNmPerRad = 0;
    }

    @Override
    public Command onSample(SensorFrame frame) {
        if (latch.isOpen()) {
            boolean flat = completesBlow(frame) && snug.isSnug() && isFlat();
            if (flat || latch.hasNothingToReach()) {
                latch.shut(Verdict.REACHED);
            }
        }
        return latch.command();
    }

    /** True at the sample that makes a blow's point complete: its pulse has ended and its angle is known, in any order. */
    private boolean completesBlow(SensorFrame frame) {
        pulses.update(frame.torqueNm);
        if (pulses.began()) {
            hasPeak = false;
            hasAngle = false;
        }
        if (steps.update(frame.anvilAngleRad, pulses.began())) {
            snug.update(steps.beforeRad(), steps.afterRad(), workJ);
            hasAngle = true;
        }
        hasPeak |= pulses.ended();
        if (hasPeak && hasAngle) {
            hasPeak = false;
            hasAngle = false;
            return true;
        }
        return false;
    }

    private boolean isFlat() {
        float pastSnug = steps.afterRad() - snug.snugAngleRad();
        if (!Float.isFinite(pastSnug)) {
            return false;
        }
        regressors[1] = pastSnug;
        line.update(regressors, pulses.lastPeakNm());
        points++;
        if (points < LEAST_POINTS) {
            return false;
        }
        float slope = line.parameter(1);
        steepestNmPerRad = Math.max(steepestNmPerRad, slope);
        return pulses.lastPeakNm() >= leastTorqueNm && slope <= fraction * steepestNmPerRad;
    }

    @Override
    public Verdict verdict() {
        return latch.verdict();
    }

    @Override
    public int estimates(float[] into) {
        into[0] = pulses.lastPeakNm();
        into[1] = snug.isSnug() ? snug.snugAngleRad() : Float.NaN;
        into[2] = points < LEAST_POINTS ? Float.NaN : line.parameter(1);
        return 3;
    }

    /** Makes the strategy. */
    public static final class Factory implements StrategyFactory {

        @Override
        public StrategyDescriptor descriptor() {
            return DESCRIPTOR;
        }

        @Override
        public ShutoffStrategy create(Settings settings, Provision provision) {
            provision.demand(DESCRIPTOR);
            return new TorqueGradient(
                    settings.get(FRACTION),
                    settings.get(LEAST_TORQUE),
                    new PulseDetector(PulseDetector.USUAL_FLOOR_NM, provision.sampleRateHz()),
                    BlowSteps.fromContacts(provision.sampleRateHz()),
                    SnugSettings.detector(settings),
                    settings.get(SnugSettings.BLOW_WORK.name()));
        }
    }
}
