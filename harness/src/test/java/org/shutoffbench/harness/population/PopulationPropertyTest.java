package org.shutoffbench.harness.population;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.JointKey;
import org.shutoffbench.harness.scenario.Part;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.ScenarioFile;
import org.shutoffbench.harness.scenario.ToolKey;

class PopulationPropertyTest {

    private static final ScenarioFile FILES = new ScenarioFile(new StrategyCatalogue());
    private static final Scenario DEMO = FILES.read(Path.of("../docs/examples/harbour-walkway.yaml"));
    private static final int N = 40_000;

    private static final String PLAIN = """
            bench: 1
            name: groups
            judge: {quantity: clamping torque, target: 84 N*m, window: 15 %}
            groups: {joints_per_lot: 12, repeats_per_piece: 3, joints_per_tool: 8}
            tool: {based on: light, k_s: {normal: 9000 N*m/rad, cv: 5 %}}
            supply: {uniform: [0.9, 1]}
            families:
              only:
                thread: M12x1.75
                friction:
                  mu_th: {lognormal: 0.13, lot: 8 %, piece: 6 %, repeat: 3 %}
                  mu_b: {mu_th times: {lognormal: 1, sigma: 6 %}}
                stiffness: {normal: 300 kN/mm, lot: 4 %, piece: 7 %}
                seating: {lognormal: 8 deg, sigma: 30 %, per: lot}
                turns_to_snug: {uniform: [1.5, 3.5]}
            """;

    /** Means and standard deviations of the demo families within five standard errors (fixed seed, so it never flickers). */
    @Test
    void drawsHaveTheMomentsThatTheFileStates() {
        Population population = new Population(DEMO, 5);
        double lot = logSd(0.08);
        double piece = logSd(0.06);
        moments(population, 0, d -> Math.log(d.value("friction mu_th")), Math.log(0.13), Math.hypot(lot, piece));
        moments(population, 0, d -> Math.log(d.value("friction mu_b over mu_th")), 0, 0.06);
        moments(population, 0, d -> d.value("stiffness"), 300e6, 0.08 * 300e6);
        moments(population, 1, d -> Math.log(d.value("seating")), Math.log(Math.toRadians(35)), 0.3);
        moments(population, 2, d -> d.value("prevailing torque"), 9, 10 / Math.sqrt(12));
        moments(population, 3, d -> d.value("fouling torque"), 7, 6 / Math.sqrt(12));
        moments(population, 0, d -> d.value("turns_to_snug"), 2.5, 2 / Math.sqrt(12));
        moments(population, 0, d -> d.value("friction static_ratio"), 1.075, 0.15 / Math.sqrt(12));
        moments(population, 0, DrawnCase::supplyRatio, 0.965, 0.07 / Math.sqrt(12));
        moments(population, 0, d -> d.impactTool().socket().stiffnessNmPerRad(), 9000, 450);
        moments(population, 0, d -> d.impactTool().cam().preloadTorqueNm(), 0.68, 0.0136);
    }

    private static void moments(
            Population population, int family, ToDoubleFunction<DrawnCase> number, double mean, double sd) {
        double[] drawn = IntStream.range(0, N)
                .mapToObj(joint -> population.draw(family, joint))
                .mapToDouble(number)
                .toArray();
        double m = IntStream.range(0, N).mapToDouble(i -> drawn[i]).sum() / N;
        double variance = IntStream.range(0, N)
                        .mapToDouble(i -> (drawn[i] - m) * (drawn[i] - m))
                        .sum()
                / (N - 1);
        assertThat(m).isEqualTo(mean, within(5 * sd / Math.sqrt(N)));
        assertThat(Math.sqrt(variance)).isEqualTo(sd, within(5 * sd / Math.sqrt(2.0 * N)));
    }

    private static double logSd(double cv) {
        return Math.sqrt(Math.log1p(cv * cv));
    }

