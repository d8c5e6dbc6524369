package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.controller.Target;
import org.shutoffbench.controller.conformance.Thrown;
import org.shutoffbench.harness.population.DrawnCase;
import org.shutoffbench.harness.report.TraceContent.Estimate;
import org.shutoffbench.harness.report.TraceContent.Point;
import org.shutoffbench.harness.report.TraceContent.Value;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.BrokenStrategyException;
import org.shutoffbench.harness.run.ClosedLoop;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.run.Trace;
import org.shutoffbench.harness.scenario.StrategyEntry;
import org.shutoffbench.plant.Drive;
import org.shutoffbench.plant.Plant;
import org.shutoffbench.plant.PlantState;
import org.shutoffbench.sensor.SensorReading;

/** Tightens one joint again and keeps what a picture of it needs. */
public final class TraceRecorder {

    private static final int EVERY_TICKS = 5;
    private static final double EVERY_S = 5e-4;

    private final List<Point> points = new ArrayList<>();
    private final List<Trace.Blow> blows = new ArrayList<>();
    private final DrawnCase drawn;
    private final double snugRad;

    private TraceRecorder(DrawnCase drawn) {
        this.drawn = drawn;
        this.snugRad = drawn.law().clamp().snugAngleRad();
    }

    /**
     * A strategy on a joint.
     *
     * @param strategy index in the scenario
     * @param plants makes a new plant at each call
     */
    public static TraceContent ofStrategy(
            Bench bench, int strategy, int family, int joint, Supplier<? extends Plant> plants) {
        DrawnCase drawn = bench.population().draw(family, joint);
        TraceRecorder recorder = new TraceRecorder(drawn);
        StrategyDescriptor descriptor = bench.contestants().get(strategy).descriptor();
        Watching watching = new Watching(recorder, descriptor);
        ClosedLoop loop = bench.with(List.of(bench.contestants().get(strategy))).newLoop(plants);
        loop.watch(watching);
        TighteningRecord[] ended = new TighteningRecord[1];
        loop.run(drawn, bench.target(family), ended);
        String fault = loop.fault(0);
        if (fault != null && recorder.points.size() < 2) {
            throw new BrokenStrategyException(
                    descriptor.name(), fault + " at its first sample, so there is nothing to draw");
        }
        StrategyEntry entry = bench.scenario().strategies().get(strategy);
        return recorder.content(
                title(bench, family, joint) + ": " + entry.label() + " (" + entry.settings() + ")",
                ended[0].endReason().title() + ", " + ended[0].outcome().title() + ", verdict "
                        + ended[0].verdict().name() + ", "
                        + String.format(Locale.ROOT, "%.1f N\u00b7m", ended[0].clampingTorqueNm()),
                bench.target(family),
                ended[0].timeS(),
                watching.estimates());
    }

    /**
     * Full drive on a joint, braked at the first contact of a blow and followed until it is judged.
     *
     * @param blow number of the blow, from 1
     * @param plant of any kind, fresh
     */
    public static TraceContent brakedAtBlow(Bench bench, int family, int joint, int blow, Plant plant) {
        DrawnCase drawn = bench.population().draw(family, joint);
        TraceRecorder recorder = new TraceRecorder(drawn);
        plant.start(drawn.law(), drawn.impactTool(), drawn.supplyRatio());
        double limitS = bench.scenario().timeLimitS();
        double stopS = limitS;
        double endS = limitS;
        while (plant.state().timeS < endS && !plant.state().fractured) {
            double planned = Math.min(plant.plan(), endS);
            recorder.sample(plant, planned);
            if (planned == endS) {
                plant.commitAt(endS);
            } else {
                plant.commit();
            }
            if (recorder.sawBlow(plant) && plant.state().blows == blow) {
                stopS = plant.state().timeS;
                endS = stopS + ClosedLoop.JUDGED_AFTER_S;
                plant.command(Drive.BRAKE, 0);
            }
        }
        return recorder.content(
                title(bench, family, joint) + ": braked at blow " + blow,
                String.format(Locale.ROOT, "ends with %.1f kN", plant.state().clampForceN / 1000),
                bench.target(family),
                stopS,
                List.of());
    }

    private static String title(Bench bench, int family, int joint) {
        return bench.scenario().name() + ", "
                + bench.scenario().families().get(family).name() + ", joint " + joint;
    }

    private void sample(Plant plant, double untilS) {
        double first = points.isEmpty() ? 0 : points.get(points.size() - 1).timeS() + EVERY_S;
        for (double t = Math.max(first, plant.state().timeS); t <= untilS; t += EVERY_S) {
            add(t, plant.nutAngleRad(t), plant.clampForceN(t));
        }
    }

    private void add(double timeS, double nutAngleRad, double clampForceN) {
        points.add(new Point(timeS, Math.toDegrees(nutAngleRad - snugRad), clampForceN));
    }

    private boolean sawBlow(Plant plant) {
        if (plant.state().blows <= blows.size()) {
            return false;
        }
        blows.add(Trace.Blow.of(plant.state(), drawn.impactTool().hammer().inertiaKgM2(), snugRad));
        return true;
    }

    private TraceContent content(String title, String ending, Target target, double stopS, List<Estimate> estimates) {
        return new TraceContent(title, ending, drawn.law(), target, stopS, points, blows, estimates);
    }

    /** Sits beside the loop: truth and estimates at every few samples, truth at every event of the run-on. */
    private static final class Watching implements ClosedLoop.Witness {

        private final TraceRecorder recorder;
        private final StrategyDescriptor descriptor;
        private final List<List<Value>> values = new ArrayList<>();
        private final float[] now;
        private int ticks;

        Watching(TraceRecorder recorder, StrategyDescriptor descriptor) {
            this.recorder = recorder;
            this.descriptor = descriptor;
            this.now = new float[descriptor.estimates().size()];
            descriptor.estimates().forEach(name -> values.add(new ArrayList<>()));
        }

        @Override
        public void onTick(double timeS, SensorReading reading, Plant plant, ShutoffStrategy strategy) {
            if (ticks++ % EVERY_TICKS != 0) {
                return;
            }
            recorder.add(timeS, plant.nutAngleRad(timeS), plant.clampForceN(timeS));
            int written = written(strategy);
            for (int i = 0; i < Math.min(written, now.length); i++) {
                if (Float.isFinite(now[i])) {
                    values.get(i).add(new Value(timeS, now[i]));
                }
            }
        }

        private int written(ShutoffStrategy strategy) {
            try {
                return strategy.estimates(now);
            } catch (RuntimeException | AssertionError | LinkageError | StackOverflowError thrown) {
                throw new BrokenStrategyException(descriptor.name(), "estimates() threw " + Thrown.inWords(thrown));
            }
        }

        @Override
        public void onCommit(Plant plant) {
            recorder.sawBlow(plant);
            PlantState state = plant.state();
            List<Point> points = recorder.points;
            if (points.isEmpty() || state.timeS > points.get(points.size() - 1).timeS() + EVERY_S) {
                recorder.add(state.timeS, state.nutAngleRad, state.clampForceN);
            }
        }

        @Override
        public void onEnd(PlantState state) {
            if (state.timeS > recorder.points.get(recorder.points.size() - 1).timeS()) {
                recorder.add(state.timeS, state.nutAngleRad, state.clampForceN);
            }
        }

        List<Estimate> estimates() {
            List<Estimate> estimates = new ArrayList<>();
            for (int i = 0; i < values.size(); i++) {
                estimates.add(new Estimate(descriptor.estimates().get(i), values.get(i)));
            }
            return estimates;
        }
    }
}
