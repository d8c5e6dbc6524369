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

/**
 * Brakes at a fixed number of blows from the start and says REACHED. Counts what the detector reports: the cam's slip
 * during a hard start, missed and doubled blows included.
 */
public final class BlowCount implements ShutoffStrategy {

    private static final String BLOWS = "blows";

    private static final StrategyDescriptor DESCRIPTOR = new StrategyDescriptor(
            "blow count",
            "stop at a fixed number of blows from the start",
            Set.of(Channel.BLOWS),
            Set.of(),
            List.of(new Setting(BLOWS, "1", 1, 400, 8, "blows to count, rounded to a whole number", Role.TUNED)),
            List.of("blows counted [1]"),
            12);

    private final int needed;
    private final ShutoffLatch latch = new ShutoffLatch();
    private int counted;

    private BlowCount(int needed) {
        this.needed = needed;
    }

    @Override
    public void arm(Target target) {
        latch.arm(target);
        counted = 0;
    }

    @Override
    public Command onSample(SensorFrame frame) {
        if (latch.isOpen()) {
            counted += BlowChannel.plausible(frame.blows);
            if (counted >= needed || latch.hasNothingToReach()) {
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
        into[0] = counted;
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
            return new BlowCount(Math.round(settings.get(BLOWS)));
        }
    }
}
