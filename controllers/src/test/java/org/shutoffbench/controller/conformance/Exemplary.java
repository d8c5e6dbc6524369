package org.shutoffbench.controller.conformance;

import java.util.List;
import java.util.Set;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Command;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.Target;
import org.shutoffbench.controller.Verdict;

/** A strategy that keeps the whole contract; the misbehaving ones differ from it in one point each. */
public class Exemplary implements ShutoffStrategy {

    protected int blows;
    protected boolean stopped;
    protected boolean nothingToReach;

    @Override
    public void arm(Target target) {
        blows = 0;
        stopped = false;
        nothingToReach = target.clampingTorqueNm() == 0;
    }

    @Override
    public Command onSample(SensorFrame frame) {
        blows += Math.max(0, Math.min(2, frame.blows));
        stopped |= blows >= 12 || nothingToReach;
        return stopped ? Command.BRAKE : Command.FULL;
    }

    @Override
    public Verdict verdict() {
        return stopped ? Verdict.REACHED : Verdict.NOT_REACHED;
    }

    @Override
    public int estimates(float[] into) {
        into[0] = blows;
        return 1;
    }

    /** Makes the exemplary strategy and, overridden, the others. */
    public static class Factory implements StrategyFactory {

        @Override
        public StrategyDescriptor descriptor() {
            return describe(Set.of(Channel.BLOWS), List.of(setting("blows", 1, 400, 12)), 64);
        }

        @Override
        public ShutoffStrategy create(Settings settings, Provision provision) {
            provision.demand(descriptor());
            return make();
        }

        protected ShutoffStrategy make() {
            return new Exemplary();
        }

        protected static StrategyDescriptor describe(Set<Channel> required, List<Setting> settings, int stateBytes) {
            return new StrategyDescriptor(
                    "exemplary", "counts blows", required, Set.of(), settings, List.of("blows [1]"), stateBytes);
        }

        protected static Setting setting(String name, double least, double most, double byDefault) {
            return new Setting(name, "1", least, most, byDefault, "what it says", Setting.Role.TUNED);
        }
    }
}
