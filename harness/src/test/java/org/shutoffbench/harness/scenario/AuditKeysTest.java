package org.shutoffbench.harness.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.file.ScenarioException;

class AuditKeysTest {

    private static final String AUDIT = """
            audit:
              accept: {lowest: 70 N*m, highest: 110 N*m}
              allows: {plain: 9 N*m}
              overshoot: {lognormal: 2 deg, sigma: 40 %}
              skipped: 2 %
            """;
    private static final String COSTS = """
            costs:
              currency: invented crowns
              per_hour: 60
              tightening: 12 s
              audit: 30 s
              rework: 3 min
              rework_parts: 1
              escape: 600
            """;
    private static final String BASE = """
            bench: 1
            name: audited
            judge: {quantity: clamping torque, target: 84 N*m, window: 15 %}
            families:
              plain:
                thread: M12
                friction: {mu_th: 0.12, mu_b: 0.12}
                stiffness: 300 kN/mm
                seating: 8 deg
            """;

    private static Scenario read(String text) {
        return new ScenarioFile(new StrategyCatalogue()).parse("audited.yaml", BASE + text);
    }

    @Test
    void whatIsGivenCountsAndTheRestIsDefault() {
        AuditRecipe audit = read(AUDIT).audit();
        assertThat(audit.lowest().si()).isEqualTo(70);
        assertThat(audit.highest().si()).isEqualTo(110);
        assertThat(audit.allowanceNm("plain")).isEqualTo(9);
        assertThat(audit.amount(AuditKey.OVERSHOOT).median()).isCloseTo(Math.toRadians(2), within(1e-12));
        assertThat(audit.amount(AuditKey.EMBEDDING)).isEqualTo(AuditKey.EMBEDDING.byDefault());
        assertThat(audit.skipped().si()).isEqualTo(0.02);
    }

    @Test
    void costsAreLabourAndParts() {
        Costs costs = read(COSTS).costs();
        assertThat(costs.auditCost()).isEqualTo(0.5);
        assertThat(costs.reworkCost()).isEqualTo(4);
        assertThat(costs.sampleSize()).isEqualTo(10);
    }

    @Test
    void aScenarioWithoutAnAuditIsTextuallyTheSameAsBefore() {
        assertThat(ScenarioFile.resolved(read(""))).doesNotContain("audit:", "costs:");
    }

    @Test
    void theResolvedTextReadsBackToTheSameAudit() {
        Scenario scenario = read(AUDIT + COSTS);
        String resolved = ScenarioFile.resolved(scenario);
        Scenario again = new ScenarioFile(new StrategyCatalogue()).parse("resolved.yaml", resolved);
        assertThat(again.audit()).isEqualTo(scenario.audit());
        assertThat(again.costs()).isEqualTo(scenario.costs());
        assertThat(ScenarioFile.resolved(again)).isEqualTo(resolved);
    }

    @Test
    void whatCannotBeIsToldWithLineKeyAndRemedy() {
        Map<String, List<String>> wrong = Map.of(
                "audit: {overshot: 1 deg}\n",
                List.of("audit.overshot", "overshoot"),
                "audit: {delay: 60}\n",
                List.of("audit.delay", "unit"),
                "audit: {skipped: 95 %}\n",
                List.of("audit.skipped", "90 %"),
                "audit: {accept: {lowest: 90 N*m, highest: 80 N*m}}\n",
                List.of("audit.accept.highest", "above it"),
                "audit: {allows: {plane: 9 N*m}}\n",
                List.of("audit.allows.plane", "plain"),
                "audit: {gain: {uniform: [-60 %, 4 %]}}\n",
                List.of("audit.gain", "-50 %"),
                "costs: {per_hour: 60}\n",
                List.of("costs.escape", "costs.audit", "costs.rework"),
                COSTS.replace("escape: 600", "escape: 3"),
                List.of("costs.escape", "a rework"),
                COSTS.replace("600", "600\n  sample: 0 %"),
                List.of("costs.sample", "0.01 %"));
        wrong.forEach((text, parts) -> assertThatThrownBy(() -> read(text))
                .as(text)
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining("audited.yaml:1")
                .satisfies(e -> assertThat(e.getMessage()).contains(parts)));
    }
}