    @Test
    void frictionOfThreadAndBearingFaceIsCorrelatedAsTheirFactorSays() {
        Population population = new Population(DEMO, 6);
        double[] th = new double[N];
        double[] b = new double[N];
        for (int i = 0; i < N; i++) {
            DrawnCase drawn = population.draw(0, i);
            th[i] = Math.log(drawn.value("friction mu_th"));
            b[i] = th[i] + Math.log(drawn.value("friction mu_b over mu_th"));
        }
        double common = Math.hypot(logSd(0.08), logSd(0.06));
        double stated = common / Math.hypot(common, 0.06);
        double drawn = new org.apache.commons.math3.stat.correlation.PearsonsCorrelation().correlation(th, b);
        assertThat(drawn).isEqualTo(stated, within(5 * (1 - stated * stated) / Math.sqrt(N)));
    }

    @Test
    void whatALotSharesIsSharedByTheLotAlone() {
        Population population = new Population(FILES.parse("groups.yaml", PLAIN), 1);
        Set<Double> seatings = new HashSet<>();
        Set<Double> pieces = new HashSet<>();
        Set<Double> repeats = new HashSet<>();
        Set<Double> sockets = new HashSet<>();
        for (int joint = 0; joint < 120; joint++) {
            DrawnCase drawn = population.draw(0, joint);
            assertThat(drawn.lot()).isEqualTo(joint / 12);
            assertThat(drawn.piece()).isEqualTo(joint / 3);
            assertThat(drawn.repeat()).isEqualTo(joint % 3);
            assertThat(drawn.tool()).isEqualTo(joint / 8);
            seatings.add(drawn.value("seating"));
            pieces.add(drawn.value("stiffness"));
            repeats.add(drawn.value("friction mu_th"));
            sockets.add(drawn.value("tool k_s"));
        }
        assertThat(List.of(seatings.size(), pieces.size(), repeats.size(), sockets.size()))
                .isEqualTo(List.of(10, 40, 120, 15));
    }

    @Test
    void anotherKeyInTheFileChangesNoOtherDraw() {
        Scenario plain = FILES.parse("groups.yaml", PLAIN);
        Scenario more = FILES.parse(
                "groups.yaml",
                PLAIN.replace("sigma: 6 %}}", "sigma: 6 %}}\n      static_ratio: {uniform: [1, 1.2]}")
                        + "    prevailing: {torque: {uniform: [4 N*m, 14 N*m]}, from: 0.5 turns, present: 50 %}\n"
                        + "  another: {like: only}\n");
        for (int joint = 0; joint < 50; joint++) {
            Map<String, Double> before = new Population(plain, 9).draw(0, joint).values();
            DrawnCase after = new Population(more, 9).draw(0, joint);
            before.forEach((name, value) -> {
                if (!name.equals("friction static_ratio")) {
                    assertThat(after.value(name)).isEqualTo(value);
                }
            });
            assertThat(after.noiseKey())
                    .isEqualTo(new Population(plain, 9).draw(0, joint).noiseKey());
        }
    }

    @Test
    void noStreamHasTwoNamesWithOneNumber() {
        Set<Integer> numbers = new HashSet<>();
        int names = 0;
        for (JointKey key : JointKey.values()) {
            numbers.add(number(key.title()));
            names++;
        }
        for (ToolKey key : ToolKey.values()) {
            numbers.add(number(key.title()));
            names++;
        }
        for (Part part : Part.values()) {
            numbers.add(number(part.title()));
            names++;
        }
        numbers.add(number("supply"));
        assertThat(numbers).hasSize(names + 1);
    }

    private static int number(String name) {
        return ScatterSource.of(
                        ScatterSource.Group.JOINT,
                        name,
                        org.shutoffbench.draw.Stream.PIECE,
                        org.shutoffbench.harness.scenario.Level.PIECE)
                .draw();
    }

