package org.shutoffbench.harness.cli;

import java.io.Console;
import java.util.concurrent.atomic.AtomicLong;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.jspecify.annotations.Nullable;

/** Progress on a terminal; silent where there is none. */
final class Progress implements AutoCloseable {

    private final @Nullable ProgressBar bar;
    private final AtomicLong done = new AtomicLong();

    private Progress(@Nullable ProgressBar bar) {
        this.bar = bar;
    }

    static Progress of(String what, long total) {
        if (!onTerminal()) {
            return new Progress(null);
        }
        return new Progress(new ProgressBarBuilder()
                .setTaskName(what)
                .setInitialMax(total)
                .setStyle(ProgressBarStyle.ASCII)
                .setUpdateIntervalMillis(200)
                .build());
    }

    /** From Java 22 on a console exists without a terminal too and has to be asked. */
    @SuppressWarnings("SystemConsoleNull")
    private static boolean onTerminal() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException beforeJava22) {
            return true;
        }
    }

    void to(long newDone) {
        done.set(newDone);
        if (bar != null) {
            bar.stepTo(newDone);
        }
    }

    long done() {
        return done.get();
    }

    @Override
    public void close() {
        if (bar != null) {
            bar.close();
        }
    }
}
