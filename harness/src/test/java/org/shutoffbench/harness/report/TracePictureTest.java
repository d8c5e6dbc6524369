package org.shutoffbench.harness.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.shutoffbench.controller.Target;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.ScenarioFile;
import org.shutoffbench.plant.FastPlant;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class TracePictureTest {

    private static final Scenario SCENARIO = new ScenarioFile(new StrategyCatalogue()).parse("trace.yaml", """
            bench: 1
            name: traced & <b>drawn</b>
            judge: {quantity: clamping torque, target: 84 N*m, window: 15 %}
            tool: light
            sensors: good
            supply: 1
            time_limit: 10 s
            joints: 1
            seed: 3
            families:
              lock nut:
                thread: M12x1.75
                friction: {mu_th: 0.13, mu_b: 0.13, D_b: 15.07 mm, static_ratio: 1.05}
                stiffness: 180 kN/mm
                seating: 14 deg
                turns_to_snug: 2
                running_torque: 0.2 N*m
                yield: off
                prevailing: {torque: 8 N*m, before_snug: 1 turn, ramp: 1 turn}
            strategies: [{name: blow count, settings: {blows: 20}}]
            """);
    private static final Bench BENCH = Bench.of(SCENARIO, SCENARIO.seed(), new StrategyCatalogue());

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    @Test
    void isWellFormedNamedAndEscaped() throws Exception {
        String svg = TracePicture.svg(TraceRecorder.ofStrategy(BENCH, 0, 0, 0, FastPlant::new));
        Document drawing = parsed(svg);
        assertThat(drawing.getDocumentElement().getAttribute("role")).isEqualTo("img");
        assertThat(drawing.getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo("traced & <b>drawn</b>, lock nut, joint 0: blow count (given)");
        assertThat(svg).doesNotContain("NaN").doesNotContain("Infinity");
    }

    @Test
    void theRecordedEndIsTheRunsEnd() {
        TraceContent content = TraceRecorder.ofStrategy(BENCH, 0, 0, 0, FastPlant::new);
        TighteningRecord record = BENCH.tighten(BENCH.newLoop(), 0, 0)[0];
        TraceContent.Point end = content.points().get(content.points().size() - 1);
        assertThat(end.clampForceN()).isCloseTo(record.clampForceN(), org.assertj.core.data.Offset.offset(0.01));
        assertThat(content.blows()).hasSize(record.blows());
        assertThat(content.stopTimeS()).isEqualTo(record.timeS());
        assertThat(content.estimates()).isNotEmpty();
    }

    @Test
    void timeNeverGoesBack() {
        TraceContent content = TraceRecorder.brakedAtBlow(BENCH, 0, 0, 12, new FastPlant());
        assertThat(content.points()).extracting(TraceContent.Point::timeS).isSorted();
        assertThat(content.blows()).hasSizeGreaterThanOrEqualTo(12);
        assertThat(content.stopTimeS()).isEqualTo(content.blows().get(11).timeS());
    }

    @Test
    void estimatesInTheUnitOfAPanelStandBesideTheTruth() {
        TraceContent traced = TraceRecorder.brakedAtBlow(BENCH, 0, 0, 12, new FastPlant());
        TraceContent with = new TraceContent(
                traced.title(),
                traced.ending(),
                traced.law(),
                new Target(84, 0.15f),
                traced.stopTimeS(),
                traced.points(),
                traced.blows(),
                List.of(
                        new TraceContent.Estimate(
                                "torque [N m]",
                                List.of(new TraceContent.Value(0.1, 10), new TraceContent.Value(0.2, 40))),
                        new TraceContent.Estimate("blows counted [1]", List.of(new TraceContent.Value(0.1, 3)))));
        assertThat(TracePicture.svg(with)).contains("its own torque [N m]").doesNotContain("blows counted");
        assertThat(TracePicture.svg(traced)).doesNotContain("its own");
    }
}
