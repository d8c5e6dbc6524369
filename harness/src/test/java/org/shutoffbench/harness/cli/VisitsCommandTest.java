package org.shutoffbench.harness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The examples reach the three answers; a finished run gives what the scenario gives. */
class VisitsCommandTest {

    private static final Path EXAMPLES = Path.of("..", "docs", "examples", "visits");
    private static final String AUDIT = """
            audit: {}
            costs: {per_hour: 60, tightening: 12 s, audit: 30 s, rework: 3 min, escape: 600}
            """;

    private final CommandLineHarness command = new CommandLineHarness();

    @TempDir
    Path temporary;

    private String visits(String example, String strategy) {
        assertThat(command.run("visits", EXAMPLES.resolve(example), "--strategy", strategy, "--job", 20_000))
                .as(command.err())
                .isZero();
        return command.out();
    }

    @Test
    void cheapEscapesAndACleanRecordAreDefensible() {
        assertThat(visits("defensible.yaml", "adaptive estimation (all)"))
                .contains("Defensible from here", "invented crowns", "A job of 20,000 joints");
    }

    @Test
    void dearEscapesAskForMoreCleanJoints() {
        assertThat(visits("not-yet.yaml", "adaptive estimation (all)"))
                .containsPattern("Not yet: [0-9,]+ more clean joints of ");
    }

    @Test
    void countedBlowsOnLockNutsAreNot() {
        assertThat(visits("no.yaml", "blow count (home)")).containsPattern("No: on .*lock nut");
    }

    @Test
    void whatFoolsTheToolFoolsTheAuditorAndIsNoReasonToLeaveItOut() {
        assertThat(visits("not-yet.yaml", "pulse torque threshold (all)"))
                .containsPattern("No: .*on .*fouled lock nut.*another check is needed");
    }

    @Test
    void everySymbolIsDefinedWhereItIsPrinted() {
        assertThat(visits("no.yaml", "blow count (home)"))
                .contains(
                        "p* = (c_a + r c_r) / (D (c_f - c_r) + r c_r)",
                        "  p    share",
                        "  D    share",
                        "  r    share",
                        "  c_a  one audit",
                        "  c_r  one rework",
                        "  c_f  one joint")
                .contains("not a tightening procedure");
    }

    @Test
    void aFinishedRunGivesWhatItsScenarioGives() throws IOException {
        Path scenario = Files.writeString(temporary.resolve("small.yaml"), CommandLineHarness.SCENARIO + AUDIT);
        Path run = temporary.resolve("run");
        Path fromScenario = temporary.resolve("a");
        Path fromRun = temporary.resolve("b");
        for (String strategy : new String[] {"blow count", "energy per blow"}) {
            assertThat(command.run("run", scenario, "--out", run, "--overwrite", "--seed", 9))
                    .as(command.err())
                    .isZero();
            assertThat(command.run(
                            "visits",
                            scenario,
                            "--strategy",
                            strategy,
                            "--seed",
                            9,
                            "--threads",
                            2,
                            "--out",
                            fromScenario,
                            "--overwrite"))
                    .as(command.err())
                    .isZero();
            assertThat(command.run("visits", run, "--strategy", strategy, "--out", fromRun, "--overwrite"))
                    .as(command.err())
                    .isZero();
            assertThat(fromRun.resolve("visits.json")).hasSameBinaryContentAs(fromScenario.resolve("visits.json"));
        }
    }

    @Test
    void theSectionsChangeNoOutcome() throws IOException {
        Path plain = CommandLineHarness.scenarioIn(temporary);
        Path audited = Files.writeString(temporary.resolve("audited.yaml"), CommandLineHarness.SCENARIO + AUDIT);
        assertThat(command.run("run", plain, "--out", temporary.resolve("plain")))
                .isZero();
        assertThat(command.run("run", audited, "--out", temporary.resolve("audited")))
                .isZero();
        assertThat(temporary.resolve("audited").resolve("outcomes.csv"))
                .hasSameBinaryContentAs(temporary.resolve("plain").resolve("outcomes.csv"));
    }

    @Test
    void whatCannotBeDoneIsRefusedAndNothingIsWritten() throws IOException {
        Path plain = CommandLineHarness.scenarioIn(temporary);
        Path audited = Files.writeString(temporary.resolve("audited.yaml"), CommandLineHarness.SCENARIO + AUDIT);
        Path out = temporary.resolve("out");
        Path earlier = Files.createDirectory(temporary.resolve("earlier"));
        Files.writeString(earlier.resolve("visits.json"), "{}");
        Object[][] wrong = {
            {"visits", plain, "--strategy", "blow count", "--out", out},
            {"visits", audited, "--strategy", "blows", "--out", out},
            {"visits", audited, "--strategy", "blow count", "--job", 0, "--out", out},
            {"visits", audited, "--strategy", "blow count", "--joints", 0, "--out", out},
            {"visits", temporary, "--strategy", "blow count", "--out", out},
            {"visits", audited, "--strategy", "blow count", "--out", earlier},
            {"visits", audited, "--strategy", "blow count", "--out", plain},
        };
        for (Object[] args : wrong) {
            assertThat(command.run(args)).as(Arrays.toString(args)).isEqualTo(2);
        }
        assertThat(command.err())
                .contains("no section audit", "which has blow count", "--job 0", "--joints 0", "no finished run")
                .contains("--overwrite", "is a file")
                .doesNotContain("\tat ");
        assertThat(out).doesNotExist();
    }
}
