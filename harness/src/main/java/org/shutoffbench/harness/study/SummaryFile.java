package org.shutoffbench.harness.study;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.shutoffbench.harness.record.TextFile;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * A summary as a file: {@code summary.json}.
 *
 * <p>Fields stand in the order in which the records declare them, numbers in their shortest form, lines end in a line
 * feed; nothing of time or host goes in. An equal summary gives equal bytes on every machine.
 */
public final class SummaryFile {

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
                    .build())
            .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .enable(MapperFeature.SORT_CREATOR_PROPERTIES_FIRST)
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .build();

    private SummaryFile() {}

    /** The text of a summary, ending in a line feed. */
    public static String text(StudySummary summary) {
        return MAPPER.writer().with(printer()).writeValueAsString(summary) + "\n";
    }

    private static DefaultPrettyPrinter printer() {
        DefaultIndenter lines = new DefaultIndenter(" ", "\n");
        return new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
    }

    /**
     * Writes a summary, whole or not at all.
     *
     * @throws IOException if the file cannot be written
     */
    public static void write(StudySummary summary, Path file) throws IOException {
        TextFile.write(file, text(summary));
    }

    /**
     * Reads a summary back.
     *
     * @throws IOException if the file cannot be read
     * @throws tools.jackson.core.JacksonException if it is not a summary
     * @throws IllegalArgumentException if it was written in another format
     */
    public static StudySummary read(Path file) throws IOException {
        return parse(Files.readString(file));
    }

    /** The summary that a text holds. */
    public static StudySummary parse(String text) {
        int format = MAPPER.readTree(text).path("format").asInt(-1);
        if (format != StudySummary.FORMAT) {
            throw new IllegalArgumentException(
                    "this is summary format " + format + "; this program reads format " + StudySummary.FORMAT);
        }
        return MAPPER.readValue(text, StudySummary.class);
    }
}
