package shortsteps;

import java.util.List;
import java.util.Set;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.controller.StrategyFactory;

/** What a scenario names: public, with a public constructor without parameters. */
public final class ShortStepsFactory implements StrategyFactory {

    private static final Setting SHORTEST_STEP = new Setting(
            "shortest step",
            "deg",
            0.1,
            20,
            4,
            "advance of the nut below which the tool stops",
            Setting.Role.TUNED);

    private static final StrategyDescriptor DESCRIPTOR = new StrategyDescriptor(
            "short steps",
            "stop when a blow turns the nut by less than a set angle",
            Set.of(Channel.BLOWS, Channel.ANVIL_ANGLE),
            Set.of(),
            List.of(SHORTEST_STEP),
            List.of("last step [rad]"),
            188);

    @Override
    public StrategyDescriptor descriptor() {
        return DESCRIPTOR;
    }

    @Override
    public ShutoffStrategy create(Settings settings, Provision provision) {
        provision.demand(DESCRIPTOR);
        float shortestStepRad = (float) Math.toRadians(settings.get(SHORTEST_STEP.name()));
        return new ShortSteps(shortestStepRad, provision.sampleRateHz());
    }
}
