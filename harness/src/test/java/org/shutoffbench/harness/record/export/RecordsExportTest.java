package org.shutoffbench.harness.record.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.record.FileHash;
import org.shutoffbench.harness.record.FolderRefusedException;
import org.shutoffbench.harness.record.OutcomeColumn;
import org.shutoffbench.harness.record.OutcomesFormat;
import org.shutoffbench.harness.record.OutcomesFormat.StrategyName;
import org.shutoffbench.harness.record.RunFolder;
import org.shutoffbench.harness.run.EndReason;
import org.shutoffbench.harness.run.Outcome;
import org.shutoffbench.harness.run.OutcomeRule;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.scenario.JudgedQuantity;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Invented rows of every end reason, verdict and outcome leave in every form and are counted again by other programs. */
class RecordsExportTest {

    private static final OutcomesFormat FORMAT = new OutcomesFormat(
            List.of("plain", "nut, \"locked\""),
            List.of(new StrategyName("one", "home"), new StrategyName("two", "all")));
    private static final OutcomeRule RULE = new OutcomeRule(JudgedQuantity.CLAMPING_TORQUE, 84, 71.4, 96.6, false);

    @TempDir
    Path temporary;

    private Path folder;
    private final List<TighteningRecord> rows =
            IntStream.range(0, 240).mapToObj(RecordsExportTest::row).toList();

    private static TighteningRecord row(int i) {
        return new TighteningRecord(
                i / 120,
                i % 120 / 2,
                i,
                i,
                0,
                i / 7,
                i % 2,
                List.of(EndReason.values()).get(i % 5),
                List.of(Verdict.values()).get(i % 3),
                List.of(Outcome.values()).get(i % 6),
                400.25 * i,
                i % 11 == 0 ? Double.NaN : 0.7 * i,
                0.2,
                i - 100.5,
                i % 40,
                0.01 * i,
                1.5,
                i % 3);
    }

    @BeforeEach
    void aFinishedRun() throws IOException {
        folder = Files.createDirectory(temporary.resolve("run"));
        Path outcomes = Files.writeString(folder.resolve(RunFolder.OUTCOMES), FORMAT.header() + FORMAT.rows(rows));
        Files.writeString(
                folder.resolve(RunFolder.PROVENANCE),
                "{\"bench\": \"0.1\", \"command\": [\"run\"], \"scenarioSha256\": \"0123456789abcdef0123\","
                        + " \"outcomesSha256\": \"" + FileHash.of(outcomes) + "\", \"seed\": 7}");
    }

    private Path export(RecordsFormat form, RecordSelection selection) throws IOException {
        Path file = temporary.resolve("records." + form.title());
        RecordsExport.open(folder, FORMAT, RULE).write(file, form, selection, List.of("records"));
        assertThat(temporary.resolve("records." + form.title() + ".tmp")).doesNotExist();
        return file;
    }

    private static RecordSelection selection(String condition, OutcomeColumn... columns) {
        return new RecordSelection(List.of(columns), List.of(Condition.parse(condition, FORMAT)));
    }

    @Test
    void everyRecordAsCsvIsTheOutcomesFileItself() throws IOException {
        assertThat(export(RecordsFormat.CSV, RecordSelection.ALL))
                .hasSameBinaryContentAs(folder.resolve(RunFolder.OUTCOMES));
    }

    @Test
    void theTableSchemaHoldsForTheCsvAndFailsForAnyOther() throws IOException {
        Path file = export(RecordsFormat.CSV, RecordSelection.ALL);
        SchemaCheck schema = new SchemaCheck(Files.readString(RecordsExport.schemaBeside(file)));
        assertThat(schema.problems(file)).isEmpty();
        String text = Files.readString(file);
        Map<String, String> damage = Map.of(
                "plain,0,0", "plane,0,0", "plain,0,0,", "plain,0,,", "REACHED", "DONE", "plain,1,2", "plain,-1,2");
        for (Map.Entry<String, String> change : damage.entrySet()) {
            Files.writeString(file, text.replaceFirst(change.getKey(), change.getValue()));
            assertThat(schema.problems(file)).as(change.toString()).isNotEmpty();
        }
        Files.writeString(file, text + text.lines().skip(1).findFirst().orElseThrow() + "\n");
        assertThat(schema.problems(file)).containsExactly("line 242: key occurs twice");
        Files.writeString(file, text.replaceFirst(",400\\.25,", ",-400.25,"));
        assertThat(schema.problems(file)).containsExactly("line 3, clamp_force_N: below the minimum");
    }