    @Test
    void aPartIsPresentAsOftenAsTheFileSays() {
        Scenario scenario = FILES.parse(
                "present.yaml", PLAIN + "    prevailing: {torque: 9 N*m, from: 0.5 turns, present: 10 %}\n");
        Population population = new Population(scenario, 4);
        long present = IntStream.range(0, N)
                .filter(joint -> population.draw(0, joint).value("prevailing torque") > 0)
                .count();
        assertThat((double) present).isEqualTo(0.1 * N, within(5 * Math.sqrt(N * 0.09)));
        DrawnCase absent = IntStream.range(0, 99)
                .mapToObj(joint -> population.draw(0, joint))
                .filter(drawn -> drawn.value("prevailing torque") == 0)
                .findFirst()
                .orElseThrow();
        assertThat(absent.law().freeTorque().torqueNm(20)).isEqualTo(0.2);
    }

    @Test
    void coordinatesOfZeroAreTheMildJointAndOthersMoveOneNumberEach() {
        Population population = new Population(DEMO, 2);
        DrawSource mild = new MedianDraws(1);
        DrawnCase median = population.draw(2, 0, mild);
        assertThat(median.value("friction mu_th")).isEqualTo(0.13);
        assertThat(median.value("prevailing torque")).isEqualTo(9);
        ScatterSource lot = population.sources(2).stream()
                .filter(source -> source.title().equals("friction mu_th (lot)"))
                .findFirst()
                .orElseThrow();
        DrawnCase moved = population.draw(2, 0, mild.with(Map.of(lot, 2.0)));
        assertThat(moved.value("friction mu_th")).isEqualTo(0.13 * Math.exp(2 * logSd(0.08)), within(1e-12));
        assertThat(moved.value("stiffness")).isEqualTo(median.value("stiffness"));
    }

    @Test
    void keyedDrawsAreReproducedByTheirCoordinates() {
        Population population = new Population(DEMO, 2);
        DrawSource keyed = population.keyed(3, 17);
        Map<ScatterSource, Double> normals = new java.util.HashMap<>();
        for (ScatterSource source : population.sources(3)) {
            normals.put(source, NormalDistribution.of(0, 1).inverseCumulativeProbability(keyed.uniform(source)));
        }
        Map<String, Double> again =
                population.draw(3, 0, new MedianDraws(0).with(normals)).values();
        population
                .draw(3, 17)
                .values()
                .forEach((name, value) ->
                        assertThat(again.get(name)).isEqualTo(value, within(Math.abs(value) * 1e-9 + 1e-12)));
    }

    @Test
    void pinnedDrawsAreThoseOfTheOtherPopulation() {
        Scenario pinned = FILES.parse(
                "pinned.yaml",
                PLAIN.replace("name: groups", "name: weakest")
                        + "draws: {seed: 9, scenario: groups, family: only, joint: 41}\n");
        DrawnCase other = new Population(FILES.parse("groups.yaml", PLAIN), 9).draw(0, 41);
        DrawnCase here = new Population(pinned, 12345).draw(0, 0);
        assertThat(here.values()).isEqualTo(other.values());
        assertThat(here.noiseKey()).isEqualTo(other.noiseKey());
    }

    @Test
    void anImpossibleJointIsNamedWithItsReason() {
        Scenario scenario = FILES.parse(
                "steep.yaml",
                PLAIN.replace("lognormal: 0.13, lot: 8 %", "lognormal: 0.04, lot: 25 %")
                        .replace(
                                "joints_per_lot: 12, repeats_per_piece: 3", "joints_per_lot: 1, repeats_per_piece: 1"));
        Population population = new Population(scenario, 1);
        assertThatThrownBy(() -> IntStream.range(0, 5000).forEach(lot -> population.draw(0, lot)))
                .isInstanceOf(ImpossibleJointException.class)
                .hasMessageContaining("of family \"only\" is impossible: joint is not self-locking");
        assertThat(population.firstImpossible(5000)).get().satisfies(first -> {
            assertThat(first.family()).isEqualTo("only");
            assertThatThrownBy(() -> population.draw(0, first.joint())).isInstanceOf(ImpossibleJointException.class);
        });
        assertThat(new Population(DEMO).firstImpossible(500)).isEmpty();
    }
}
