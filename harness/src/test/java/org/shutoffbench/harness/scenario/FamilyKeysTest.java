package org.shutoffbench.harness.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shutoffbench.harness.population.DrawnCase;
import org.shutoffbench.harness.population.MedianDraws;
import org.shutoffbench.harness.population.Population;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.file.ScenarioException;
import org.shutoffbench.joint.assembly.BoltedAssembly;
import org.shutoffbench.joint.preset.SurfacePreset;
import org.shutoffbench.joint.strength.AssemblyLimit;
import org.shutoffbench.joint.strength.PropertyClass;
import org.shutoffbench.joint.thread.MetricSize;

/** What a family's keys make of a joint. */
class FamilyKeysTest {

    private static final String HEAD = """
            bench: 1
            name: families
            judge: {quantity: clamp force, target: 40 kN, window: 15 %}
            groups: {joints_per_lot: 4, repeats_per_piece: 4, joints_per_tool: 1}
            families:
              plain:
                thread: M12
                friction: {mu_th: 0.12, mu_b: 0.12}
                stiffness: 312 kN/mm
                seating: 8 deg
            """;

    private static Population population(String more) {
        return new Population(new ScenarioFile(new StrategyCatalogue()).parse("families.yaml", HEAD + more));
    }

    private static DrawnCase last(Population population) {
        return population.draw(population.scenario().families().size() - 1, 0, new MedianDraws(0));
    }

    @Test
    void aStandardSizeBringsItsBearingDiameter() {
        assertThat(last(population("")).value("friction D_b")).isEqualTo((0.01663 + 0.0135) / 2, within(1e-9));
    }

    @Test
    void gripAndClassGiveTheStiffnessOfTheAssembledJoint() {
        DrawnCase drawn =
                last(population("  one: {like: plain, stiffness: none, class: 8.8, grip: 40 mm, washers: 1}\n"));
        BoltedAssembly parts = BoltedAssembly.of(MetricSize.M12.coarse(), PropertyClass.ISO_8_8)
                .grip(0.040)
                .washers(java.util.List.of(org.shutoffbench.joint.assembly.Washer.normal(0.012)))
                .build();
        double forcePerAngle = parts.stiffness().seriesNPerM() * 0.00175 / (2 * Math.PI);
        assertThat(drawn.law().clamp().forcePerAngleNPerRad()).isEqualTo(forcePerAngle, within(forcePerAngle * 1e-12));
    }

    @Test
    void aClassMakesTheBoltYieldUnlessYieldIsOff() {
        double yieldN = new AssemblyLimit(MetricSize.M12.coarse(), 940e6, 0.12).yieldForceN();
        assertThat(last(population("  one: {like: plain, class: 10.9}\n"))
                        .law()
                        .yielding()
                        .yieldForceN())
                .isEqualTo(yieldN, within(1e-6 * yieldN));
        assertThat(last(population("  one: {like: plain, class: 10.9, yield: off}\n"))
                        .law()
                        .yielding()
                        .yieldForceN())
                .isInfinite();
        assertThat(last(population(
                                "  one: {like: plain, yield: {force: 50 kN, slope_ratio: 0.1, fracture_angle: 30 deg}}\n"))
                        .law()
                        .yielding()
                        .slopeRatio())
                .isEqualTo(0.1);
    }

    @Test
    void aNutWeakerThanItsBoltIsWarnedOf() {
        assertThat(population("  one: {like: plain, class: 10.9, yield: 90 kN}\n")
                        .warnings())
                .singleElement()
                .asString()
                .startsWith("one: the nut's thread may strip");
        assertThat(population("  one: {like: plain, class: 10.9}\n").warnings()).isEmpty();
    }

    @Test
    void aNutFactorIsMetByTheFrictionChosenForIt() {
        DrawnCase drawn =
                last(population("  one: {like: plain, friction: {nut_factor: 0.2, mu_th: none, mu_b: none}}\n"));
        assertThat(drawn.law().torqueTension().kappaOnM()).isEqualTo(0.2 * 0.012, within(1e-12));
    }

    @Test
    void aSurfaceBringsFrictionAndOwnKeysWin() {
        DrawnCase drawn = last(
                population(
                        "  one: {surface: dry zinc, thread: M12, stiffness: 312 kN/mm, seating: 8 deg, friction: {static_ratio: 1.3}}\n"));
        assertThat(drawn.value("friction mu_th"))
                .isEqualTo(SurfacePreset.DRY_ZINC.friction().thread().median());
        assertThat(drawn.law().staticRatio()).isEqualTo(1.3);
    }

