package org.shutoffbench.harness.run;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.LongFunction;
import java.util.function.Supplier;

/**
 * Work in numbered chunks on several threads, whose results arrive in order; only a few chunks are in flight at a time, so
 * memory does not grow with their number.
 */
public final class OrderedWork {

    private static final int CHUNKS_IN_FLIGHT_PER_THREAD = 4;

    private OrderedWork() {}

    /**
     * Does chunks {@code from} to {@code to - 1}.
     *
     * @param threads at least 1
     * @param workers makes one worker per thread; a worker is never used by two threads
     * @param inOrder receives the results by rising chunk number, on the calling thread
     */
    public static <R> void run(long from, long to, int threads, Supplier<LongFunction<R>> workers, Consumer<R> inOrder)
            throws InterruptedException {
        ThreadLocal<LongFunction<R>> worker = ThreadLocal.withInitial(workers);
        ExecutorService pool = Executors.newFixedThreadPool(threads, task -> {
            Thread thread = new Thread(task, "bench-worker");
            thread.setDaemon(true);
            return thread;
        });
        Deque<Future<R>> inFlight = new ArrayDeque<>();
        try {
            for (long chunk = from; chunk < to; chunk++) {
                long number = chunk;
                inFlight.add(pool.submit(() -> worker.get().apply(number)));
                if (inFlight.size() >= threads * CHUNKS_IN_FLIGHT_PER_THREAD) {
                    inOrder.accept(result(inFlight.remove()));
                }
            }
            while (!inFlight.isEmpty()) {
                inOrder.accept(result(inFlight.remove()));
            }
        } finally {
            pool.shutdownNow();
        }
    }

    private static <R> R result(Future<R> future) throws InterruptedException {
        try {
            return future.get();
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            if (failed.getCause() instanceof Error cause) {
                throw cause;
            }
            throw new IllegalStateException(failed.getCause());
        }
    }
}
