package org.shutoffbench.controller.strategy;

import java.util.ArrayList;
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

/**
 * Energy balance corrected by what was learned: a quadratic in the features of a blow predicts by how much the balance errs,
 * and the tool brakes where the corrected middle between clamping torque now and after the next blow reaches the target. It
 * says UNSURE where a feature lies far from what it was trained on, else REACHED. {@code train} learns the coefficients on
 * joints of its own (ridge regression: {@code Hoerl1970} in docs/references.md); without them it is the bare balance.
 */
public final class LearnedRegression implements ShutoffStrategy {

    private static final String FAMILIAR = "familiar";

    private static final StrategyDescriptor DESCRIPTOR = new StrategyDescriptor(
            "learned regression",
            "stop one blow ahead on an energy balance that a regression learned to correct",
            Set.of(Channel.CARRIER_SPEED, Channel.ANVIL_ANGLE),
            Set.of(Channel.BLOWS),
            settings(),
            List.of("middle of clamping torque now and next [N m]", "snug angle [rad]", "farthest feature [1]"),
            948);

    private final float familiar;
    private final BlowFeatures features;
    private final QuadraticModel model;
    private final ShutoffLatch latch = new ShutoffLatch();
    private float targetNm;
    private float middleNm;

    private LearnedRegression(float familiar, BlowFeatures features, QuadraticModel model) {
        this.familiar = familiar;
        this.features = features;
        this.model = model;
    }

    private static List<Setting> settings() {
        List<Setting> settings = new ArrayList<>(BlowFeatures.SETTINGS);
        settings.add(new Setting(
                FAMILIAR,
                "1",
                1,
                1000,
                6,
                "standard deviations from training within which it says REACHED",
                Role.FIXED));
        settings.addAll(QuadraticModel.settings());
        return settings;
    }

    @Override
    public void arm(Target target) {
        latch.arm(target);
        features.reset();
        model.reset();
        targetNm = target.clampingTorqueNm();
        middleNm = Float.NaN;
    }

    @Override
    public Command onSample(SensorFrame frame) {
        if (latch.isOpen()) {
            if (features.update(frame)) {
                middleNm = features.balanceNm() + model.valueNm(features.values());
            }
            if (middleNm >= targetNm || latch.hasNothingToReach()) {
                latch.shut(model.farthest() <= familiar ? Verdict.REACHED : Verdict.UNSURE);
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
        into[0] = middleNm;
        into[1] = features.snugAngleRad();
        into[2] = Float.isNaN(middleNm) ? Float.NaN : model.farthest();
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
            return new LearnedRegression(
                    settings.get(FAMILIAR), BlowFeatures.of(settings, provision), new QuadraticModel(settings));
        }
    }
}
