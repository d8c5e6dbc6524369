package org.shutoffbench.harness.cli;

import java.io.PrintWriter;
import java.util.function.Supplier;

/** Says what was kept when the user interrupts a run. */
final class Interruption {

    private final Thread hook;

    private Interruption(Thread hook) {
        this.hook = hook;
    }

    static Interruption say(PrintWriter err, Supplier<String> what) {
        Thread hook = new Thread(
                () -> {
                    err.println();
                    err.println("Not finished: " + what.get());
                    err.flush();
                },
                "interruption");
        Runtime.getRuntime().addShutdownHook(hook);
        return new Interruption(hook);
    }

    /** The work is done: nothing is left to be said. */
    void forget() {
        Runtime.getRuntime().removeShutdownHook(hook);
    }
}
