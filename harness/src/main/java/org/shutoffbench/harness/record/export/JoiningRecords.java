package org.shutoffbench.harness.record.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.record.OutcomeColumn;
import org.shutoffbench.harness.record.OutcomesFormat;
import org.shutoffbench.harness.run.EndReason;
import org.shutoffbench.harness.run.OutcomeRule;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.scenario.JudgedQuantity;
import tools.jackson.core.JsonEncoding;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.json.JsonMapper;

/**
 * Records as a JSON list of results with the field names of OPC 40450-1 (Joining Systems) on OPC 40001-101 (Result
 * Transfer). {@code IsSimulated} is true in every one. What the tool claims is the result's evaluation; the truth, which no
 * tool reports, stands in the measured values and the extended metadata.
 */
final class JoiningRecords implements RecordSink {

    private static final int SINGLE_RESULT = 1;
    private static final int COMPLETED = 1;
    private static final int ABORTED = 3;
    private static final int FAILED = 4;
    private static final int REASON_UNDEFINED = 0;
    private static final int REASON_PROGRAM = 1;
    private static final int REASON_ERROR = 3;

    private final OutcomesFormat format;
    private final List<OutcomeColumn> columns;
    private final OutcomeRule rule;
    private final String runId;
    private final JsonMapper mapper = JsonMapper.builder().build();
    private final JsonGenerator json;
    private long written;

    /**
     * @param rule limits and target of the judged quantity
     * @param runId makes a record's number unique over runs
     */
    JoiningRecords(Path file, OutcomesFormat format, List<OutcomeColumn> columns, OutcomeRule rule, String runId) {
        this.format = format;
        this.columns = columns;
        this.rule = rule;
        this.runId = runId;
        this.json = mapper.writerWithDefaultPrettyPrinter().createGenerator(file.toFile(), JsonEncoding.UTF8);
        json.writeStartArray();
    }

    @Override
    public void write(TighteningRecord row) throws IOException {
        Map<String, Object> result = new LinkedHashMap<>();
        result.put("ResultMetaData", metaData(row));
        result.put("ResultContent", List.of(content(row)));
        json.writePOJO(result);
    }

    private Map<String, Object> metaData(TighteningRecord row) {
        written++;
        Map<String, Object> meta = new LinkedHashMap<>();
        meta.put("ResultId", runId + "/" + row.family() + "/" + row.joint() + "/" + row.strategy());
        meta.put("IsPartial", false);
        meta.put("IsSimulated", true);
        meta.put("ResultState", state(row.endReason()));
        meta.put("ResultEvaluation", evaluation(row.verdict()));
        meta.put("JoiningTechnology", words("Tightening"));
        meta.put("SequenceNumber", written);
        meta.put("Classification", SINGLE_RESULT);
        List<Map<String, Object>> more = new ArrayList<>();
        for (OutcomeColumn column : columns) {
            if (unit(column) == null) {
                Object value = format.value(column, row);
                more.add(ordered("Key", column.title(), "Value", value == null ? "" : value));
            }
        }
        if (!more.isEmpty()) {
            meta.put("ExtendedMetaData", more);
        }
        return meta;
    }

    private Map<String, Object> content(TighteningRecord row) {
        Map<String, Object> content = new LinkedHashMap<>();
        if (row.verdict() != Verdict.REACHED) {
            content.put("FailureReason", reason(row.endReason()));
        }
        List<Map<String, Object>> values = new ArrayList<>();
        for (OutcomeColumn column : columns) {
            JoiningUnit unit = unit(column);
            Object value = format.value(column, row);
            if (unit != null && value != null) {
                values.add(measured(column, unit, value));
            }
        }
        content.put("OverallResultValues", values);
        return content;
    }

    private Map<String, Object> measured(OutcomeColumn column, JoiningUnit unit, Object value) {
        Map<String, Object> measured = new LinkedHashMap<>();
        measured.put("MeasuredValue", value);
        measured.put("Name", column.title());
        if (column == judged()) {
            double number = ((Number) value).doubleValue();
            measured.put("ResultEvaluation", rule.low() <= number && number <= rule.high() ? 1 : 2);
            measured.put("LowLimit", rule.low());
            measured.put("HighLimit", rule.high());
            measured.put("TargetValue", rule.target());
        }
        measured.put("PhysicalQuantity", unit.physicalQuantity());
        measured.put("EngineeringUnits", new TreeMap<>(unit.information()));
        return measured;
    }

    private OutcomeColumn judged() {
        return rule.quantity() == JudgedQuantity.CLAMP_FORCE
                ? OutcomeColumn.CLAMP_FORCE
                : OutcomeColumn.CLAMPING_TORQUE;
    }

    private static @Nullable JoiningUnit unit(OutcomeColumn column) {
        return switch (column) {
            case CLAMP_FORCE -> JoiningUnit.FORCE;
            case CLAMPING_TORQUE, PREVAILING_TORQUE -> JoiningUnit.TORQUE;
            case NUT_ANGLE, RUN_ON_ANGLE -> JoiningUnit.ANGLE;
            case TIME -> JoiningUnit.TIME;
            case BLOWS -> JoiningUnit.NUMBER;
            default -> null;
        };
    }

    /** Completed, aborted or failed (source: OPC-40001-101, table 27). */
    private static int state(EndReason reason) {
        return switch (reason) {
            case SHUTOFF -> COMPLETED;
            case TIME_LIMIT -> ABORTED;
            case FRACTURE, BATTERY, FAULT -> FAILED;
        };
    }

    /** OK, not OK, not decidable (source: OPC-40001-101, table 23). */
    private static int evaluation(Verdict verdict) {
        return switch (verdict) {
            case REACHED -> 1;
            case NOT_REACHED -> 2;
            case UNSURE -> 3;
        };
    }

    /** Why a result is not OK (source: OPC-40450-1, section 10.2). */
    private static int reason(EndReason reason) {
        return switch (reason) {
            case SHUTOFF -> REASON_UNDEFINED;
            case TIME_LIMIT -> REASON_PROGRAM;
            case FRACTURE, BATTERY, FAULT -> REASON_ERROR;
        };
    }

    private static Map<String, Object> words(String text) {
        return ordered("Locale", "en", "Text", text);
    }

    private static Map<String, Object> ordered(String first, Object one, String second, Object other) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put(first, one);
        map.put(second, other);
        return map;
    }

    @Override
    public void close() {
        json.writeEndArray();
        json.close();
    }
}
