package org.shutoffbench.controller.strategy.adaptive;

import java.util.List;
import java.util.Set;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.controller.StrategyFactory;

/** Makes the strategy "adaptive estimation". */
public final class AdaptiveEstimation implements StrategyFactory {

    private static final StrategyDescriptor DESCRIPTOR = new StrategyDescriptor(
            "adaptive estimation",
            "fit the law of the joint after every blow and stop one blow ahead",
            Set.of(Channel.ANVIL_ANGLE, Channel.CARRIER_SPEED, Channel.BLOWS),
            Set.of(Channel.TORQUE),
            AdaptiveSettings.ALL,
            List.of(
                    "clamping torque [N m]",
                    "its standard deviation [N m]",
                    "torque that does not clamp [N m]",
                    "snug angle [rad]",
                    "joint rate [N m/rad]",
                    "cost [1]"),
            4216);

    @Override
    public StrategyDescriptor descriptor() {
        return DESCRIPTOR;
    }

    @Override
    public ShutoffStrategy create(Settings settings, Provision provision) {
        provision.demand(DESCRIPTOR);
        return new AdaptiveStrategy(settings, provision);
    }
}
