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
 * Every strategy on every joint of a scenario, in parallel: rows go to the run's folder, counts to the accumulator. Takes up
 * an interrupted run where its rows end.
 *
 * <p>With a fixed number of joints the rows come family by family; with a rule that looks at what was found they come joint
 * number by joint number, so that every look sees equally many of every family.
 */
public final class StudyRun {

    /** Joints that one thread takes at a time: long enough to be worth handing over, short enough to keep threads even. */
    private static final int JOINTS_PER_CHUNK = 16;

    private final Bench bench;
    private final int jointsPerFamily;
    private final StudyPlan plan;
    private final OutcomesFormat format;
    private final StopRule rule;

    /** A run of a fixed number of joints in every family. */
    public StudyRun(Bench bench, int jointsPerFamily) {
        this(bench, jointsPerFamily, new StopRule.FixedNumber());
    }

    /** @param jointsPerFamily the most that are run where the rule is not met before */
    public StudyRun(Bench bench, int jointsPerFamily, StopRule rule) {
        this.bench = bench;
        this.rule = rule;
        this.jointsPerFamily = jointsPerFamily;
        this.plan = StudyPlans.of(bench, jointsPerFamily);
        this.format = new OutcomesFormat(
                plan.families().stream().map(Family::name).toList(),
                plan.strategies().stream()
                        .map(s -> new OutcomesFormat.StrategyName(
                                s.name(), s.settings().title()))
                        .toList());
    }

    /** Joints of all families together, at most. */
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
        Looks looks = new Looks(rule, plan, jointsPerFamily);
        long done = folder.resume(format, plan.strategies().size(), rows -> {
            counts.addJoint(rows, covariate(drawn(rows)));
            looks.take(rows);
        });
        progress.accept(done);
        try (Writer rows = folder.appendRows()) {
            for (int look = 0; ; look++) {
                long until = (long) looks.at(look) * plan.families().size();
                if (until < done) {
                    continue;
                }
                run(done, until, threads, new Appender(rows, counts, looks, done, progress));
                done = until;
                StoppingReport ended = looks.look(look, counts);
                if (ended != null) {
                    return summary(counts, looks, look, ended);
                }
            }
        } catch (UncheckedIOException writing) {
            throw writing.getCause();
        }
    }

    private StudySummary summary(StudyAccumulator counts, Looks looks, int look, StoppingReport ended) {
        StudyPlan carriedOut = StudyPlans.of(bench, looks.at(look)).at(looks.confidence(look));
        return counts.seenAs(carriedOut).summarise(ended, PrevailingScans.of(bench, carriedOut.families()));
    }

    private void run(long from, long to, int threads, Appender appender) throws InterruptedException {
        OrderedWork.run(
                0,
                (to - from + JOINTS_PER_CHUNK - 1) / JOINTS_PER_CHUNK,
                threads,
                () -> {
                    ClosedLoop loop = bench.newLoop();
                    return chunk -> tighten(loop, from + chunk * JOINTS_PER_CHUNK, to);
                },
                appender::accept);
    }

    private Chunk tighten(ClosedLoop loop, long from, long to) {
        List<Joint> joints = new ArrayList<>(JOINTS_PER_CHUNK);
        StringBuilder text = new StringBuilder();
        for (long unit = from; unit < Math.min(from + JOINTS_PER_CHUNK, to); unit++) {
            DrawnCase drawn = drawn(unit);
            Joint joint = new Joint(List.of(bench.tighten(loop, drawn)), covariate(drawn));
            joints.add(joint);
            text.append(format.rows(joint.records()));
        }
        return new Chunk(joints, text.toString());
    }

    private DrawnCase drawn(long unit) {
        int families = plan.families().size();
        return rule instanceof StopRule.FixedNumber
                ? bench.population().draw((int) (unit / jointsPerFamily), (int) (unit % jointsPerFamily))
                : bench.population().draw((int) (unit % families), (int) (unit / families));
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
        private final Looks looks;
        private final LongConsumer progress;
        private long done;

        Appender(Writer rows, StudyAccumulator counts, Looks looks, long kept, LongConsumer progress) {
            this.rows = rows;
            this.counts = counts;
            this.looks = looks;
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
                looks.take(joint.records());
            }
            done += chunk.joints().size();
            progress.accept(done);
        }
    }
}
