package org.shutoffbench.harness.claim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shutoffbench.harness.scenario.file.ScenarioException;

/** Measured joints, good and bad, against a claim of at most 10 % outside 84 N m +- 15 %. */
class ClaimJudgementTest {

    @TempDir
    private Path folder;

    private static Claim claim(String measured, String gauge) {
        return ClaimFile.parse(
                "claim.yaml",
                ClaimFileTest.WHOLE
                        .replace("coverage: 99 %", "coverage: 90 %")
                        .replaceAll("(?m)^gauge:.*\\n", gauge.isEmpty() ? "" : "gauge: " + gauge + "\n")
                        .replaceAll("(?m)^measured:.*\\n", "measured: " + measured + "\n"));
    }

    private static final Claim PLAIN = claim("{value: torque, unit: N*m, joint: id}", "");

    private ClaimPage judge(Claim claim, String csv) throws IOException {
        return ClaimDesk.judge(claim, Files.writeString(folder.resolve("m.csv"), csv), null);
    }

    private static String joints(int good, int bad) {
        StringBuilder csv = new StringBuilder("id,torque\n");
        for (int i = 0; i < good + bad; i++) {
            csv.append(i).append(',').append(i < good ? 80 + i % 9 : 60).append('\n');
        }
        return csv.toString();
    }

