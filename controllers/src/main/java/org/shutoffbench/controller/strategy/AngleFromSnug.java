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
 * Turns the nut by a fixed angle past the rest at which the joint began to clamp, the way turn-of-nut tightening does by
 * hand. Stops at the blow that ends nearest to the angle, taking the next advance for the same as the last, and says
 * REACHED. Without a rise of torque it never stops.
 */
public final class AngleFromSnug implements ShutoffStrategy {

    private static final String ANGLE = "angle past snug";

    private static final StrategyDescriptor DESCRIPTOR = new StrategyDescriptor(
            "angle from snug",
            "stop a fixed angle past snug",
            Set.of(Channel.BLOWS, Channel.ANVIL_ANGLE),
            Set.of(),
            List.of(
                    new Setting(ANGLE, "deg", 0, 720, 18, "anvil angle past snug", Role.TUNED),
                    SnugSettings.BLOW_WORK,
                    SnugSettings.SLOWEST_SEATING),
            List.of("snug angle [rad]", "running torque [N m]", "angle past snug [rad]"),
            452);

    private final float wantedRad;
    private final BlowSteps steps;
    private final SnugDetector snug;
    private final float workJ;
    private final ShutoffLatch latch = new ShutoffLatch();
    private float turnedRad;

    private AngleFromSnug(float wantedRad, BlowSteps steps, SnugDetector snug, float workJ) {
        this.wantedRad = wantedRad;
        this.steps = steps;
        this.snug = snug;
        this.workJ = workJ;
    }

    @Override
    public void arm(Target target) {
        latch.arm(target);
        steps.reset();
        snug.reset();
        turnedRad = Float.NaN;
    }

    @Override
    public Command onSample(SensorFrame frame) {
        if (latch.isOpen()) {
            boolean measured = steps.update(frame.anvilAngleRad, BlowChannel.plausible(frame.blows) > 0);
            if ((measured && isThere()) || latch.hasNothingToReach()) {
                latch.shut(Verdict.REACHED);
            }
        }
        return latch.command();
    }

    private boolean isThere() {
        if (!snug.update(steps.beforeRad(), steps.afterRad(), workJ)) {
            return false;
        }
        turnedRad = steps.afterRad() - snug.snugAngleRad();
        return turnedRad + steps.advanceRad() / 2 >= wantedRad;
    }

    @Override
    public Verdict verdict() {
        return latch.verdict();
    }

    @Override
    public int estimates(float[] into) {
        into[0] = snug.isSnug() ? snug.snugAngleRad() : Float.NaN;
        into[1] = snug.runningTorqueNm();
        into[2] = turnedRad;
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
            return new AngleFromSnug(
                    (float) Math.toRadians(settings.get(ANGLE)),
                    BlowSteps.fromContacts(provision.sampleRateHz()),
                    SnugSettings.detector(settings),
                    settings.get(SnugSettings.BLOW_WORK.name()));
        }
    }
}
