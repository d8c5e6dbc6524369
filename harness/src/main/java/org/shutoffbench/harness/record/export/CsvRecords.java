package org.shutoffbench.harness.record.export;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.shutoffbench.harness.record.OutcomeColumn;
import org.shutoffbench.harness.record.OutcomesFormat;
import org.shutoffbench.harness.run.TighteningRecord;

/** Records as CSV, in the same text as the outcomes file. */
final class CsvRecords implements RecordSink {

    private final OutcomesFormat format;
    private final List<OutcomeColumn> columns;
    private final CsvWriter csv;

    CsvRecords(Path file, OutcomesFormat format, List<OutcomeColumn> columns) throws IOException {
        this.format = format;
        this.columns = columns;
        this.csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(file);
        csv.writeRecord(columns.stream().map(OutcomeColumn::title).toList());
    }

    @Override
    public void write(TighteningRecord row) {
        csv.writeRecord(columns.stream().map(c -> format.text(c, row)).toList());
    }

    @Override
    public void close() throws IOException {
        csv.close();
    }
}
