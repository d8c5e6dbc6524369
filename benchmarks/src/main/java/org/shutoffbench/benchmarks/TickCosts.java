package org.shutoffbench.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shutoffbench.controller.strategy.Strategies;

/**
 * CPU time per tick of every strategy and its ratio to the cheapest, as the table of docs/strategies.md. The workload is that of
 * {@link TickBenchmark}; the ratio is what a machine shared with others leaves to compare.
 */
public final class TickCosts {

    private static final String TRIVIAL = "elapsed time";
    private static final int ROUNDS = 5;

    private TickCosts() {}

    /**
     * Measures and prints.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {
        List<String> names = new ArrayList<>(Strategies.byName().keySet());
        CpuTime time = new CpuTime();
        for (String name : names) {
            TickBenchmark workload = new TickBenchmark();
            workload.strategy = name;
            workload.record();
            time.add(workload::tick);
        }
        double[][] rounds = new double[ROUNDS][];
        for (int r = 0; r < ROUNDS; r++) {
            rounds[r] = time.measure();
        }
        int trivial = names.indexOf(TRIVIAL);
        System.out.println("| strategy | ns per tick | dearest of " + ROUNDS + " rounds | times " + TRIVIAL + " |");
        System.out.println("|---|---|---|---|");
        for (int i = 0; i < names.size(); i++) {
            double[] ns = column(rounds, i);
            double[] cheapest = column(rounds, trivial);
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %.1f | %.1f | %.1f |%n",
                    names.get(i),
                    ns[ROUNDS / 2],
                    ns[ROUNDS - 1],
                    ns[ROUNDS / 2] / cheapest[ROUNDS / 2]);
        }
    }

    /** One workload's ns per tick, sorted. */
    private static double[] column(double[][] rounds, int workload) {
        double[] ns = new double[rounds.length];
        for (int r = 0; r < ns.length; r++) {
            ns[r] = 1e9 * rounds[r][workload] / TickBenchmark.TICKS;
        }
        java.util.Arrays.sort(ns);
        return ns;
    }
}