    @Test
    void columnsAndConditionsChooseWhatLeaves() throws IOException {
        Path file = export(
                RecordsFormat.CSV,
                new RecordSelection(
                        List.of(OutcomeColumn.JOINT, OutcomeColumn.FAMILY),
                        List.of(
                                Condition.parse("family=nut, \"locked\"", FORMAT),
                                Condition.parse("verdict != UNSURE", FORMAT),
                                Condition.parse("clamping_torque_Nm<98", FORMAT))));
        List<String> expected = new ArrayList<>(List.of("joint,family"));
        for (TighteningRecord row : rows) {
            if (row.family() == 1 && row.verdict() != Verdict.UNSURE && row.clampingTorqueNm() < 98) {
                expected.add(row.joint() + ",\"nut, \"\"locked\"\"\"");
            }
        }
        assertThat(Files.readAllLines(file)).isEqualTo(expected).hasSizeGreaterThan(5);
        assertThat(new SchemaCheck(Files.readString(RecordsExport.schemaBeside(file))).problems(file))
                .isEmpty();
    }

    @Test
    void aMissingNumberMeetsNoCondition() throws IOException {
        for (String condition : List.of("clamping_torque_Nm<1e9", "clamping_torque_Nm!=5")) {
            assertThat(Files.readAllLines(export(RecordsFormat.CSV, selection(condition, OutcomeColumn.JOINT))))
                    .hasSize(1 + 240 - 22);
        }
    }

    @Test
    void duckDbReadsTheParquetBackAndEveryCountMatches() throws IOException, SQLException {
        Path file = export(RecordsFormat.PARQUET, RecordSelection.ALL);
        for (OutcomeColumn column : List.of(
                OutcomeColumn.FAMILY,
                OutcomeColumn.STRATEGY,
                OutcomeColumn.END_REASON,
                OutcomeColumn.VERDICT,
                OutcomeColumn.OUTCOME)) {
            Map<String, Long> expected = rows.stream()
                    .collect(Collectors.groupingBy(
                            r -> String.valueOf(FORMAT.value(column, r)), TreeMap::new, Collectors.counting()));
            assertThat(counts(file, column.title())).as(column.title()).isEqualTo(expected);
        }
    }

    @Test
    void duckDbFindsTheSameCellsInTheParquetAsInTheCsv() throws IOException, SQLException {
        String columns = String.join(", ", OutcomesFormat.COLUMNS);
        try (Connection duck = DriverManager.getConnection("jdbc:duckdb:");
                Statement query = duck.createStatement()) {
            String csv = "SELECT " + columns + " FROM read_csv('" + folder.resolve(RunFolder.OUTCOMES) + "')";
            String parquet = "SELECT " + columns + " FROM read_parquet('"
                    + export(RecordsFormat.PARQUET, RecordSelection.ALL) + "')";
            assertThat(number(query, "SELECT count(*) FROM (" + csv + ")")).isEqualTo(240);
            assertThat(number(query, "SELECT count(*) FROM (" + parquet + ")")).isEqualTo(240);
            assertThat(number(query, "SELECT count(*) FROM (" + csv + " EXCEPT ALL " + parquet + ")"))
                    .isZero();
            assertThat(number(query, "SELECT count(*) FROM (" + parquet + ") WHERE clamping_torque_Nm IS NULL"))
                    .isEqualTo(22);
        }
    }

    private static Map<String, Long> counts(Path file, String column) throws SQLException {
        Map<String, Long> counts = new TreeMap<>();
        try (Connection duck = DriverManager.getConnection("jdbc:duckdb:");
                Statement query = duck.createStatement();
                ResultSet found = query.executeQuery(
                        "SELECT " + column + ", count(*) FROM read_parquet('" + file + "') GROUP BY " + column)) {
            while (found.next()) {
                counts.put(found.getString(1), found.getLong(2));
            }
        }
        return counts;
    }

    private static long number(Statement query, String sql) throws SQLException {
        try (ResultSet found = query.executeQuery(sql)) {
            found.next();
            return found.getLong(1);
        }
    }

