package org.shutoffbench.controller.conformance;

import java.util.Arrays;
import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.controller.ShutoffStrategy;

/** Does {@code estimates} hand out as many values as announced, into no more room than that? */
final class EstimatesCheck implements Check {

    private static final float UNTOUCHED = -12345.678f;

    @Override
    public String name() {
        return "estimates";
    }

    @Override
    public Finding examine(Subject subject) {
        int announced = subject.descriptor.estimates().size();
        Recording recording = MadeUpTightening.plainJoint();
        ShutoffStrategy strategy = subject.create();
        SensorFrame frame = new SensorFrame();
        float[] exact = new float[announced];
        float[] roomy = new float[announced + 8];
        try {
            strategy.arm(Subject.USUAL_TARGET);
            for (int tick = 0; tick < recording.ticks(); tick++) {
                recording.sample(tick, frame);
                strategy.onSample(frame);
                Arrays.fill(roomy, UNTOUCHED);
                int count = strategy.estimates(roomy);
                if (count != announced || roomy[announced] != UNTOUCHED || strategy.estimates(exact) != announced) {
                    return failure(count + " values at sample " + tick + ", announced are " + announced);
                }
            }
        } catch (RuntimeException | AssertionError | LinkageError | StackOverflowError e) {
            return failure("threw " + Thrown.inWords(e) + " with room for the " + announced + " announced values");
        }
        return Finding.passed(name(), announced + " values at every sample");
    }

    private Finding failure(String found) {
        return Finding.failed(
                name(), found, "estimates() writes what the descriptor lists, NaN where nothing is known yet.");
    }
}