    @Test
    void everySurfaceAndEveryStateCanBeRead() {
        for (SurfacePreset surface : SurfacePreset.all()) {
            last(population(
                    "  one: {surface: " + surface.name() + ", thread: M16, stiffness: 312 kN/mm, seating: 8 deg}\n"));
        }
        for (org.shutoffbench.joint.preset.JointPreset state : org.shutoffbench.joint.preset.JointPreset.all()) {
            Population population = population(
                    "  one: {state: " + state.name() + ", thread: 1/2-13, stiffness: 312 kN/mm, seating: 8 deg}\n");
            population.draw(1, 3);
            assertThat(population.scenario().families().get(1).presence().containsKey(Part.PREVAILING))
                    .isEqualTo(state.lockNut().isPresent());
        }
    }

    @Test
    void earlierTighteningsTakeFrictionUpAndPrevailingTorqueDown() {
        Population population = population("""
                  one:
                    like: plain
                    friction: {retightening_factor: 1.1, retightening_limit: 1.15}
                    prevailing: {torque: 10 N*m, from: 0.5 turns, first_loss: 20 %, later_loss: 10 %}
                """);
        double[] prevailing = {10, 8, 7.2, 6.48};
        double[] friction = {1, 1.1, 1.15, 1.15};
        for (int repeat = 0; repeat < 4; repeat++) {
            DrawnCase drawn = population.draw(1, repeat);
            assertThat(drawn.value("prevailing torque")).isEqualTo(prevailing[repeat], within(1e-9));
            assertThat(drawn.law().freeTorque().torqueNm(20)).isEqualTo(prevailing[repeat] + 0.2, within(1e-9));
            assertThat(drawn.law().torqueTension().threadLeverM())
                    .isEqualTo(
                            friction[repeat]
                                    * population
                                            .draw(0, 0)
                                            .law()
                                            .torqueTension()
                                            .threadLeverM(),
                            within(1e-12));
        }
    }

    @Test
    void aTargetOfClampForceIsSetByTheMedianFriction() {
        Population population = population("");
        double kappa = last(population).law().torqueTension().kappaOnM();
        assertThat(population.target(0).clampingTorqueNm()).isEqualTo((float) (40_000 * kappa));
    }

    @Test
    void everyFamilyIsLaidOverAllOfThem() {
        Population population = population("  two: {like: plain, seating: 9 deg}\nevery_family: {seating: 10 deg}\n");
        assertThat(last(population).value("seating")).isEqualTo(Math.toRadians(10));
        assertThat(population.draw(0, 0).value("seating")).isEqualTo(Math.toRadians(10));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {like: plain, friction: {nut_factor: 0.2}}                             | give either nut_factor or mu_th and mu_b, not both
            {like: plain, grip: 40 mm, class: 8.8}                                 | is told twice
            {like: plain, washers: 2}                                              | leave it out, or give grip or layers
            {like: plain, stiffness: none, grip: 5 mm, class: 8.8}                 | is shorter than the thread engagement
            {like: plain, stiffness: none, grip: 40 mm, class: 8.8, hole: 30 mm}   | is larger than the bearing face
            {like: plain, stiffness: none, grip: 40 mm, class: 8.8, hole: 11 mm}   | has negative clearance
            {like: plain, stiffness: none, grip: 40 mm}                            | a computed stiffness needs the bolt's class
            {like: plain, yield: by class}                                         | yield by class needs the family's class
            {like: plain, yield: 1 kN, seating: 90 deg}                            | yield inside the seating zone
            {like: plain, class: 8.8, prevailing: {torque: 200 N*m, from: 1 turn}} | reach the yield torque
            {like: plain, prevailing: {torque: 9 N*m}}                             | give one of from (counted from the start) and before_snug
            {like: plain, prevailing: {torque: 9 N*m, before_snug: 3 turns}}       | the locking element may begin before the start
            {like: plane}                                                          | did you mean "plain"?
            {like: one}                                                            | like each other in a ring
            {like: plain, stiffness: {normal: 300 kN/mm}}                          | its scatter is missing
            {like: plain, stiffness: {normal: 300 kN/mm, cv: 8 %, sd: 3 kN/mm}}    | its scatter is told twice
            {like: plain, stiffness: {normal: 300 kN/mm, cv: 30 %}}                | take less scatter
            {like: plain, stiffness: {normal: 300 kN/mm, cv: 8}}                   | a scatter lies above 0 % and not above 100 %
            {like: plain, stiffness: {normal: 300 kN/mm, tool: 8 %}}               | is not a key here
            {like: plain, seating: {uniform: [9 deg, 8 deg]}}                      | the first end is the lower one
            {like: plain, thread: M13}                                             | is not among the metric sizes
            {like: plain, thread: {d: 12 mm}}                                      | give its pitch
            {like: plain, class: 9.9}                                              | is no property class
            {like: plain, surface: velvet}                                         | is no surface
            {like: plain, fouling: {torque: 3 N*m, present: 110 %}}                | allowed: 0 to 1
            """)
    void whatCannotBeIsRefusedWithTheReason(String family, String reason) {
        assertThatThrownBy(() -> population("  one: " + family + "\n"))
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining(reason)
                .hasMessageContaining("families.yaml:")
                .hasMessageContaining("families.one");
    }
}
