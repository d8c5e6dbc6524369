package org.shutoffbench.harness.study.failure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.population.DrawnCase;
import org.shutoffbench.harness.population.ImpossibleJointException;
import org.shutoffbench.harness.population.MedianDraws;
import org.shutoffbench.harness.population.Population;
import org.shutoffbench.harness.population.ScatterSource;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.ClosedLoop;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.statistics.NormalPoint;

/**
 * One strategy on joints of one family that are given as points of standard-normal space, one coordinate a source of
 * scatter; a source without a coordinate stands at its median. Works on several threads; results do not depend on them.
 */
public final class DrawnJoints implements AutoCloseable {

    private final Bench bench;
    private final int family;
    private final List<ScatterSource> sources;
    private final ExecutorService pool;
    private final List<ClosedLoop> loops = new ArrayList<>();

    /**
     * The joints of a family under one strategy.
     *
     * @param strategy index in the scenario
     * @param groups groups whose sources get a coordinate
     */
    public DrawnJoints(Bench bench, int family, int strategy, Set<ScatterSource.Group> groups, int threads) {
        this.bench = bench.with(List.of(bench.contestants().get(strategy)));
        this.family = family;
        this.sources = bench.population().sources(family).stream()
                .filter(source -> groups.contains(source.group()))
                .toList();
        this.pool = Executors.newFixedThreadPool(threads, task -> {
            Thread thread = new Thread(task, "joint-worker");
            thread.setDaemon(true);
            return thread;
        });
        for (int i = 0; i < threads; i++) {
            loops.add(this.bench.newLoop());
        }
    }

    /** One source a coordinate. */
    public List<ScatterSource> sources() {
        return sources;
    }

    /** The bench with the one strategy. */
    public Bench bench() {
        return bench;
    }

    /** Index of the family. */
    public int family() {
        return family;
    }

    /**
     * The joint at a point.
     *
     * @throws ImpossibleJointException where no such joint can be tightened
     */
    public DrawnCase at(NormalPoint point) {
        Map<ScatterSource, Double> normals = new HashMap<>();
        for (int i = 0; i < sources.size(); i++) {
            normals.put(sources.get(i), point.coordinate(i));
        }
        Population population = bench.population();
        return population.draw(family, 0, new MedianDraws(point.noiseKey()).with(normals));
    }

    /** Tightens the joints at many points; null where no such joint can be tightened. */
    public List<@Nullable TighteningRecord> tightenAt(List<NormalPoint> points) {
        return tighten(points.size(), i -> at(points.get(i)));
    }

    /** Tightens joints of the population by their numbers: plain sampling. */
    public List<@Nullable TighteningRecord> tightenNumbered(int from, int to) {
        return tighten(to - from, i -> bench.population().draw(family, from + i));
    }

    private List<@Nullable TighteningRecord> tighten(int count, IntFunction<DrawnCase> joints) {
        TighteningRecord[] results = new TighteningRecord[count];
        int threads = count < 2 ? 1 : loops.size();
        List<Callable<Void>> shares = new ArrayList<>();
        for (int thread = 0; thread < threads; thread++) {
            int share = thread;
            shares.add(() -> {
                for (int i = share; i < count; i += threads) {
                    results[i] = tighten(loops.get(share), joints, i);
                }
                return null;
            });
        }
        await(shares);
        List<@Nullable TighteningRecord> list = new ArrayList<>(count);
        for (TighteningRecord result : results) {
            list.add(result);
        }
        return list;
    }

    @SuppressWarnings("NullAway") // an array of results holds null where a joint cannot be tightened
    private TighteningRecord tighten(ClosedLoop loop, IntFunction<DrawnCase> joints, int i) {
        TighteningRecord[] record = new TighteningRecord[1];
        try {
            loop.run(joints.apply(i), bench.target(family), record);
            return record[0];
        } catch (ImpossibleJointException none) {
            return null;
        }
    }

    private void await(List<Callable<Void>> shares) {
        try {
            for (Future<Void> share : pool.invokeAll(shares)) {
                share.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted", e);
        } catch (ExecutionException failed) {
            throw new IllegalStateException(failed.getCause());
        }
    }

    @Override
    public void close() {
        pool.shutdownNow();
    }
}
