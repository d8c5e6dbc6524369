package org.shutoffbench.harness.claim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shutoffbench.harness.scenario.file.ScenarioException;

/** A claim that leaves something out is refused with the question that the seller must answer. */
class ClaimFileTest {

    static final String WHOLE = """
            claim: 1
            name: promise
            quantity: clamping torque
            target: 84 N*m
            tolerance: 15 %
            coverage: 99 %
            confidence: 95 %
            population: {families: any, lots: 10, tools: any, battery: [80 %, 100 %]}
            failure: outside the tolerance
            seller: {failing: 0.2 %, risk: 5 %}
            seconds_per_joint: 40 s
            gauge: {uncertainty: 1.5 N*m, coverage_factor: 2}
            measured: {value: torque, unit: N*m, joint: id}
            """;

    @Test
    void aWholeClaimIsUnderstood() {
        Claim claim = ClaimFile.parse("whole.yaml", WHOLE);
        assertThat(claim.lowest()).isEqualTo(71.4);
        assertThat(claim.highest()).isEqualTo(96.6);
        assertThat(claim.allowed()).isEqualTo(1 - 0.99);
        assertThat(claim.population().lots()).isEqualTo(10);
        assertThat(claim.population().anyFamily()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "quantity, is it the torque at the joint or the clamp force?",
        "target, which value is meant to be reached?",
        "tolerance, within how much of the target?",
        "coverage, what share of all joints lies inside the tolerance",
        "confidence, how sure you must be",
        "population, 'on which joints, from how many lots, with how many tools'",
        "failure, which joints count against the claim?",
    })
    void whatIsLeftOutIsAskedFor(String key, String question) {
        String text = WHOLE.replaceAll("(?m)^" + key + ":.*\\n", "");
        assertThatThrownBy(() -> ClaimFile.parse("short.yaml", text))
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining("short.yaml")
                .hasMessageContaining(key)
                .hasMessageContaining(question);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "target: 84 N*m | target: 84 | the unit is missing",
                "target: 84 N*m | target: 84 kN | is not a unit of torque",
                "target: 84 N*m | target: -3 N*m | above 0",
                "tolerance: 15 % | tolerance: 120 % | below the target itself",
                "coverage: 99 % | coverage: 100 % | no test can show that all joints do",
                "coverage: 99 % | 'coverage: 99 %\nindex: 1.33' | not both",
                "confidence: 95 % | confidence: sure | plain number",
                "quantity: clamping torque | quantity: torque | allowed: clamping torque, clamp force",
                "failure: outside the tolerance | failure: bad | allowed: outside the tolerance",
                "lots: 10 | lots: 0 | a whole number from 1",
                "lots: 10, | '' | over how many lots does it hold?",
                "battery: [80 %, 100 %] | battery: [100 %, 80 %] | down to which battery state?",
                "failing: 0.2 % | failing: 2 % | is not below the share that the claim allows",
                "unit: N*m | unit: kN | is not a unit of torque",
                "name: promise | 'name: promise\nprice: 3' | price",
                "claim: 1 | claim: 2 | a whole number from 1 to 1",
            })
    void whatIsWrongIsToldWithItsRemedy(String from, String to, String told) {
        String text = WHOLE.replace(from.strip(), to.strip());
        assertThat(text).isNotEqualTo(WHOLE);
        assertThatThrownBy(() -> ClaimFile.parse("wrong.yaml", text))
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining(told.strip());
    }

    @Test
    void anIndexIsAShareOfACentredProcess() {
        Claim claim = ClaimFile.parse("index.yaml", WHOLE.replace("coverage: 99 %", "index: 1"));
        assertThat(claim.coverage()).isBetween(0.9973, 0.99731);
    }

    @Test
    void theExamplesAreWhole() throws Exception {
        try (var files = Files.list(Path.of("../docs/examples/claims"))) {
            files.filter(f -> f.toString().endsWith(".yaml"))
                    .forEach(f -> assertThat(ClaimFile.read(f).name()).isNotBlank());
        }
    }
}