    @Test
    void theJsonHoldsAgainstTheSchemaOfThePublicSpecification() throws IOException {
        Path file = export(RecordsFormat.JSON, RecordSelection.ALL);
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(RecordsExport.schemaBeside(file)), InputFormat.JSON);
        String text = Files.readString(file);
        assertThat(schema.validate(text, InputFormat.JSON)).isEmpty();
        for (String damage : List.of("IsSimulated", "MeasuredValue", "ResultId", "OverallResultValues")) {
            assertThat(schema.validate(text.replace("\"" + damage + "\"", "\"Other\""), InputFormat.JSON))
                    .as(damage)
                    .isNotEmpty();
        }
        assertThat(schema.validate(text.replace("\"IsSimulated\" : true", "\"IsSimulated\" : false"), InputFormat.JSON))
                .isNotEmpty();
    }

    @Test
    void theJsonSaysWhatTheToolClaimedAndWhatIsTrue() throws IOException {
        JsonNode results = JsonMapper.builder()
                .build()
                .readTree(Files.readString(export(RecordsFormat.JSON, RecordSelection.ALL)));
        assertThat(results.size()).isEqualTo(240);
        for (int i = 0; i < rows.size(); i++) {
            JsonNode meta = results.get(i).path("ResultMetaData");
            JsonNode content = results.get(i).path("ResultContent").get(0);
            assertThat(meta.path("IsSimulated").asBoolean()).isTrue();
            assertThat(meta.path("ResultEvaluation").asInt())
                    .isEqualTo(
                            switch (rows.get(i).verdict()) {
                                case REACHED -> 1;
                                case NOT_REACHED -> 2;
                                case UNSURE -> 3;
                            });
            assertThat(content.has("FailureReason")).isEqualTo(rows.get(i).verdict() != Verdict.REACHED);
            for (JsonNode value : content.path("OverallResultValues").values()) {
                if (value.path("Name").asString().equals("clamping_torque_Nm")) {
                    double torqueNm = rows.get(i).clampingTorqueNm();
                    assertThat(value.path("MeasuredValue").asDouble()).isEqualTo(torqueNm);
                    assertThat(value.path("ResultEvaluation").asInt() == 1)
                            .isEqualTo(torqueNm >= 71.4 && torqueNm <= 96.6);
                }
            }
        }
    }

    /** Unit numbers as OPC 10000-8 lists them for the UNECE codes DD, SEC and NU; memory, the rule is of its annex. */
    @Test
    void unitNumbersAreThoseOfTheUnitCodes() {
        assertThat(JoiningUnit.ANGLE.unitId()).isEqualTo(17476);
        assertThat(JoiningUnit.TIME.unitId()).isEqualTo(5457219);
        assertThat(JoiningUnit.TORQUE.unitId()).isEqualTo(20053);
    }

    @Test
    void aNoteBesideTheFileSaysWhereItComesFrom() throws IOException {
        Path file = export(RecordsFormat.CSV, selection("blows>=20", OutcomeColumn.JOINT));
        JsonNode note = JsonMapper.builder().build().readTree(Files.readString(RecordsExport.noteBeside(file)));
        assertThat(note.path("records").path("sha256").asString()).isEqualTo(FileHash.of(file));
        assertThat(note.path("records").path("rows").asInt()).isEqualTo(120);
        assertThat(note.path("records").path("where").get(0).asString()).isEqualTo("blows>=20");
        assertThat(note.path("run").path("seed").asInt()).isEqualTo(7);
    }

    @Test
    void rowsThatAreNotThoseOfTheRunAreRefused() throws IOException {
        Path outcomes = folder.resolve(RunFolder.OUTCOMES);
        Files.writeString(outcomes, Files.readString(outcomes).replaceFirst("REACHED", "UNSURE"));
        assertThatThrownBy(() -> export(RecordsFormat.CSV, RecordSelection.ALL))
                .isInstanceOf(FolderRefusedException.class)
                .hasMessageContaining("SHA-256");
    }

    @Test
    void aDamagedRowIsNamedByItsLineAndNothingIsWritten() throws IOException {
        Path outcomes = folder.resolve(RunFolder.OUTCOMES);
        Files.writeString(outcomes, Files.readString(outcomes).replaceFirst("plain,3,", "plain,three,"));
        Files.writeString(folder.resolve(RunFolder.PROVENANCE), "{\"seed\": 7}");
        for (RecordsFormat form : RecordsFormat.values()) {
            assertThatThrownBy(() -> export(form, RecordSelection.ALL))
                    .isInstanceOf(FolderRefusedException.class)
                    .hasMessageContaining("line 8");
        }
        assertThat(temporary).isDirectoryNotContaining("glob:**records.*");
    }

    @Test
    void aConditionWithoutMeaningSaysWhatIsAllowed() {
        Map<String, String> wrong = Map.of(
                "family", "COLUMN=VALUE",
                "colour=red", "clamp_force_N",
                "family=lock nut", "nut, \"locked\"",
                "verdict<REACHED", "= or !=",
                "blows=many", "plain number",
                "blows<NaN", "finite");
        wrong.forEach((text, remedy) -> assertThatThrownBy(() -> Condition.parse(text, FORMAT))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(remedy));
    }
}
