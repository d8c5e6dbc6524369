package org.shutoffbench.harness.study.training;

import org.shutoffbench.controller.Command;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.Target;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.controller.strategy.BlowFeatures;

/** Listens as the learned strategy would and drives on until it is told that enough has been seen. */
final class FeatureRecorder implements ShutoffStrategy {

    private final BlowFeatures features;
    private boolean fresh;
    private boolean enough;

    private FeatureRecorder(BlowFeatures features) {
        this.features = features;
    }

    @Override
    public void arm(Target target) {
        features.reset();
        fresh = false;
        enough = false;
    }

    @Override
    public Command onSample(SensorFrame frame) {
        if (!enough) {
            fresh |= features.update(frame);
        }
        return enough ? Command.BRAKE : Command.FULL;
    }

    /** True once for each blow whose features have just been calculated. */
    boolean takeFresh() {
        boolean taken = fresh;
        fresh = false;
        return taken;
    }

    float[] features() {
        float[] values = new float[BlowFeatures.COUNT];
        for (int i = 0; i < values.length; i++) {
            values[i] = features.value(i);
        }
        return values;
    }

    double balanceNm() {
        return features.balanceNm();
    }

    /** Brakes at the next sample. */
    void stop() {
        enough = true;
    }

    @Override
    public Verdict verdict() {
        return Verdict.NOT_REACHED;
    }

    @Override
    public int estimates(float[] into) {
        return 0;
    }

    /**
     * Makes recorders for a strategy's settings.
     *
     * @param strategy what the learned strategy declares
     */
    record Factory(StrategyDescriptor strategy) implements StrategyFactory {

        @Override
        public StrategyDescriptor descriptor() {
            return strategy;
        }

        @Override
        public ShutoffStrategy create(Settings settings, Provision provision) {
            return new FeatureRecorder(BlowFeatures.of(settings, provision));
        }
    }
}
