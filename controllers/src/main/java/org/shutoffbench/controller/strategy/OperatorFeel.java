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
 * A person at the trigger: hears the tool begin to hammer, lets it hammer for as long as feels right, and lets go after a reaction
 * time. Judgement and reaction time belong to the person and come as settings. Lets go by braking, as a trigger
 * switch would, and says REACHED.
 */
public final class OperatorFeel implements ShutoffStrategy {

    private static final String HAMMERING_TIME = "hammering time";
    private static final String JUDGEMENT = "judgement";
    private static final String REACTION_TIME = "reaction time";

    /** Two blows closer than this are heard as hammering; a single knock during the start is not (assumed). */
    private static final float HAMMERING_SPACING_S = 0.06f;

    private static final StrategyDescriptor DESCRIPTOR = new StrategyDescriptor(
            "operator feel",
            "a person lets go after a time of hammering that feels right",
            Set.of(Channel.BLOWS),
            Set.of(),
            List.of(
                    new Setting(HAMMERING_TIME, "s", 0, 8, 0.2, "hammering that the person means to give", Role.TUNED),
                    new Setting(
                            JUDGEMENT, "1", 0.2, 5, 1, "hammering that feels right over what is meant", Role.OPERATOR),
                    new Setting(REACTION_TIME, "s", 0.1, 1, 0.25, "from deciding to letting go", Role.OPERATOR)),
            List.of("hammering heard [s]"),
            24);

    private final float periodS;
    private final int spacingSamples;
    private final int hammeringSamples;
    private final ShutoffLatch latch = new ShutoffLatch();
    private int sinceBlow;
    private int hammered;
    private boolean hammering;

    private OperatorFeel(float periodS, int hammeringSamples) {
        this.periodS = periodS;
        this.spacingSamples = Math.round(HAMMERING_SPACING_S / periodS);
        this.hammeringSamples = hammeringSamples;
    }

    @Override
    public void arm(Target target) {
        latch.arm(target);
        sinceBlow = spacingSamples;
        hammered = 0;
        hammering = false;
    }

    @Override
    public Command onSample(SensorFrame frame) {
        if (latch.isOpen()) {
            listen(BlowChannel.plausible(frame.blows) > 0);
            if (hammered > hammeringSamples || latch.hasNothingToReach()) {
                latch.shut(Verdict.REACHED);
            }
        }
        return latch.command();
    }

    private void listen(boolean blow) {
        if (blow) {
            hammering |= sinceBlow < spacingSamples;
            sinceBlow = 0;
        } else {
            sinceBlow = Math.min(sinceBlow + 1, spacingSamples);
        }
        if (hammering) {
            hammered++;
        }
    }

    @Override
    public Verdict verdict() {
        return latch.verdict();
    }

    @Override
    public int estimates(float[] into) {
        into[0] = hammered * periodS;
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
            float seconds = settings.get(HAMMERING_TIME) * settings.get(JUDGEMENT) + settings.get(REACTION_TIME);
            return new OperatorFeel(provision.periodS(), Math.round(seconds * provision.sampleRateHz()));
        }
    }
}
