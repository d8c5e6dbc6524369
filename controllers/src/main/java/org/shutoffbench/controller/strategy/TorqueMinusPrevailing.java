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
import org.shutoffbench.controller.signal.SnugDetector;

/**
 * The workshop rule for self-locking nuts on torque pulses: read the running torque one turn before seating, add it to
 * the threshold if it is at least a third of the target (US Army TB 43-0218: {@code TB-43-0218} in docs/references.md),
 * brake when a pulse reaches the sum, and say REACHED. A smaller running torque is left out, as the rule says, and the
 * joint lacks that much clamping torque.
 */
public final class TorqueMinusPrevailing implements ShutoffStrategy {

    private static final String THRESHOLD = "pulse torque";
    private static final String SHARE = "least share";

    private static final StrategyDescriptor DESCRIPTOR = new StrategyDescriptor(
            "torque minus prevailing",
            "stop when torque pulses reach a threshold plus the running torque read before seating",
            Set.of(Channel.TORQUE, Channel.ANVIL_ANGLE),
            Set.of(),
            List.of(
                    new Setting(
                            THRESHOLD,
                            "N*m",
                            1,
                            2000,
                            117,
                            "peak of a pulse at the target on a plain joint",
                            Role.TUNED),
                    new Setting(
                            SHARE, "1", 0, 1, 1.0 / 3, "running torque over target from which it is added", Role.FIXED),
                    SnugSettings.BLOW_WORK,
                    SnugSettings.SLOWEST_SEATING),
            List.of("last peak [N m]", "snug angle [rad]", "running torque [N m]"),
            1016);

    private final float thresholdNm;
    private final float leastShare;
    private final PulseDetector pulses;
    private final BlowSteps steps;
    private final SnugDetector snug;
    private final float workJ;
    private final RunningTorque running = new RunningTorque();
    private final ShutoffLatch latch = new ShutoffLatch();
    private float targetNm;
    private float runningNm;
    private float addedNm;

    private TorqueMinusPrevailing(
            float thresholdNm,
            float leastShare,
            PulseDetector pulses,
            BlowSteps steps,
            SnugDetector snug,
            float workJ) {
        this.thresholdNm = thresholdNm;
        this.leastShare = leastShare;
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
        running.reset();
        targetNm = target.clampingTorqueNm();
        runningNm = Float.NaN;
        addedNm = 0;
    }

    @Override
    public Command onSample(SensorFrame frame) {
        if (latch.isOpen()) {
            pulses.update(frame.torqueNm);
            if (steps.update(frame.anvilAngleRad, pulses.began()) && !snug.isSnug()) {
                seekSnug();
            }
            boolean reached = pulses.ended() && pulses.lastPeakNm() >= thresholdNm + addedNm;
            if (reached || latch.hasNothingToReach()) {
                latch.shut(Verdict.REACHED);
            }
        }
        return latch.command();
    }

    private void seekSnug() {
        boolean isSnug = snug.update(steps.beforeRad(), steps.afterRad(), workJ);
        running.add(steps.afterRad(), snug.lastTorqueNm());
        if (isSnug) {
            runningNm = running.oneTurnBeforeNm(snug.snugAngleRad());
            addedNm = runningNm >= leastShare * targetNm ? runningNm : 0;
        }
    }

    @Override
    public Verdict verdict() {
        return latch.verdict();
    }

    @Override
    public int estimates(float[] into) {
        into[0] = pulses.lastPeakNm();
        into[1] = snug.isSnug() ? snug.snugAngleRad() : Float.NaN;
        into[2] = runningNm;
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
            return new TorqueMinusPrevailing(
                    settings.get(THRESHOLD),
                    settings.get(SHARE),
                    new PulseDetector(PulseDetector.USUAL_FLOOR_NM, provision.sampleRateHz()),
                    BlowSteps.fromContacts(provision.sampleRateHz()),
                    SnugSettings.detector(settings),
                    settings.get(SnugSettings.BLOW_WORK.name()));
        }
    }
}
