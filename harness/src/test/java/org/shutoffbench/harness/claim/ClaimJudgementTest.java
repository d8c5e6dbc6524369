package org.shutoffbench.harness.claim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shutoffbench.harness.scenario.file.ScenarioException;
import org.shutoffbench.harness.statistics.StandardNormal;

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
        return ClaimDesk.judge(List.of(claim), List.of(Files.writeString(folder.resolve("m.csv"), csv)), null, false);
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
                "'id,torque\n1,84\n2,84,3\n' | m.csv:3: has 3 fields, the header 2",
                "'id,torque\n1,84\n2\n' | m.csv:3: has 1 fields, the header 2",
                "'id;torque\n1;84\n' | m.csv:1: separates columns by semicolons",
                "'id,torque\n1,84\n2,1e400\n' | m.csv:3: torque: found \"1e400\", more than 100 times the target",
                "'id,torque\n1,84\n2,8400.1\n' | check the value and its unit, N*m",
                "'id,torque\n1,84\n2,\"84\n' | m.csv:3: torque: goes on over more than one line",
                "'id,torque\n1,84\n2,NaN\n' | m.csv:3: torque: found \"NaN\"",
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
                List.of(ClaimFile.read(examples.resolve("mean-shift.yaml"))),
                List.of(examples.resolve("mean-shift.csv")),
                null,
                false);
        assertThat(page.text()).contains("A mean shift between families").contains("together they do not hold");
        assertThat(page.title()).contains("is refuted");
    }

    @Test
    void anUnsoundGaugeIsRecognisedAndDecidesNothing() throws IOException {
        Path examples = Path.of("../docs/examples/claims");
        ClaimPage page = ClaimDesk.judge(
                List.of(ClaimFile.read(examples.resolve("unsound-gauge.yaml"))),
                List.of(examples.resolve("unsound-gauge.csv")),
                null,
                false);
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
        double alone = judgement(claim, measured, null).upper();
        assertThat(judgement(claim, measured, beside).upper()).isEqualTo(alone);
        assertThat(judgement(claim, measured, weighted).upper()).isLessThan(alone / 4);
        assertThat(JudgementPage.of(List.of(judgement(claim, measured, weighted)))
                        .text()
                        .replace('\n', ' '))
                .contains("no longer one of measurements alone");
    }

    private static ClaimJudgement judgement(Claim claim, Measurements measured, ClaimJudgement.Simulated simulated) {
        return new ClaimJudgement(claim, "m.csv", measured, simulated, false);
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

    @Test
    void aFileInAnotherEncodingIsRefused() throws IOException {
        Path latin = Files.write(
                folder.resolve("m.csv"),
                "id,torque\n\u00e4,84\n".getBytes(java.nio.charset.StandardCharsets.ISO_8859_1));
        assertThatThrownBy(() -> ClaimDesk.judge(List.of(PLAIN), List.of(latin), null, false))
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining("m.csv: is not text in UTF-8; save it");
    }

    /** All joints of a bad lot fail: 12 of 12 joints, but 1 of 3 lots. Counted singly they would refute, 12 of 36 above 10 %. */
    @Test
    void aFamilyIsJudgedByItsLotsWhereTheyAreKnown() throws IOException {
        Claim claim = ClaimFile.parse(
                "claim.yaml",
                ClaimFileTest.WHOLE
                        .replace("coverage: 99 %", "coverage: 90 %")
                        .replaceAll("(?m)^gauge:.*\\n", "")
                        .replaceAll(
                                "(?m)^measured:.*\\n",
                                "measured: {value: torque, unit: N*m, joint: id, family: kind, lot: lot}\n"));
        assertThat(judge(claim, lots(3, 12, 1)).title()).contains("is undecided");
        assertThat(judge(claim, lots(60, 12, 40)).title()).contains("is refuted", "too many of soft");
        assertThat(judge(claim, lots(36, 1, 0)).title()).contains("is supported");
        assertThat(judge(claim, lots(6, 6, 0)).title()).contains("more lots");
    }

    private static String lots(int lots, int each, int bad) {
        StringBuilder csv = new StringBuilder("id,kind,lot,torque\n");
        for (int lot = 0; lot < lots; lot++) {
            for (int i = 0; i < each; i++) {
                csv.append(lot).append('-').append(i).append(",soft,").append(lot);
                csv.append(lot < bad ? ",60" : ",84").append('\n');
            }
        }
        return csv.toString();
    }

    /** Twenty values of a normal law's quantiles about a mean. */
    private static String normal(double mean, double sd) {
        StringBuilder csv = new StringBuilder("id,torque\n");
        for (int i = 0; i < 20; i++) {
            double z = StandardNormal.upperQuantile((i + 0.5) / 20);
            csv.append(i).append(',').append(mean + sd * z).append('\n');
        }
        return csv.toString();
    }

    /** n 20, at most 10 % outside, 95 %: k about 2.2; 84 N m +- 12.6 leaves 3.15 s of 4 and 1.26 s of 10 N m. */
    @Test
    void meanAndSpreadSupportOnlyWhereAskedForAndWhereValuesAreNormal() throws IOException {
        assertThat(variables(normal(84, 4))).contains("is supported by 20 measured joints, by their mean and spread");
        assertThat(judge(PLAIN, normal(84, 4)).title()).contains("is undecided");
        assertThat(judge(PLAIN, normal(84, 4)).text()).contains("shown, if normal");
        assertThat(variables(normal(84, 10))).contains("standard deviations from a limit");
        assertThat(variables(normal(84, 1) + "odd,73\n")).contains("values are not normal");
        assertThat(variables("id,torque\n1,84\n2,85\n3,83\n")).contains("too few to see whether values are normal");
    }

    private String variables(String csv) throws IOException {
        Path file = Files.writeString(folder.resolve("m.csv"), csv);
        return ClaimDesk.judge(List.of(PLAIN), List.of(file), null, true).title();
    }

    /** Of 40 joints that both tools tightened one leaves 12 low, the other none: exact McNemar p 0.0005. */
    @Test
    void twoToolsStandSideBySideOnTheSameJoints() throws IOException {
        Path first = Files.writeString(folder.resolve("first.csv"), joints(28, 12));
        Path second = Files.writeString(folder.resolve("second.csv"), joints(40, 0));
        ClaimPage page = ClaimDesk.judge(List.of(PLAIN), List.of(first, second), null, false);
        assertThat(page.title()).contains("by first.csv is refuted", "by second.csv is supported");
        assertThat(page.text().replace('\n', ' '))
                .contains("Side by side")
                .contains("On the 40 joints that both files name: 12 fail in first.csv alone, 0 in second.csv alone")
                .doesNotContain("does not tell them apart");
        assertThat(ClaimDesk.judge(List.of(PLAIN), List.of(second, second), null, false)
                        .text())
                .contains("Side by side");
    }
}
