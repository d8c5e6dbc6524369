package org.shutoffbench.harness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The way of docs/write-a-strategy.md: the example project, built by the JDK's compiler, through every command. */
class OwnStrategyTest {

    private static final Path EXAMPLES = Path.of("../docs/examples");
    private static final String FACTORY = "shortsteps.ShortStepsFactory";

    private final CommandLineHarness command = new CommandLineHarness();

    @TempDir
    Path temporary;

    private Path project;
    private Path jar;
    private Path joints;

    @BeforeEach
    void build() throws IOException {
        project = Files.createDirectories(temporary.resolve("own-strategy"));
        for (String name :
                List.of("harbour-walkway.yaml", "own-strategy/joints.yaml", "own-strategy/joints-tuned.yaml")) {
            Files.copy(EXAMPLES.resolve(name), temporary.resolve(name));
        }
        jar = project.resolve("short-steps.jar");
        joints = project.resolve("joints.yaml");
        pack(compiled(EXAMPLES.resolve("own-strategy/src")), jar);
    }

    private Path compiled(Path sources) throws IOException {
        Path classes = Files.createDirectories(temporary.resolve("classes"));
        List<String> arguments = new ArrayList<>(
                List.of("-Xlint:all,-path", "-Werror", "-proc:none", "-cp", System.getProperty("java.class.path")));
        arguments.addAll(List.of("-d", classes.toString()));
        try (Stream<Path> files = Files.walk(sources)) {
            files.filter(file -> file.toString().endsWith(".java")).forEach(file -> arguments.add(file.toString()));
        }
        int code = ToolProvider.getSystemJavaCompiler().run(null, null, null, arguments.toArray(String[]::new));
        assertThat(code).as("exit code of the compiler").isZero();
        return classes;
    }

    private static void pack(Path classes, Path jar) throws IOException {
        try (OutputStream file = Files.newOutputStream(jar);
                JarOutputStream packed = new JarOutputStream(file);
                Stream<Path> found = Files.walk(classes)) {
            for (Path each : found.filter(Files::isRegularFile).sorted().toList()) {
                packed.putNextEntry(
                        new JarEntry(classes.relativize(each).toString().replace('\\', '/')));
                packed.write(Files.readAllBytes(each));
            }
        }
    }

    private void does(Object... arguments) {
        assertThat(command.run(arguments)).as(command.out() + command.err()).isZero();
    }

    @Test
    void itKeepsTheContract() {
        does("conform", "--class", FACTORY, "--jar", jar);
        assertThat(command.out()).contains("188 bytes declared, 188 counted", "The strategy keeps the contract.");
    }

    @Test
    void itRunsOnTheSameJointsAsOursAndTheRunOutlivesTheJar() throws IOException {
        Path run = temporary.resolve("run");
        does("check", joints);
        does("run", joints, "--joints", 4, "--out", run);
        assertThat(Files.readString(run.resolve("outcomes.csv"))).contains("short steps", "blow count");
        Files.delete(jar);
        does("report", run);
        does("trace", run.resolve("scenario.yaml"), "--joint", 0, "--out", temporary.resolve("again.csv"));
        pack(temporary.resolve("classes"), jar);
        does("run", joints, "--joints", 3, "--out", run, "--overwrite");
        assertThat(run.resolve("jars")).isDirectoryContaining("glob:**.jar");
    }

    @Test
    void itIsTracedBlowByBlow() throws IOException {
        Path trace = temporary.resolve("joint.csv");
        does("trace", joints, "--family", "lock nut", "--joint", 3, "--strategy", "short steps", "--out", trace);
        assertThat(command.out()).contains("strategy=short steps (given)");
        assertThat(Files.readAllLines(trace)).hasSizeGreaterThan(5);
    }

    @Test
    void itIsTunedAsOursAreAndTheTableIsUsed() throws IOException {
        Path alone = Files.writeString(
                project.resolve("alone.yaml"),
                "based on: joints.yaml\nname: alone\nstrategies: [{class: " + FACTORY + ", jar: short-steps.jar}]\n");
        does("tune", alone, "--settings", "home", "--out", project.resolve("home.yaml"));
        assertThat(Files.readString(project.resolve("home.yaml")))
                .contains("\"short steps\"", "\"shortest step\": ", "jar's SHA-256");
        Files.copy(project.resolve("home.yaml"), project.resolve("all.yaml"));
        does("run", project.resolve("joints-tuned.yaml"), "--joints", 3, "--out", temporary.resolve("tuned"));
        assertThat(command.out()).contains("short steps (all)");
    }

