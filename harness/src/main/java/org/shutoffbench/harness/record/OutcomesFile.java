package org.shutoffbench.harness.record;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import org.shutoffbench.harness.run.TighteningRecord;

/** The rows of a finished run, read one by one. */
public final class OutcomesFile {

    private OutcomesFile() {}

    /** Takes the rows. */
    @FunctionalInterface
    public interface Rows {
        /** Takes the next row. */
        void accept(TighteningRecord row) throws IOException;
    }

    /**
     * Reads a file from its first row to its last.
     *
     * @throws FolderRefusedException with the line, where a row is not of this format
     */
    public static void read(Path file, OutcomesFormat format, Rows rows) throws IOException {
        try (CsvReader<CsvRecord> csv = CsvReader.builder().ofCsvRecord(file)) {
            boolean header = true;
            for (CsvRecord row : csv) {
                if (header) {
                    requireHeader(file, row);
                    header = false;
                } else {
                    rows.accept(parsed(file, format, row));
                }
            }
            if (header) {
                throw new FolderRefusedException(file + " is empty; run the scenario again with --overwrite");
            }
        } catch (CsvParseException damaged) {
            throw new FolderRefusedException(file + " is no table of comma-separated values: " + damaged.getMessage());
        }
    }

    private static void requireHeader(Path file, CsvRecord row) throws FolderRefusedException {
        if (!row.getFields().equals(OutcomesFormat.COLUMNS)) {
            throw new FolderRefusedException(file + ", line 1: the columns are " + row.getFields() + ", not "
                    + OutcomesFormat.COLUMNS + "; the file is of another version or not of this bench");
        }
    }

    private static TighteningRecord parsed(Path file, OutcomesFormat format, CsvRecord row)
            throws FolderRefusedException {
        try {
            return format.parse(row);
        } catch (IllegalArgumentException | ArithmeticException wrong) {
            throw new FolderRefusedException(file + ", line " + row.getStartingLineNumber() + ": " + wrong.getMessage()
                    + "; the file was changed after the run: run the scenario again with --overwrite");
        }
    }
}
