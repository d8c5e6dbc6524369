package org.shutoffbench.harness.record.export;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.record.FileHash;
import org.shutoffbench.harness.record.FolderRefusedException;
import org.shutoffbench.harness.record.OutcomesFile;
import org.shutoffbench.harness.record.OutcomesFormat;
import org.shutoffbench.harness.record.RunFolder;
import org.shutoffbench.harness.record.TextFile;
import org.shutoffbench.harness.run.OutcomeRule;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * The records of a finished run, written in another form: the file, its schema beside it where the form has one, and a note
 * of where it comes from. Every file is there whole or not at all.
 */
public final class RecordsExport {

    private static final JsonMapper JSON =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private final Path folder;
    private final OutcomesFormat format;
    private final OutcomeRule rule;
    private final JsonNode run;

    private RecordsExport(Path folder, OutcomesFormat format, OutcomeRule rule, JsonNode run) {
        this.folder = folder;
        this.format = format;
        this.rule = rule;
        this.run = run;
    }

    /**
     * Opens a finished run.
     *
     * @param format families and strategies of the run
     * @param rule what was judged
     * @throws FolderRefusedException where the folder holds no finished run, or rows that are not those of the run
     */
    public static RecordsExport open(Path folder, OutcomesFormat format, OutcomeRule rule) throws IOException {
        JsonNode run = provenance(folder.resolve(RunFolder.PROVENANCE));
        String hash = run.path("outcomesSha256").asString("");
        if (!hash.isEmpty() && !hash.equals(FileHash.of(folder.resolve(RunFolder.OUTCOMES)))) {
            throw new FolderRefusedException(
                    folder.resolve(RunFolder.OUTCOMES) + " is not the file that " + RunFolder.PROVENANCE
                            + " describes: its SHA-256 differs; run the scenario again with --overwrite");
        }
        return new RecordsExport(folder, format, rule, run);
    }

    private static JsonNode provenance(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            JsonNode run = JSON.readTree(in);
            if (run.isObject()) {
                return run;
            }
        } catch (JacksonException damaged) {
            throw new FolderRefusedException(file + " is damaged: " + damaged.getOriginalMessage());
        }
        throw new FolderRefusedException(file + " is damaged: it holds no facts of a run");
    }

    /**
     * Writes the records.
     *
     * @param command as typed, for the note
     * @return how many there are
     */
    public long write(Path file, RecordsFormat form, RecordSelection selection, List<String> command)
            throws IOException {
        Path parent = file.toAbsolutePath().getParent();
        if (parent != null) {
            Files.createDirectories(parent);
        }
        Path temporary = file.resolveSibling(file.getFileName() + ".tmp");
        Files.deleteIfExists(temporary);
        AtomicLong rows = new AtomicLong();
        try {
            try (RecordSink sink = sink(temporary, form, selection)) {
                OutcomesFile.read(folder.resolve(RunFolder.OUTCOMES), format, row -> {
                    if (selection.takes(format, row)) {
                        sink.write(row);
                        rows.incrementAndGet();
                    }
                });
            }
            String schema = schema(form, selection);
            if (schema != null) {
                TextFile.write(schemaBeside(file), schema);
            }
            TextFile.write(noteBeside(file), note(temporary, form, selection, rows.get(), command));
            Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        } finally {
            Files.deleteIfExists(temporary);
        }
        return rows.get();
    }

    /** Where the schema of a file lies. */
    public static Path schemaBeside(Path file) {
        return file.resolveSibling(file.getFileName() + ".schema.json");
    }

    /** Where the note of a file's origin lies. */
    public static Path noteBeside(Path file) {
        return file.resolveSibling(file.getFileName() + ".run.json");
    }

    private RecordSink sink(Path file, RecordsFormat form, RecordSelection selection) throws IOException {
        return switch (form) {
            case CSV -> new CsvRecords(file, format, selection.columns());
            case PARQUET -> new ParquetRecords(file, format, selection.columns());
            case JSON -> new JoiningRecords(file, format, selection.columns(), rule, runId());
        };
    }

    private String runId() {
        String hash = run.path("scenarioSha256").asString("");
        return hash.substring(0, Math.min(16, hash.length())) + "/"
                + run.path("seed").asString("");
    }

    private @Nullable String schema(RecordsFormat form, RecordSelection selection) throws IOException {
        return switch (form) {
            case CSV -> TableSchema.text(format, selection.columns());
            case PARQUET -> null;
            case JSON -> joiningSchema();
        };
    }

    /** The schema of the JSON form. */
    static String joiningSchema() throws IOException {
        try (InputStream schema = RecordsExport.class.getResourceAsStream("joining-result.schema.json")) {
            if (schema == null) {
                throw new IllegalStateException("the schema of joining results is missing from the jar");
            }
            return new String(schema.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private String note(Path file, RecordsFormat form, RecordSelection selection, long rows, List<String> command)
            throws IOException {
        Map<String, Object> records = new LinkedHashMap<>();
        records.put("command", command);
        records.put("format", form.title());
        records.put("columns", selection.columns().stream().map(c -> c.title()).toList());
        records.put("where", selection.where().stream().map(Condition::toString).toList());
        records.put("rows", rows);
        records.put("sha256", FileHash.of(file));
        Map<String, Object> note = new LinkedHashMap<>();
        note.put("records", records);
        note.put("run", run);
        return JSON.writeValueAsString(note) + "\n";
    }
}
