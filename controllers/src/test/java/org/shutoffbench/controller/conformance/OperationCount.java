package org.shutoffbench.controller.conformance;

import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.StrategyFactory;

/**
 * Arithmetic operations of one strategy on the suite's made-up recordings, with default settings, all declared channels and
 * the usual target, up to its stop. The greater figure of two recordings.
 *
 * @param worstTick most operations in one tick
 * @param perBlow operations from the first blow on over blows, ticks without a blow included
 */
public record OperationCount(long worstTick, long perBlow) {

    /** Counts; the class is loaded anew. */
    public static OperationCount of(Class<? extends StrategyFactory> factoryClass) throws ReflectiveOperationException {
        StrategyFactory factory = (StrategyFactory) new CountingLoader()
                .loadClass(factoryClass.getName())
                .getDeclaredConstructor()
                .newInstance();
        OperationCount plain = on(new Subject(factory).create(), MadeUpTightening.plainJoint());
        OperationCount lockNut = on(new Subject(factory).create(), MadeUpTightening.lockNut());
        return new OperationCount(
                Math.max(plain.worstTick, lockNut.worstTick), Math.max(plain.perBlow, lockNut.perBlow));
    }

    private static OperationCount on(ShutoffStrategy strategy, Recording recording) {
        SensorFrame frame = new SensorFrame();
        strategy.arm(Subject.USUAL_TARGET);
        long worst = 0;
        long sum = 0;
        int blows = 0;
        boolean stopped = false;
        for (int tick = 0; tick < recording.ticks() && !stopped; tick++) {
            recording.sample(tick, frame);
            blows += frame.blows;
            long before = OperationCounter.operations();
            stopped = strategy.onSample(frame).isShutoff();
            long done = OperationCounter.operations() - before;
            worst = Math.max(worst, done);
            sum += blows > 0 ? done : 0;
        }
        return new OperationCount(worst, blows == 0 ? 0 : Math.round(sum / (double) blows));
    }
}
