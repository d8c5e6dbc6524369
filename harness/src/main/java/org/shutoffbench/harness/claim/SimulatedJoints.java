package org.shutoffbench.harness.claim;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongConsumer;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.ClosedLoop;
import org.shutoffbench.harness.run.OrderedWork;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.scenario.JudgedQuantity;

/**
 * A bank of simulated tightenings, the same joints for every strategy, from which trials draw their samples.
 */
final class SimulatedJoints {

    private static final int CHUNK = 16;

    private final List<Integer> families;
    private final List<int[]> lots;
    private final int[] familyOf;
    private final double[][] values;
    private final boolean[][] calledDone;

    private SimulatedJoints(
            List<Integer> families, List<int[]> lots, int[] familyOf, double[][] values, boolean[][] calledDone) {
        this.families = List.copyOf(families);
        this.lots = lots;
        this.familyOf = familyOf;
        this.values = values;
        this.calledDone = calledDone;
    }

    /** Joints whose values come from elsewhere. */
    static SimulatedJoints of(
            List<Integer> families, List<int[]> lots, int[] familyOf, double[][] values, boolean[][] calledDone) {
        return new SimulatedJoints(families, lots, familyOf, values, calledDone);
    }

    /** Tightens joints of some families with every contestant of the bench. */
    static SimulatedJoints tighten(
            Bench bench, JudgedQuantity quantity, List<Integer> families, int bank, int threads, LongConsumer progress)
            throws InterruptedException {
        int perFamily = Math.max(1, bank / families.size());
        int joints = perFamily * families.size();
        int strategies = bench.contestants().size();
        double[][] values = new double[strategies][joints];
        boolean[][] done = new boolean[strategies][joints];
        int[] familyOf = new int[joints];
        Map<Long, List<Integer>> lots = new LinkedHashMap<>();
        int[] next = {0};
        OrderedWork.<List<TighteningRecord[]>>run(
                0,
                (joints + CHUNK - 1L) / CHUNK,
                threads,
                () -> {
                    ClosedLoop loop = bench.newLoop();
                    return chunk -> {
                        List<TighteningRecord[]> records = new ArrayList<>();
                        for (long unit = chunk * CHUNK; unit < Math.min(joints, (chunk + 1) * CHUNK); unit++) {
                            records.add(bench.tighten(
                                    loop, families.get((int) (unit / perFamily)), (int) (unit % perFamily)));
                        }
                        return records;
                    };
                },
                chunk -> {
                    for (TighteningRecord[] records : chunk) {
                        int place = next[0]++;
                        familyOf[place] = records[0].family();
                        lots.computeIfAbsent(
                                        ((long) records[0].family() << 32) + records[0].lot(), key -> new ArrayList<>())
                                .add(place);
                        for (int s = 0; s < strategies; s++) {
                            values[s][place] = quantity == JudgedQuantity.CLAMP_FORCE
                                    ? records[s].clampForceN()
                                    : records[s].clampingTorqueNm();
                            done[s][place] = records[s].verdict() == Verdict.REACHED;
                        }
                    }
                    progress.accept(next[0]);
                });
        List<int[]> byLot = lots.values().stream()
                .map(places -> places.stream().mapToInt(Integer::intValue).toArray())
                .toList();
        return new SimulatedJoints(families, byLot, familyOf, values, done);
    }

    int size() {
        return familyOf.length;
    }

    /** Indices of the families that were tightened. */
    List<Integer> families() {
        return families;
    }

    /** Places of the joints of each lot, families one after the other. */
    List<int[]> lots() {
        return lots;
    }

    int familyOf(int place) {
        return familyOf[place];
    }

    /** What a strategy left the joint at, in SI. */
    double value(int strategy, int place) {
        return values[strategy][place];
    }

    boolean calledDone(int strategy, int place) {
        return calledDone[strategy][place];
    }
}