    /** Runs a strategy as a line of a scenario that must be refused, and gives what was said. */
    private String refused(String line) throws IOException {
        Path scenario = Files.writeString(
                project.resolve("wrong.yaml"), "based on: joints.yaml\nname: wrong\nstrategies:\n  - " + line + "\n");
        Path out = temporary.resolve("none");
        assertThat(command.run("run", scenario, "--joints", 2, "--out", out)).isEqualTo(2);
        assertThat(out).doesNotExist();
        assertThat(command.err()).contains("wrong.yaml:4: strategies[0].");
        return command.err();
    }

    @Test
    void whatCannotBeLoadedIsRefusedAtItsLineWithARemedy() throws IOException {
        Path sources = Files.createDirectories(temporary.resolve("broken/broken"));
        Files.writeString(sources.resolve("NeedsMore.java"), """
                package broken;
                public final class NeedsMore extends Throwing { public NeedsMore(int more) { super(more); } }
                """);
        Files.writeString(sources.resolve("Throwing.java"), """
                package broken;
                import java.util.List;
                import java.util.Set;
                import org.shutoffbench.controller.*;
                public class Throwing implements StrategyFactory {
                    public Throwing() { throw new IllegalStateException("no licence"); }
                    protected Throwing(int more) {}
                    @Override public StrategyDescriptor descriptor() { throw new IllegalStateException("later"); }
                    @Override public ShutoffStrategy create(Settings settings, Provision provision) { return null; }
                }
                """);
        pack(compiled(temporary.resolve("broken")), project.resolve("broken.jar"));
        assertThat(refused("{class: shortsteps.ShortStep, jar: short-steps.jar}"))
                .contains("strategies[0].class", "no class shortsteps.ShortStep", "shortsteps.ShortStepsFactory");
        assertThat(refused("{class: " + FACTORY + ", jar: short-step.jar}"))
                .contains("strategies[0].jar", "build the jar or correct its path");
        assertThat(refused("{class: shortsteps.ShortSteps, jar: short-steps.jar}"))
                .contains("shortsteps.ShortSteps is no factory", "name the class that implements");
        assertThat(refused("{class: broken.NeedsMore, jar: broken.jar}"))
                .contains("public constructor without parameters");
        assertThat(refused("{class: broken.Throwing, jar: broken.jar}"))
                .contains("the constructor of broken.Throwing threw java.lang.IllegalStateException: no licence");
        does(
                "check",
                Files.writeString(
                        project.resolve("units.yaml"),
                        "based on: joints.yaml\nname: units\nstrategies: [{name: elapsed time, settings: {drive time: 400 ms}}]\n"));
        assertThat(refused("{class: " + FACTORY + ", jar: short-steps.jar, settings: {shortest stp: 4 deg}}"))
                .contains("did you mean \"shortest step\"");
    }

