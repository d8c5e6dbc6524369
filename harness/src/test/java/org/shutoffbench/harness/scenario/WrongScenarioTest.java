package org.shutoffbench.harness.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.file.Problem;
import org.shutoffbench.harness.scenario.file.ScenarioException;

/** Twelve wrong files: each is told in one message with file, line, key and remedy. */
class WrongScenarioTest {

    private static final Path FOLDER = Path.of("src/test/resources/scenario");

    private final ScenarioFile files = new ScenarioFile(new StrategyCatalogue());

    @Test
    void theRightFileIsRead() {
        assertThat(files.read(FOLDER.resolve("right.yaml")).name()).isEqualTo("one joint");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            unknown-key        | 8  | families.plain.stifness     | is not a key here    | did you mean "stiffness"? allowed: like, surface, state, thread, grip
            wrong-unit         | 3  | judge.target                | found "84 N"                       | "N" is not a unit of torque
            bare-number        | 9  | families.plain.seating      | found "8"                          | the unit is missing; write a number and one of the units rad, deg, turns
            negative-stiffness | 8  | families.plain.stiffness    | found "-312 kN/mm"                 | allowed: 1 N/mm to 100000 kN/mm
            not-self-locking   | 7  | families.plain.friction     | the joint is not self-locking      | friction resists with a lever of 0.219 mm, the helix drives with 0.279 mm
            missing-channel    | 11 | strategies[0]               | "blow count" needs the channel blow detection | give the sensors that channel
            duplicate-key      | 10 | families.plain.seating      | is given twice                     | it stands in line 9 already
            bad-yaml           | 4  | ''                          | is not valid YAML                  | look at this line and the one above
            empty              | 0  | ''                          | is empty                           | begin with the line "bench: 1"
            binary             | 0  | ''                          | is not text in UTF-8               | name a scenario file
            huge-count         | 4  | joints                      | found "99999999999999999999"       | a whole number from 1 to 100,000,000
            ../missing         | 0  | ''                          | there is no such file              | check the path
            """)
    void eachIsToldInOneMessage(String file, int line, String key, String found, String remedy) {
        Problem problem = only(FOLDER.resolve("wrong").resolve(file + ".yaml"));
        assertThat(problem.place().line()).isEqualTo(line);
        assertThat(problem.key()).isEqualTo(key);
        assertThat(problem.found()).startsWith(found);
        assertThat(problem.remedy()).startsWith(remedy);
        assertThat(problem.place().file()).endsWith(Path.of(file).getFileName() + ".yaml");
    }

    @Test
    void aFolderIsNoScenario() {
        assertThat(only(FOLDER).found()).isEqualTo("is a folder");
    }

    private Problem only(Path file) {
        ScenarioException refused = catchThrowableOfType(ScenarioException.class, () -> files.read(file));
        assertThat(refused).as(file.toString()).isNotNull();
        assertThat(refused.problems()).hasSize(1);
        assertThat(refused.getMessage().lines()).hasSize(1);
        return refused.problems().get(0);
    }
}
