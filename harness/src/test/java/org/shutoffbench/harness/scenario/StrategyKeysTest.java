package org.shutoffbench.harness.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.Setting.Role;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.harness.population.DrawnCase;
import org.shutoffbench.harness.population.MedianDraws;
import org.shutoffbench.harness.population.Population;
import org.shutoffbench.harness.scenario.file.ScenarioException;

/** What the list of strategies, settings tables and the operator's draws make of a scenario. */
class StrategyKeysTest {

    private static final StrategyDescriptor TURNER = new StrategyDescriptor(
            "turner",
            "turns an angle",
            Set.of(Channel.ANVIL_ANGLE),
            Set.of(Channel.TORQUE),
            List.of(
                    new Setting("angle", "deg", 1, 360, 40, "angle to turn", Role.TUNED),
                    new Setting("start torque", "N*m", 0, 100, 20, "from here", Role.TUNED),
                    new Setting("patience", "sighs", 0, 9, 3, "a unit of its own", Role.FIXED),
                    new Setting("reaction time", "ms", 0, 2000, 250, "of the person", Role.OPERATOR)),
            List.of(),
            16);

    private static final StrategyDescriptor FEELER =
            new StrategyDescriptor("feeler", "feels torque", Set.of(Channel.TORQUE), Set.of(), List.of(), List.of(), 4);

    private static final StrategyDirectory DIRECTORY = new StrategyDirectory() {
        @Override
        public Set<String> names() {
            return Set.of("turner", "feeler");
        }

        @Override
        public StrategyDescriptor descriptor(String name) {
            return name.equals("turner") ? TURNER : FEELER;
        }

        @Override
        public StrategyDescriptor external(String className, Path jar) {
            if (className.equals("outside.Turner")) {
                return TURNER;
            }
            throw new IllegalArgumentException("the jar has no class " + className);
        }
    };

    private static final String HEAD = """
            bench: 1
            name: strategies
            judge: {quantity: clamping torque, target: 84 N*m, window: 15 %}
            families:
              plain: {thread: M12, friction: {mu_th: 0.12, mu_b: 0.12}, stiffness: 312 kN/mm, seating: 8 deg}
            """;

    private static Scenario scenario(String more) {
        return new ScenarioFile(DIRECTORY).parse("strategies.yaml", HEAD + more);
    }

    @Test
    void givenSettingsArriveInTheStrategysOwnUnits() {
        StrategyEntry entry = scenario(
                        "strategies: [{name: turner, settings: {angle: 0.25 turns, start_torque: 10 ft*lbf, patience: 4 sighs}}]\n")
                .strategies()
                .get(0);
        assertThat(entry.settings()).isEqualTo("given");
        assertThat(entry.values().get("angle")).isEqualTo(90, within(1e-12));
        assertThat(entry.values().get("start torque")).isEqualTo(13.55817948, within(1e-8));
        assertThat(entry.values().get("patience")).isEqualTo(4);
    }

    @Test
    void aUnitThatEndsInTheStrategysOwnIsAnother() {
        StrategyEntry entry = scenario("strategies: [{name: turner, settings: {start torque: 0.02 kN*m}}]\n")
                .strategies()
                .get(0);
        assertThat(entry.values().get("start torque")).isEqualTo(20, within(1e-12));
    }

    @Test
    void aPlainNameRunsOnceWithEveryTable() {
        Scenario scenario = scenario("""
                settings:
                  home: {strategies: {turner: {angle: 50 deg}}}
                  all: {strategies: {turner: {angle: 60 deg}, other: {anything: 1}, slow turner: {angle: 70 deg}}}
                strategies: [turner, {name: turner, label: slow turner, settings: all}]
                """);
        assertThat(scenario.strategies())
                .extracting(e -> e.label() + " " + e.settings() + " " + e.values())
                .containsExactly("turner home {angle=50.0}", "turner all {angle=60.0}", "slow turner all {angle=70.0}");
    }

    @Test
    void tablesAreReadFromFilesBesideTheFileThatNamesThem(@TempDir Path folder) throws IOException {
        Files.createDirectories(folder.resolve("settings"));
        SettingsTable table = new SettingsTable(
                "home",
                Map.of("by", "hand: \"quick\""),
                Map.of(
                        "turner",
                        Map.of("angle", SettingsTable.written(TURNER.settings().get(0), 41.3))));
        Files.writeString(folder.resolve("settings/home.yaml"), table.text());
        Path file = folder.resolve("scenario.yaml");
        Files.writeString(file, HEAD + "settings: {home: settings/home.yaml}\nstrategies: [turner]\n");
        Path over = Files.createDirectories(folder.resolve("deeper")).resolve("over.yaml");
        Files.writeString(over, "based on: ../scenario.yaml\nname: over\njoints: 7\n");
        Scenario read = new ScenarioFile(DIRECTORY).read(over);
        assertThat(read.jointsPerFamily()).isEqualTo(7);
        assertThat(read.tables().get("home")).isEqualTo(table);
        assertThat(read.strategies().get(0).values()).containsEntry("angle", 41.3);
        assertThat(new ScenarioFile(DIRECTORY).readWithoutTables(over).tables()).isEmpty();
    }

