package org.shutoffbench.benchmarks;

import java.util.ArrayList;
import java.util.List;

/** What a second thread brings: by the clock, and in CPU time per joint, which a busy machine does not spoil. */
final class TwoThreads {

    private static final int JOINTS = 500;
    private static final int TURNS = 5;

    private TwoThreads() {}

    private record Cost(double wallS, double cpuS) {
        Cost best(Cost other) {
            return new Cost(Math.min(wallS, other.wallS), Math.min(cpuS, other.cpuS));
        }
    }

    static void print() throws InterruptedException {
        List<LoopWorkload> loops = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            loops.add(new LoopWorkload(LoopWorkload.JOINT_A, List.of(new LoopWorkload.Trivial(40))));
        }
        run(loops);
        Cost one = run(loops.subList(0, 1));
        Cost two = run(loops);
        for (int turn = 1; turn < TURNS; turn++) {
            one = one.best(run(loops.subList(0, 1)));
            two = two.best(run(loops));
        }
        System.out.printf("two threads do %.2f times what one does, by the clock%n", 2 * one.wallS / two.wallS);
        System.out.printf(
                "two threads would do %.2f times what one does on two free cores, by CPU time per joint%n",
                2 * one.cpuS / two.cpuS);
    }

    /** Every loop in a thread of its own, all on equally many joints; CPU time is that of the dearest thread. */
    private static Cost run(List<LoopWorkload> loops) throws InterruptedException {
        long[] cpuNs = new long[loops.size()];
        List<Thread> threads = new ArrayList<>();
        for (int i = 0; i < cpuNs.length; i++) {
            int index = i;
            threads.add(new Thread(() -> {
                long start = CpuTime.nowNs();
                loops.get(index).tightenFromStart(JOINTS);
                cpuNs[index] = CpuTime.nowNs() - start;
            }));
        }
        long start = System.nanoTime();
        threads.forEach(Thread::start);
        for (Thread thread : threads) {
            thread.join();
        }
        double wallS = 1e-9 * (System.nanoTime() - start);
        return new Cost(wallS, 1e-9 * java.util.Arrays.stream(cpuNs).max().orElse(0));
    }
}
