package org.shutoffbench.controller.strategy;

import java.util.List;
import java.util.Set;
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

/** Brakes a fixed time after the trigger was pulled; senses nothing and says REACHED. */
public final class ElapsedTime implements ShutoffStrategy {

    private static final String DRIVE_TIME = "drive time";

    private static final StrategyDescriptor DESCRIPTOR = new StrategyDescriptor(
            "elapsed time",
            "stop a fixed time after the start",
            Set.of(),
            Set.of(),
            List.of(new Setting(DRIVE_TIME, "s", 0.05, 10, 0.3, "from the start to the stop command", Role.TUNED)),
            List.of(),
            12);

    private final int driveTicks;
    private final ShutoffLatch latch = new ShutoffLatch();
    private int tick;

    private ElapsedTime(int driveTicks) {
        this.driveTicks = driveTicks;
    }

    @Override
    public void arm(Target target) {
        latch.arm(target);
        tick = 0;
    }

    @Override
    public Command onSample(SensorFrame frame) {
        if (latch.isOpen()) {
            if (tick >= driveTicks || latch.hasNothingToReach()) {
                latch.shut(Verdict.REACHED);
            }
            tick++;
        }
        return latch.command();
    }

    @Override
    public Verdict verdict() {
        return latch.verdict();
    }

    @Override
    public int estimates(float[] into) {
        return 0;
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
            return new ElapsedTime(Math.round(settings.get(DRIVE_TIME) * provision.sampleRateHz()));
        }
    }
}
