package org.shutoffbench.harness.record.export;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shutoffbench.harness.record.OutcomeColumn;
import org.shutoffbench.harness.record.OutcomesFormat;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** The table schema of records as CSV (source: Frictionless-Table-Schema): names, types, constraints, key. */
public final class TableSchema {

    private static final List<OutcomeColumn> KEY =
            List.of(OutcomeColumn.FAMILY, OutcomeColumn.JOINT, OutcomeColumn.STRATEGY, OutcomeColumn.SETTINGS);

    private TableSchema() {}

    /** The schema as JSON text. */
    public static String text(OutcomesFormat format, List<OutcomeColumn> columns) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("fields", columns.stream().map(c -> field(format, c)).toList());
        schema.put("missingValues", List.of(""));
        if (columns.containsAll(KEY)) {
            schema.put("primaryKey", KEY.stream().map(OutcomeColumn::title).toList());
        }
        return JsonMapper.builder()
                        .enable(SerializationFeature.INDENT_OUTPUT)
                        .build()
                        .writeValueAsString(schema)
                + "\n";
    }

    private static Map<String, Object> field(OutcomesFormat format, OutcomeColumn column) {
        Map<String, Object> field = new LinkedHashMap<>();
        field.put("name", column.title());
        field.put("type", type(column));
        field.put("description", column.meaning() + (column.unit().isEmpty() ? "" : ", " + column.unit()));
        Map<String, Object> constraints = new LinkedHashMap<>();
        if (!column.kind().isDecimal()) {
            constraints.put("required", true);
        }
        if (column.isNeverNegative()) {
            constraints.put("minimum", 0);
        }
        if (column.kind() == OutcomeColumn.Kind.TEXT) {
            constraints.put("enum", new ArrayList<>(format.allowed(column)));
        }
        if (!constraints.isEmpty()) {
            field.put("constraints", constraints);
        }
        return field;
    }

    private static String type(OutcomeColumn column) {
        return switch (column.kind()) {
            case TEXT -> "string";
            case WHOLE -> "integer";
            case FORCE, TORQUE_OR_ANGLE, TIME -> "number";
        };
    }
}
