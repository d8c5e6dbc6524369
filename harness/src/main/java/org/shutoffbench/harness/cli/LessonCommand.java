package org.shutoffbench.harness.cli;

import java.awt.Desktop;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.PrintWriter;
import java.net.URI;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.lesson.LessonServer;
import org.shutoffbench.harness.lesson.StaticLesson;
import org.shutoffbench.harness.report.Caution;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code lesson}: why counting blows fails on a lock nut. */
@Command(
        name = "lesson",
        mixinStandardHelpOptions = true,
        versionProvider = ShutoffBench.Version.class,
        description = {
            "Opens the lesson \"why counting blows fails on a lock nut\" in the browser, on the live plant.",
            "The page is served on this machine alone, on a free port, until the command is interrupted."
        },
        footer = {
            "",
            "Examples: shutoff-bench lesson",
            "          shutoff-bench lesson --static lesson.html",
            "",
            Caution.TEXT
        })
final class LessonCommand implements Callable<Integer> {

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before any command runs
    private CommandSpec spec;

    @Option(names = "--no-open", description = "do not open the browser")
    private boolean stayClosed;

    @Option(
            names = "--static",
            paramLabel = "FILE",
            description = "write a version that runs from disk on joints computed beforehand, and end")
    private @Nullable Path file;

    @Override
    public Integer call() throws IOException, InterruptedException {
        PrintWriter out = spec.commandLine().getOut();
        if (file != null) {
            StaticLesson.write(file);
            out.println("Lesson: " + file.toAbsolutePath().normalize());
            out.flush();
            return 0;
        }
        try (LessonServer server = LessonServer.start()) {
            out.println("Lesson: " + server.address() + " (end with Ctrl-C)");
            out.flush();
            if (!stayClosed) {
                open(server.address(), out);
            }
            new CountDownLatch(1).await();
        }
        return 0;
    }

    private static void open(URI address, PrintWriter out) {
        try {
            if (!GraphicsEnvironment.isHeadless()
                    && Desktop.isDesktopSupported()
                    && Desktop.getDesktop().isSupported(Desktop.Action.BROWSE)) {
                Desktop.getDesktop().browse(address);
                return;
            }
        } catch (IOException | UnsupportedOperationException e) {
            out.println("The browser could not be opened: " + e.getMessage());
        }
        out.println("Open the address in a browser.");
        out.flush();
    }
}
