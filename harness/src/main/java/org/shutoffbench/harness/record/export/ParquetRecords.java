package org.shutoffbench.harness.record.export;

import blue.strategic.parquet.ParquetWriter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.parquet.schema.LogicalTypeAnnotation;
import org.apache.parquet.schema.MessageType;
import org.apache.parquet.schema.PrimitiveType.PrimitiveTypeName;
import org.apache.parquet.schema.Type;
import org.apache.parquet.schema.Types;
import org.shutoffbench.harness.record.OutcomeColumn;
import org.shutoffbench.harness.record.OutcomesFormat;
import org.shutoffbench.harness.run.TighteningRecord;

/** Records as Parquet. The one class that knows the library; it is loaded only when such a file is asked for. */
final class ParquetRecords implements RecordSink {

    private static final String LOGGING_VERBOSITY = "slf4j.internal.verbosity";

    private final ParquetWriter<TighteningRecord> parquet;

    ParquetRecords(Path file, OutcomesFormat format, List<OutcomeColumn> columns) throws IOException {
        if (System.getProperty(LOGGING_VERBOSITY) == null) {
            // The library's logging facade would complain on the console that nobody listens to it.
            System.setProperty(LOGGING_VERBOSITY, "ERROR");
        }
        MessageType schema = new MessageType(
                "outcomes", columns.stream().map(ParquetRecords::type).toList());
        this.parquet = ParquetWriter.writeFile(schema, file.toFile(), (row, values) -> {
            for (OutcomeColumn column : columns) {
                Object value = format.value(column, row);
                if (value != null) {
                    values.write(column.title(), value);
                }
            }
        });
    }

    private static Type type(OutcomeColumn column) {
        return switch (column.kind()) {
            case TEXT ->
                Types.required(PrimitiveTypeName.BINARY)
                        .as(LogicalTypeAnnotation.stringType())
                        .named(column.title());
            case WHOLE -> Types.required(PrimitiveTypeName.INT32).named(column.title());
            case FORCE, TORQUE_OR_ANGLE, TIME ->
                Types.optional(PrimitiveTypeName.DOUBLE).named(column.title());
        };
    }

    @Override
    public void write(TighteningRecord row) throws IOException {
        parquet.write(row);
    }

    @Override
    public void close() throws IOException {
        parquet.close();
    }
}