    /** A jar with one factory, {@code odd.Odd}, whose strategy brakes at the tenth sample but for one odd method. */
    private Path odd(String create, String body) throws IOException {
        Path sources = Files.createDirectories(temporary.resolve("odd/odd"));
        Files.writeString(sources.resolve("Odd.java"), """
                package odd;
                import java.util.List;
                import java.util.Set;
                import org.shutoffbench.controller.*;
                public class Odd implements StrategyFactory {
                    @Override public StrategyDescriptor descriptor() {
                        return new StrategyDescriptor(
                                "odd", "odd", Set.of(Channel.BLOWS), Set.of(), List.of(), List.of("x"), 4);
                    }
                    @Override public ShutoffStrategy create(Settings settings, Provision provision) { %s }
                    static class Brakes implements ShutoffStrategy {
                        int ticks;
                        @Override public void arm(Target target) { ticks = 0; }
                        @Override public Command onSample(SensorFrame frame) {
                            return ++ticks >= 10 ? Command.BRAKE : Command.FULL;
                        }
                        @Override public Verdict verdict() { return Verdict.NOT_REACHED; }
                        @Override public int estimates(float[] into) { into[0] = 1; return 1; }
                    }
                    static final class Strategy extends Brakes {
                        %s
                    }
                }
                """.formatted(create, body));
        pack(compiled(temporary.resolve("odd")), project.resolve("odd.jar"));
        return Files.writeString(
                project.resolve("odd.yaml"),
                "based on: joints.yaml\nname: odd\nstrategies: [{class: odd.Odd, jar: odd.jar}]\n");
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', textBlock = """
            @Override public void arm(Target t) { throw new ArithmeticException(); }         | arm() threw
            @Override public Command onSample(SensorFrame f) { throw new AssertionError(); } | onSample() threw
            @Override public Command onSample(SensorFrame f) { return null; }                | onSample() returned nothing
            @Override public Verdict verdict() { throw new StackOverflowError(); }           | verdict() threw
            @Override public Verdict verdict() { return null; }                              | verdict() returned nothing
            """)
    void aStrategyThatBreaksOffIsCountedAfterTheRunAndExplainedByATrace(String method, String fault)
            throws IOException {
        Path scenario = odd("return new Strategy();", method);
        does("run", scenario, "--joints", 2, "--out", temporary.resolve("odd-run"));
        assertThat(command.out()).contains("odd (given): 8 tightenings ended by a fault", "conform", "trace");
        does("trace", scenario, "--joint", 0, "--out", temporary.resolve("odd.csv"));
        assertThat(command.out()).contains("end_reason=fault, verdict=NOT_REACHED");
        assertThat(command.err()).contains("ended by a fault: " + fault);
        if (fault.endsWith("threw")) {
            assertThat(command.err()).contains("(Odd.java:");
        }
    }

    @Test
    void tuningAStrategyThatBreaksOffSaysSo() throws IOException {
        Path scenario = odd(
                "return new Strategy();",
                "@Override public Command onSample(SensorFrame f) { throw new IllegalStateException(); }");
        does("tune", scenario, "--settings", "all", "--out", temporary.resolve("odd-all.yaml"));
        // 200 joints of each of four families to tune on, as many to validate
        assertThat(command.out()).contains("1600 tightenings ended by a fault", "conform");
    }

    @Test
    void oneThatWritesIntoItsFrameHarmsNoOtherStrategy() throws IOException {
        odd("return new Strategy();", """
            @Override public Command onSample(SensorFrame frame) { frame.blows = 1; return Command.FULL; }
            """);
        Path beside = Files.writeString(project.resolve("beside.yaml"), """
                based on: joints.yaml
                name: own strategy
                strategies:
                  - {class: odd.Odd, jar: odd.jar}
                  - blow count
                """);
        Path alone = Files.writeString(
                project.resolve("alone.yaml"), "based on: joints.yaml\nname: own strategy\nstrategies: [blow count]\n");
        does("run", beside, "--joints", 3, "--out", temporary.resolve("beside"));
        does("run", alone, "--joints", 3, "--out", temporary.resolve("alone"));
        assertThat(blowCounts("beside")).isNotEmpty().isEqualTo(blowCounts("alone"));
    }

    /** A run's rows of the blow count. */
    private List<String> blowCounts(String run) throws IOException {
        return Files.readAllLines(temporary.resolve(run).resolve("outcomes.csv")).stream()
                .filter(row -> row.contains("blow count"))
                .toList();
    }

    @Test
    void whatMakesNoStrategyIsRefusedBeforeAnythingIsWritten() throws IOException {
        for (String create : List.of("return null;", "throw new StackOverflowError();")) {
            Path scenario = odd(create, "");
            Path out = temporary.resolve("none");
            assertThat(command.run("run", scenario, "--out", out)).isEqualTo(2);
            assertThat(out).doesNotExist();
            assertThat(command.err()).contains("the strategy \"odd\" breaks the contract: create() with {}", "conform");
        }
    }

    @Test
    void aPictureNamesTheEstimatesThatThrewAndWhatLeftNothingToDraw() throws IOException {
        Path picture = temporary.resolve("odd.svg");
        Path scenario = odd(
                "return new Strategy();",
                "@Override public int estimates(float[] into) { throw new IllegalStateException(\"unknown\"); }");
        Object[] trace = {"trace", scenario, "--joint", 0, "--out", temporary.resolve("odd.csv"), "--picture", picture};
        assertThat(command.run(trace)).isEqualTo(2);
        assertThat(command.err()).contains("estimates() threw java.lang.IllegalStateException: unknown (Odd.java:");
        odd("return new Strategy();", "@Override public Command onSample(SensorFrame frame) { return null; }");
        assertThat(command.run(trace)).isEqualTo(2);
        assertThat(command.err()).contains("onSample() returned nothing at its first sample", "nothing to draw");
        assertThat(picture).doesNotExist();
    }

    @Test
    void aClassThatCannotBeAFactorySaysWhy() throws IOException {
        odd("return new Strategy();", "");
        assertThat(refused("{class: odd.Odd$Brakes, jar: odd.jar}")).contains("is no factory");
        Path sources = Files.createDirectories(temporary.resolve("odd/odd"));
        Files.writeString(sources.resolve("Half.java"), """
                package odd;
                public abstract class Half extends Odd { }
                """);
        Files.writeString(sources.resolve("Early.java"), """
                package odd;
                public class Early extends Odd { static final int LIMIT = Integer.parseInt("x"); }
                """);
        Files.writeString(sources.resolve("Nameless.java"), """
                package odd;
                import java.util.List;
                import java.util.Set;
                import org.shutoffbench.controller.StrategyDescriptor;
                public class Nameless extends Odd {
                    @Override public StrategyDescriptor descriptor() {
                        return new StrategyDescriptor(" ", "odd", Set.of(), Set.of(), List.of(), List.of(), 4);
                    }
                }
                """);
        pack(compiled(temporary.resolve("odd")), project.resolve("odd.jar"));
        assertThat(refused("{class: odd.Half, jar: odd.jar}")).contains("not abstract");
        assertThat(refused("{class: odd.Early, jar: odd.jar}"))
                .contains("a static field of odd.Early threw java.lang.NumberFormatException", "(Early.java:2)");
        assertThat(refused("{class: odd.Nameless, jar: odd.jar}")).contains("the descriptor has no name");
    }

    @Test
    void aClassForANewerJavaIsRefusedWithTheOptionThatHelps() throws IOException {
        Path odd = temporary.resolve("classes/odd/Odd.class");
        odd("return new Strategy();", "");
        byte[] newer = Files.readAllBytes(odd);
        newer[7] = (byte) (newer[7] + 40); // the class file's major version
        Files.write(odd, newer);
        pack(temporary.resolve("classes"), project.resolve("odd.jar"));
        assertThat(refused("{class: odd.Odd, jar: odd.jar}")).contains("newer Java", "compile it with --release");
    }

    @Test
    void aStrategyThatThrowsInATickIsNamedAfterTheRun() throws IOException {
        Path sources = Files.createDirectories(temporary.resolve("tripping/tripping"));
        Files.writeString(sources.resolve("Trips.java"), """
                package tripping;
                import java.util.List;
                import java.util.Set;
                import org.shutoffbench.controller.*;
                public final class Trips implements StrategyFactory {
                    @Override public StrategyDescriptor descriptor() {
                        return new StrategyDescriptor("trips", "throws", Set.of(), Set.of(), List.of(), List.of(), 0);
                    }
                    @Override public ShutoffStrategy create(Settings settings, Provision provision) {
                        return new ShutoffStrategy() {
                            @Override public void arm(Target target) {}
                            @Override public Command onSample(SensorFrame frame) { throw new ArithmeticException(); }
                            @Override public Verdict verdict() { return Verdict.NOT_REACHED; }
                            @Override public int estimates(float[] into) { return 0; }
                        };
                    }
                }
                """);
        pack(compiled(temporary.resolve("tripping")), project.resolve("trips.jar"));
        Path scenario = Files.writeString(
                project.resolve("trips.yaml"),
                "based on: joints.yaml\nname: trips\nstrategies: [{class: tripping.Trips, jar: trips.jar}]\n");
        does("run", scenario, "--joints", 2, "--out", temporary.resolve("trips"));
        assertThat(command.out()).contains("trips (given): 8 tightenings ended by a fault", "conform");
    }
}