    @Test
    void verdictsFollowTheExactBounds() throws IOException {
        // 0 of 29: 1 - 0.05^(1/29) = 9.8 %, 0 of 28: 10.1 %
        assertThat(judge(PLAIN, joints(29, 0)).title()).contains("is supported by 29 measured joints");
        assertThat(judge(PLAIN, joints(28, 0)).title()).contains("need about 1 more joints");
        assertThat(judge(PLAIN, joints(20, 10)).title()).contains("is refuted: 10 of 30");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'id,torque\n1,84\n2,\n' | m.csv:3: torque: is missing",
                "'id,torque\n1,84\n,85\n' | m.csv:3: id: is missing",
                "'id,torque\n1,84\n1,85\n' | again, first in row 2",
                "'id,torque\n1,84\n2,62 ft*lbf\n' | a file must not mix units",
                "'id,torque\n1,84\n2,n/a\n' | m.csv:3: torque: found \"n/a\"",
                "'id,torque\n1,84\n2,-5\n' | a value of 0 or more",
                "'id,torque\n1,84\n2,84,3\n' | Record 3 has 3 fields, but first record had 2 fields",
                "'id,moment\n1,84\n' | is no column of this file",
                "'id,torque,torque\n1,84,84\n' | stands twice in the header",
                "'id,torque\n' | holds no measurement",
                "'' | is empty",
            })
    void aFileThatCannotBeUsedIsRefusedWithItsRow(String csv, String told) {
        assertThatThrownBy(() -> judge(PLAIN, csv == null ? "" : csv))
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining(told);
    }

    @Test
    void everyWrongRowIsToldAtOnce() {
        assertThatThrownBy(() -> judge(PLAIN, "id,torque\n1,x\n2,y\n3,84\n"))
                .hasMessageContaining("m.csv:2")
                .hasMessageContaining("m.csv:3");
    }

    @Test
    void unitsAreConverted() throws IOException {
        Claim inch = claim("{value: torque, unit: ft*lbf, joint: id}", "");
        assertThat(judge(inch, joints(40, 0).replaceAll(",8.", ",62")).title()).contains("is supported");
    }

    @Test
    void readingsNearALimitAreUndecidedWithinTheGaugesUncertainty() throws IOException {
        Claim guarded = claim("{value: torque, unit: N*m, joint: id}", "{uncertainty: 2 N*m, coverage_factor: 2}");
        String csv = joints(29, 0) + "90,72\n91,70\n92,69\n";
        assertThat(judge(guarded, csv).text()).contains("32 joints: 1 fail, 2 undecided");
        assertThat(judge(guarded, csv).title()).contains("undecided");
    }

    @Test
    void fewLotsWeighLessThanManyJoints() throws IOException {
        Claim byLot = claim("{value: torque, unit: N*m, joint: id, lot: lot}", "");
        StringBuilder csv = new StringBuilder("id,lot,torque\n");
        for (int i = 0; i < 60; i++) {
            csv.append(i).append(',').append(i / 20).append(",84\n");
        }
        assertThat(judge(byLot, csv.toString()).title()).contains("measure joints from more lots");
    }

    @Test
    void aMeanShiftBetweenFamiliesIsRecognised() throws IOException {
        Path examples = Path.of("../docs/examples/claims");
        ClaimPage page = ClaimDesk.judge(
                ClaimFile.read(examples.resolve("mean-shift.yaml")), examples.resolve("mean-shift.csv"), null);
        assertThat(page.text()).contains("A mean shift between families").contains("together they do not hold");
        assertThat(page.title()).contains("is refuted");
    }

    @Test
    void anUnsoundGaugeIsRecognisedAndDecidesNothing() throws IOException {
        Path examples = Path.of("../docs/examples/claims");
        ClaimPage page = ClaimDesk.judge(
                ClaimFile.read(examples.resolve("unsound-gauge.yaml")), examples.resolve("unsound-gauge.csv"), null);
        assertThat(page.title()).contains("cannot be judged with this gauge");
        assertThat(page.text().replace('\n', ' ')).contains("the gauge is unsound");
    }

    @Test
    void simulatedJointsEnterOnlyWithAWeight() throws IOException {
        Claim claim = PLAIN;
        Path csv = Files.writeString(folder.resolve("m.csv"), joints(20, 0));
        Measurements measured = Measurements.read(csv, claim, claim.measured());
        ClaimJudgement.Simulated beside = new ClaimJudgement.Simulated("run", 0, 1000, 0);
        ClaimJudgement.Simulated weighted = new ClaimJudgement.Simulated("run", 0, 1000, 0.1);
        double alone = new ClaimJudgement(claim, measured, null).upper();
        assertThat(new ClaimJudgement(claim, measured, beside).upper()).isEqualTo(alone);
        assertThat(new ClaimJudgement(claim, measured, weighted).upper()).isLessThan(alone / 4);
        assertThat(new ClaimJudgement(claim, measured, weighted).page().text().replace('\n', ' '))
                .contains("no longer one of measurements alone");
    }

    private static Claim byFamily() {
        return ClaimFile.parse(
                "claim.yaml",
                ClaimFileTest.WHOLE
                        .replace("coverage: 99 %", "coverage: 90 %")
                        .replace("families: any", "families: [hard, soft]")
                        .replaceAll("(?m)^gauge:.*\\n", "")
                        .replaceAll(
                                "(?m)^measured:.*\\n",
                                "measured: {value: torque, unit: N*m, joint: id, family: kind}\n"));
    }

    private static String rows(String family, int good, int bad) {
        StringBuilder csv = new StringBuilder();
        for (int i = 0; i < good + bad; i++) {
            csv.append(family)
                    .append(i)
                    .append(',')
                    .append(family)
                    .append(',')
                    .append(i < good ? 84 : 60)
                    .append('\n');
        }
        return csv.toString();
    }

    /** 6 of 500 are 1.2 % and the claim allows 10 %, but 6 of 10 soft ones fail. */
    @Test
    void manyGoodJointsOfOneFamilyDoNotSpeakForAnother() throws IOException {
        String head = "id,kind,torque\n";
        assertThat(judge(byFamily(), head + rows("hard", 490, 0) + rows("soft", 4, 6))
                        .title())
                .contains("is refuted", "too many of soft");
        assertThat(judge(byFamily(), head + rows("hard", 490, 0) + rows("soft", 10, 0))
                        .title())
                .contains("is undecided", "not shown of soft");
        assertThat(judge(byFamily(), head + rows("hard", 490, 0)).title()).contains("not shown of soft");
        assertThat(judge(byFamily(), head + rows("hard", 29, 0) + rows("soft", 29, 0))
                        .title())
                .contains("is supported");
    }

    @Test
    void aFamilyOfWhichTheClaimDoesNotSpeakIsRefusedWithItsRow() {
        assertThatThrownBy(() -> judge(byFamily(), "id,kind,torque\n1,hard,84\n2,sotf,84\n"))
                .hasMessageContaining("m.csv:3: kind: found \"sotf\"")
                .hasMessageContaining("did you mean \"soft\"?");
    }

    /** Within families the gauge scatters as much as the joints do; the shift between them would hide it. */
    @Test
    void aMeanShiftDoesNotFlatterTheGauge() throws IOException {
        Claim claim = ClaimFile.parse(
                "claim.yaml",
                ClaimFileTest.WHOLE
                        .replaceAll("(?m)^gauge:.*\\n", "")
                        .replaceAll(
                                "(?m)^measured:.*\\n",
                                "measured: {value: torque, unit: N*m, joint: id, family: kind, reading: r}\n"));
        StringBuilder csv = new StringBuilder("id,kind,r,torque\n");
        for (int i = 0; i < 40; i++) {
            double middle = (i < 20 ? 76 : 92) + i % 5 * 0.5;
            csv.append(i)
                    .append(i < 20 ? ",hard,1," : ",soft,1,")
                    .append(middle - 0.5)
                    .append('\n');
            csv.append(i)
                    .append(i < 20 ? ",hard,2," : ",soft,2,")
                    .append(middle + 0.5)
                    .append('\n');
        }
        assertThat(judge(claim, csv.toString()).title()).contains("cannot be judged with this gauge");
    }

    /** C_pk 1 leaves 0.135 % of a normal population beyond one limit and 0.27 % beyond two (ISO-22514-2). */
    @Test
    void anIndexCountsTheLimitsThatTheFailureHas() {
        String index = ClaimFileTest.WHOLE.replace("coverage: 99 %", "index: 1").replaceAll("(?m)^seller:.*\\n", "");
        assertThat(ClaimFile.parse("c", index).coverage())
                .isCloseTo(0.9973002, org.assertj.core.api.Assertions.within(1e-7));
        assertThat(ClaimFile.parse("c", index.replace("outside the tolerance", "below the tolerance"))
                        .coverage())
                .isCloseTo(0.9986501, org.assertj.core.api.Assertions.within(1e-7));
    }
}