    @Test
    void anInheritedMistakeIsToldWithTheFileThatItStandsIn(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("base.yaml");
        Files.writeString(file, HEAD.replace("8 deg", "8"));
        Path over = folder.resolve("over.yaml");
        Files.writeString(over, "based on: base.yaml\nname: over\nspeed: 3\n");
        assertThatThrownBy(() -> new ScenarioFile(DIRECTORY).read(over))
                .hasMessageContaining("base.yaml:5: families.plain.seating")
                .hasMessageContaining("over.yaml:3: speed: is not a key");
        Files.writeString(over, "based on: over.yaml\n");
        assertThatThrownBy(() -> new ScenarioFile(DIRECTORY).read(over)).hasMessageContaining("is based on itself");
        Files.writeString(over, "based on: missing.yaml\n");
        assertThatThrownBy(() -> new ScenarioFile(DIRECTORY).read(over))
                .hasMessageContaining("over.yaml:1: based on: missing.yaml: there is no such file");
    }

    @Test
    void theOperatorIsDrawnInTheStrategysUnitForEveryTightening() {
        Scenario scenario = scenario("strategies: [turner]\noperator: {reaction_time: {lognormal: 0.3 s, cv: 20 %}}\n");
        Population population = new Population(scenario);
        assertThat(population.draw(0, 0, new MedianDraws(0)).operator()).containsEntry("reaction time", 300.0);
        DrawnCase one = population.draw(0, 1);
        assertThat(one.operator()).isNotEqualTo(population.draw(0, 2).operator());
        assertThat(one.value("operator reaction time") * 1000)
                .isEqualTo(one.operator().get("reaction time"), within(1e-9));
        assertThat(new ScenarioFile(DIRECTORY).parse("again.yaml", ScenarioFile.resolved(scenario)))
                .isEqualTo(scenario);
    }

    @Test
    void aJarIsPinnedByItsBytes(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("their.jar"), "bytes");
        Path file = folder.resolve("scenario.yaml");
        Files.writeString(file, HEAD + "strategies: [{class: outside.Turner, jar: their.jar, label: theirs}]\n");
        Scenario read = new ScenarioFile(DIRECTORY).read(file);
        StrategyEntry.External external = read.strategies().get(0).external();
        assertThat(external).isNotNull();
        assertThat(external.file()).isEqualTo(folder.resolve("their.jar"));
        Files.writeString(file, ScenarioFile.resolved(read));
        assertThat(new ScenarioFile(DIRECTORY).read(file)).isEqualTo(read);
        Files.writeString(folder.resolve("their.jar"), "other bytes");
        assertThatThrownBy(() -> new ScenarioFile(DIRECTORY).read(file)).hasMessageContaining("the jar is another one");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            strategies: [turnr]                                                  | did you mean "turner"?
            strategies: turner                                                   | a list of strategies belongs here
            strategies: [feeler]                                                 | sensors: {based on: good, torque at the anvil: yes}
            strategies: [{name: turner, without: anvil angle}]                   | needs the channel anvil angle
            strategies: [{name: turner, without: anvil angel}]                   | did you mean "anvil angle"?
            strategies: [turner, turner]                                         | stands in the list twice
            strategies: [{name: turner, settings: {angel: 40 deg}}]              | did you mean "angle"?
            strategies: [{name: turner, settings: {angle: 40}}]                  | the unit is missing
            strategies: [{name: turner, settings: {angle: 400 deg}}]             | allowed: 1 deg to 360 deg
            strategies: [{name: turner, settings: {patience: 4}}]                | write a number and the unit sighs
            strategies: [{name: turner, settings: home}]                         | name a settings table of this scenario
            strategies: [{class: outside.Turner}]                                | name the jar that holds the class
            strategies: [{class: outside.Other, jar: none.jar}]                  | build the jar or correct its path
            strategies: [{class: outside.Turner, jar: none.jar, name: turner}]   | give either a name or a class
            strategies: [{label: turner}]                                        | name a strategy, or give class and jar of one
            strategies: [[turner]]                                               | name a strategy, or give a map
            operator: {reaction time: 300 ms}                                    | no strategy of this scenario leaves this to the operator
            settings: {home: missing.yaml}                                       | there is no such file
            settings: {given: {strategies: {}}}                                  | choose another name
            settings: {home: {strategies: {turner: {angle: [1]}}}}               | one value belongs here
            groups: {joints_per_lot: 5, repeats_per_piece: 2}                    | a lot holds whole pieces
            draws: {seed: 3}                                                     | draws are pinned by seed, scenario, family and joint together
            tool: {k_s: 9000 N*m/rad}                                            | name the tool whose other values it has
            tool: {based on: light, N_l: 2.5}                                    | a whole number of lugs belongs here
            tool: {based on: light, delta_dis: 0.95 rad}                         | before the groove ends
            tool: lihgt                                                          | did you mean "light"?
            sensors: {based on: good, rate: 12345 Hz}                            | divisor of 1e9
            sensors: {based on: good, blow detection: {missed: 60 %, doubled: 50 %}} | together at most 100 %
            sensors: {based on: good, torque at the anvil: {range: [5 N*m, 1 N*m]}} | the first end is the lower one
            sensors: {based on: ideal, carrier speed: {low_pass: {order: 2}}}    | give the frequency
            time_limit: {uniform: [1 s, 2 s]}                                    | without scatter
            supply: 1.2                                                          | allowed: 0.1 to 1
            """)
    void whatCannotBeIsRefusedWithTheReason(String line, String reason) {
        assertThatThrownBy(() -> scenario(line + "\n"))
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining(reason)
                .hasMessageContaining("strategies.yaml:6: ");
    }
}
