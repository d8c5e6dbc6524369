package org.shutoffbench.harness.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.file.Problem;
import org.shutoffbench.harness.scenario.file.ScenarioException;

/** Whatever a file holds, it is read or refused with problems in single lines; nothing else comes out. */
class ScenarioFuzzPropertyTest {

    private static final ScenarioFile FILES = new ScenarioFile(new StrategyCatalogue());
    private static final List<String> SPLINTERS = List.of(
            "",
            " ",
            "\n",
            "\t",
            ":",
            ": ",
            "- ",
            "{",
            "}",
            "[",
            "]",
            "\"",
            "'",
            "#",
            "&a ",
            "*a",
            "!!int ",
            "<<: ",
            "none",
            "off",
            "-1",
            "1e308",
            "1e-308",
            "NaN",
            "84 N*m",
            "{normal: 1, cv: 8 %}",
            "{uniform: [0, 1]}",
            "like: plain",
            "?",
            "|",
            ">",
            "%",
            "---\n",
            "...\n",
            "\u0000",
            "\uD83D",
            "\u2028",
            "~",
            "yes",
            "=",
            "0x7f",
            "9".repeat(40));

    @Property(tries = 250)
    void randomBytesAreRefused(@ForAll byte[] bytes) throws IOException {
        Path file = Files.createTempFile("scenario", ".yaml");
        try {
            Files.write(file, bytes);
            check(() -> FILES.read(file));
        } finally {
            Files.delete(file);
        }
    }

    @Property(tries = 250)
    void randomTextsAreRefused(@ForAll String text) {
        check(() -> FILES.parse("random.yaml", text));
    }

    @Property(tries = 800)
    void damagedScenariosAreReadOrRefused(
            @ForAll @IntRange(max = 4000) int at,
            @ForAll @IntRange(max = 12) int drop,
            @ForAll("splinters") String splinter,
            @ForAll @IntRange(max = 4000) int second,
            @ForAll("splinters") String other) {
        check(() -> FILES.parse(
                "damaged.yaml", damage(damage(WidePlainScenario.TEXT, at, drop, splinter), second, 0, other)));
    }

    @Property(tries = 250)
    void everyValueMayBeReplacedByAnything(
            @ForAll @IntRange(max = 400) int which, @ForAll("splinters") String splinter) {
        String[] values = WidePlainScenario.TEXT.split("(?<=: )", -1);
        int place = which % values.length;
        values[place] = splinter + values[place].replaceFirst("^[^,}\\n]*", "");
        check(() -> FILES.parse("replaced.yaml", String.join("", values)));
    }

    @Example
    void aliasesThatMultiplyAreRefusedAtOnce() {
        assertThat(check(() -> FILES.parse("bomb.yaml", bomb(11)))).contains("aliases");
        assertThat(check(() -> FILES.parse("bomb.yaml", bomb(4)))).contains("more than 50,000 values");
    }

    private static String bomb(int levels) {
        StringBuilder bomb = new StringBuilder("bench: 1\na0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i <= levels; i++) {
            bomb.append("a").append(i).append(": &a").append(i).append(" [");
            bomb.append(("*a" + (i - 1) + ", ").repeat(9))
                    .append("*a")
                    .append(i - 1)
                    .append("]\n");
        }
        return bomb.toString();
    }

    @Example
    void aMapThatHoldsItselfIsRefused() {
        assertThat(check(() -> FILES.parse("ring.yaml", "families: &f {inner: *f}")))
                .isNotEmpty();
    }

    @Example
    void deepNestingIsRefused() {
        assertThat(check(() -> FILES.parse("deep.yaml", "a: " + "[".repeat(5000) + "]".repeat(5000))))
                .isNotEmpty();
        assertThat(check(() -> FILES.parse("deep.yaml", "a: " + "{a: ".repeat(300) + "1" + "}".repeat(300))))
                .isNotEmpty();
    }

    @Provide
    Arbitrary<String> splinters() {
        return Arbitraries.of(SPLINTERS);
    }

    private static String damage(String text, int at, int drop, String splinter) {
        int from = at % text.length();
        return text.substring(0, from) + splinter + text.substring(Math.min(text.length(), from + drop));
    }

    /** Runs it; what it was refused with, empty if it was read. */
    private static String check(Runnable reading) {
        try {
            reading.run();
            return "";
        } catch (ScenarioException refused) {
            assertThat(refused.problems()).isNotEmpty();
            for (Problem problem : refused.problems()) {
                assertThat(problem.toString().lines()).hasSizeLessThanOrEqualTo(1);
                assertThat(problem.found()).isNotBlank();
                assertThat(problem.toString().getBytes(StandardCharsets.UTF_8)).hasSizeLessThan(4000);
            }
            return refused.getMessage();
        }
    }
}
