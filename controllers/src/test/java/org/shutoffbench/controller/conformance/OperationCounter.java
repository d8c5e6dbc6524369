package org.shutoffbench.controller.conformance;

/** Where counted classes report to: one more operation has been done. Tests of one process run one after the other. */
public final class OperationCounter {

    private static long operations;

    private OperationCounter() {}

    /** Called by counted code before every arithmetic instruction. */
    public static void count() {
        operations++;
    }

    static long operations() {
        return operations;
    }
}
