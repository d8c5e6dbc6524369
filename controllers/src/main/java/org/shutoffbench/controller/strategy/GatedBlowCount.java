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
import org.shutoffbench.controller.signal.BlowChannel;
import org.shutoffbench.controller.signal.BlowSteps;
import org.shutoffbench.controller.signal.SnugDetector;

/**
 * Counts blows from the one that shows the joint to be snug, so that turns run down beforehand and hammering on
 * prevailing torque do not count; brakes at a fixed number and says REACHED. Without a rise of torque it never stops.
 */
public final class GatedBlowCount implements ShutoffStrategy {

    private static final String BLOWS = "blows past snug";

    private static final StrategyDescriptor DESCRIPTOR = new StrategyDescriptor(
            "gated blow count",
            "stop at a fixed number of blows past snug",
            Set.of(Channel.BLOWS, Channel.ANVIL_ANGLE),
            Set.of(),
            List.of(
                    new Setting(BLOWS, "1", 0, 400, 5, "blows to count past snug, rounded", Role.TUNED),
                    SnugSettings.BLOW_WORK,
                    SnugSettings.SLOWEST_SEATING),
            List.of("snug angle [rad]", "running torque [N m]", "blows past snug [1]"),
            452);

    private final int needed;
    private final BlowSteps steps;
    private final SnugDetector snug;
    private final float workJ;
    private final ShutoffLatch latch = new ShutoffLatch();
    private int counted;

    private GatedBlowCount(int needed, BlowSteps steps, SnugDetector snug, float workJ) {
        this.needed = needed;
        this.steps = steps;
        this.snug = snug;
        this.workJ = workJ;
    }

    @Override
    public void arm(Target target) {
        latch.arm(target);
        steps.reset();
        snug.reset();
        counted = 0;
    }

    @Override
    public Command onSample(SensorFrame frame) {
        if (latch.isOpen()) {
            listen(BlowChannel.plausible(frame.blows), frame.anvilAngleRad);
            if ((snug.isSnug() && counted >= needed) || latch.hasNothingToReach()) {
                latch.shut(Verdict.REACHED);
            }
        }
        return latch.command();
    }

    private void listen(int blows, float anvilAngleRad) {
        if (snug.isSnug()) {
            counted += blows;
        } else if (steps.update(anvilAngleRad, blows > 0)) {
            snug.update(steps.beforeRad(), steps.afterRad(), workJ);
        }
    }

    @Override
    public Verdict verdict() {
        return latch.verdict();
    }

    @Override
    public int estimates(float[] into) {
        into[0] = snug.isSnug() ? snug.snugAngleRad() : Float.NaN;
        into[1] = snug.runningTorqueNm();
        into[2] = counted;
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
            return new GatedBlowCount(
                    Math.round(settings.get(BLOWS)),
                    BlowSteps.fromContacts(provision.sampleRateHz()),
                    SnugSettings.detector(settings),
                    settings.get(SnugSettings.BLOW_WORK.name()));
        }
    }
}
