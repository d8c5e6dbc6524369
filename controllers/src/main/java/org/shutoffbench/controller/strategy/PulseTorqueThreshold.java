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
import org.shutoffbench.controller.signal.PulseDetector;

/**
 * Brakes when the peaks of a few torque pulses in a row reach a threshold, and says REACHED. What it reads is the anvil's
 * torque: prevailing torque counts in full, and the peak exceeds the joint's torque by the hammer's surplus.
 */
public final class PulseTorqueThreshold implements ShutoffStrategy {

    private static final String THRESHOLD = "pulse torque";
    private static final String PULSES = "pulses";

    private static final StrategyDescriptor DESCRIPTOR = new StrategyDescriptor(
            "pulse torque threshold",
            "stop when torque pulses reach a threshold",
            Set.of(Channel.TORQUE),
            Set.of(),
            List.of(
                    new Setting(THRESHOLD, "N*m", 1, 2000, 117, "peak at which a pulse counts", Role.TUNED),
                    new Setting(PULSES, "1", 1, 20, 1, "pulses in a row that must count, rounded", Role.FIXED)),
            List.of("last peak [N m]"),
            40);

    private final float thresholdNm;
    private final int needed;
    private final PulseDetector pulses;
    private final ShutoffLatch latch = new ShutoffLatch();
    private int inARow;

    private PulseTorqueThreshold(float thresholdNm, int needed, PulseDetector pulses) {
        this.thresholdNm = thresholdNm;
        this.needed = needed;
        this.pulses = pulses;
    }

    @Override
    public void arm(Target target) {
        latch.arm(target);
        pulses.reset();
        inARow = 0;
    }

    @Override
    public Command onSample(SensorFrame frame) {
        if (latch.isOpen()) {
            pulses.update(frame.torqueNm);
            if (pulses.ended()) {
                inARow = pulses.lastPeakNm() >= thresholdNm ? inARow + 1 : 0;
            }
            if (inARow >= needed || latch.hasNothingToReach()) {
                latch.shut(Verdict.REACHED);
            }
        }
        return latch.command();
    }

    @Override
    public Verdict verdict() {
        return latch.verdict();
    }

    @Override
    public int estimates(float[] into) {
        into[0] = pulses.lastPeakNm();
        return 1;
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
            return new PulseTorqueThreshold(
                    settings.get(THRESHOLD),
                    Math.round(settings.get(PULSES)),
                    new PulseDetector(PulseDetector.USUAL_FLOOR_NM, provision.sampleRateHz()));
        }
    }
}
