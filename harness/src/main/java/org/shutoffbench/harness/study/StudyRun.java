package org.shutoffbench.harness.study;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongConsumer;
import org.shutoffbench.harness.population.DrawnCase;
import org.shutoffbench.harness.record.OutcomesFormat;
import org.shutoffbench.harness.record.RunFolder;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.ClosedLoop;
import org.shutoffbench.harness.run.OrderedWork;
import org.shutoffbench.harness.run.TighteningRecord;

/**
 * Every strategy on every joint of a scenario, in parallel: rows go to the run's folder in the order of family and joint
 * number, counts to the accumulator. Takes up an interrupted run where its rows end.
 */
public final class StudyRun {

    /** Joints that one thread takes at a time: long enough to be worth handing over, short enough to keep threads even. */
    private static final int JOINTS_PER_CHUNK = 16;

    private final Bench bench;
    private final int jointsPerFamily;
    private final StudyPlan plan;
    private final OutcomesFormat format;

    public StudyRun(Bench bench, int jointsPerFamily) {
        this.bench = bench;
        this.jointsPerFamily = jointsPerFamily;
        this.plan = StudyPlans.of(bench, jointsPerFamily);
        this.format = new OutcomesFormat(
                plan.families().stream().map(Family::name).toList(),
                plan.strategies().stream()
                        .map(s -> new OutcomesFormat.StrategyName(
                                s.name(), s.settings().title()))
                        .toList());
    }

    /** Joints of all families together. */
    public long joints() {
        return (long) jointsPerFamily * plan.families().size();
    }

    public StudyPlan plan() {
        return plan;
    }

    /**
     * Runs what is not there yet.
     *
     * @param threads at least 1; changes nothing but the time it takes
     * @param progress receives the number of joints done, kept ones included
     * @return the summary of all joints
     */
    public StudySummary execute(RunFolder folder, int threads, LongConsumer progress)
            throws IOException, InterruptedException {
        StudyAccumulator counts = new StudyAccumulator(plan);
        long kept =
                folder.resume(format, plan.strategies().size(), rows -> counts.addJoint(rows, covariate(drawn(rows))));
        progress.accept(kept);
        try (Writer rows = folder.appendRows()) {
            Appender appender = new Appender(rows, counts, kept, progress);
            long chunks = (joints() - kept + JOINTS_PER_CHUNK - 1) / JOINTS_PER_CHUNK;
            OrderedWork.run(
                    0,
                    chunks,
                    threads,
                    () -> {
                        ClosedLoop loop = bench.newLoop();
                        return chunk -> tighten(loop, kept + chunk * JOINTS_PER_CHUNK);
                    },
                    appender::accept);
        } catch (UncheckedIOException writing) {
            throw writing.getCause();
        }
        return counts.summarise(
                new StoppingReport(
                        "fixed number of joints",
                        jointsPerFamily + " joints in every family, fixed before the run",
                        1,
                        true),
                PrevailingScans.of(bench, plan.families()));
    }

    private Chunk tighten(ClosedLoop loop, long from) {
        List<Joint> joints = new ArrayList<>(JOINTS_PER_CHUNK);
        StringBuilder text = new StringBuilder();
        for (long unit = from; unit < Math.min(from + JOINTS_PER_CHUNK, joints()); unit++) {
            DrawnCase drawn = bench.population().draw((int) (unit / jointsPerFamily), (int) (unit % jointsPerFamily));
            Joint joint = new Joint(List.of(bench.tighten(loop, drawn)), covariate(drawn));
            joints.add(joint);
            text.append(format.rows(joint.records()));
        }
        return new Chunk(joints, text.toString());
    }

    private DrawnCase drawn(List<TighteningRecord> records) {
        TighteningRecord first = records.get(0);
        return bench.population().draw(first.family(), first.joint());
    }

    private double covariate(DrawnCase drawn) {
        return plan.families().get(drawn.family()).covariate() == null ? Double.NaN : StudyPlans.covariate(drawn);
    }

    /** What every strategy made of one joint, and its value of the family's covariate; NaN where the family has none. */
    private record Joint(List<TighteningRecord> records, double covariate) {}

    /** Joints in order, and their rows. */
    private record Chunk(List<Joint> joints, String rows) {}

    private static final class Appender {
        private final Writer rows;
        private final StudyAccumulator counts;
        private final LongConsumer progress;
        private long done;

        Appender(Writer rows, StudyAccumulator counts, long kept, LongConsumer progress) {
            this.rows = rows;
            this.counts = counts;
            this.done = kept;
            this.progress = progress;
        }

        void accept(Chunk chunk) {
            try {
                rows.write(chunk.rows());
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
            for (Joint joint : chunk.joints()) {
                counts.addJoint(joint.records(), joint.covariate());
            }
            done += chunk.joints().size();
            progress.accept(done);
        }
    }
}
