package org.shutoffbench.benchmarks;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;

/**
 * Costs in CPU time of this thread, so that a machine shared with others gives figures too. All workloads take turns, and
 * the best of several turns counts: what others do to caches and clock only ever makes a turn slower.
 */
final class CpuTime {

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final int TURNS = 5;

    /** CPU time of a turn, s; less where a busy machine leaves no time for more. */
    private static final double TURN_S = Double.parseDouble(System.getProperty("benchmarks.turnS", "0.3"));

    private static final double WARM_UP_S = 4 * TURN_S;

    private final List<Runnable> workloads = new ArrayList<>();

    /** Enters a workload. */
    int add(Runnable workload) {
        workloads.add(workload);
        return workloads.size() - 1;
    }

    /** Least CPU seconds that one execution of each workload took on average over a turn. */
    double[] measure() {
        double[] best = new double[workloads.size()];
        java.util.Arrays.fill(best, Double.POSITIVE_INFINITY);
        for (Runnable workload : workloads) {
            secondsPerExecution(workload, WARM_UP_S);
        }
        for (int turn = 0; turn < TURNS; turn++) {
            for (int i = 0; i < best.length; i++) {
                best[i] = Math.min(best[i], secondsPerExecution(workloads.get(i), TURN_S));
            }
        }
        return best;
    }

    private static double secondsPerExecution(Runnable workload, double leastS) {
        long start = THREADS.getCurrentThreadCpuTime();
        int executions = 0;
        double spent = 0;
        while (spent < leastS) {
            workload.run();
            executions++;
            spent = 1e-9 * (THREADS.getCurrentThreadCpuTime() - start);
        }
        return spent / executions;
    }

    static long nowNs() {
        return THREADS.getCurrentThreadCpuTime();
    }
}
