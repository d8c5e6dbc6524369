package org.shutoffbench.validation;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Published values of one topic, read from {@code reference/<topic>/<name>.csv} on the class path.
 *
 * <p>Lines that begin with # are the header: {@code source}, {@code date}, {@code tolerance} and {@code reason} must be
 * there, {@code topic} titles the table. Then a line of column names and rows. Columns {@code what}, {@code value} and
 * {@code unit} are required; {@code tolerance} and {@code source} may differ by row; the others are inputs.
 */
public final class ReferenceFile {

    private static final List<String> HEADER = List.of("topic", "source", "date", "tolerance", "reason");

    private final Map<String, String> header = new LinkedHashMap<>();
    private final List<ReferenceRow> rows = new ArrayList<>();

    private ReferenceFile() {}

    /** Reads a file such as {@code threads/stress-area.csv}. */
    public static ReferenceFile read(String path) {
        ReferenceFile file = new ReferenceFile();
        List<String> columns = List.of();
        for (String line : lines(path)) {
            if (line.startsWith("#")) {
                int colon = line.indexOf(':');
                file.header.put(
                        line.substring(1, colon).strip(),
                        line.substring(colon + 1).strip());
            } else if (columns.isEmpty()) {
                columns = List.of(line.split(",", -1));
            } else if (!line.isBlank()) {
                file.rows.add(row(path, columns, line.split(",", -1)));
            }
        }
        if (!file.header.keySet().containsAll(HEADER) || file.rows.isEmpty()) {
            throw new IllegalArgumentException(path + " needs header lines " + HEADER + " and rows");
        }
        return file;
    }

    public List<ReferenceRow> rows() {
        return List.copyOf(rows);
    }

    /** The rows whose text in a column is the given one. */
    public List<ReferenceRow> rows(String column, String text) {
        return rows.stream().filter(r -> r.text(column).equals(text)).toList();
    }

    /** One check per row, with our value computed from the row's inputs. */
    public List<Check> checks(ToDoubleFunction<ReferenceRow> ours) {
        return rows.stream().map(row -> check(row, ours.applyAsDouble(row))).toList();
    }

    private Check check(ReferenceRow row, double ours) {
        String printed = row.text("value");
        String tolerance = row.has("tolerance") ? row.text("tolerance") : headerOf("tolerance");
        String source = row.has("source") ? row.text("source") : headerOf("source");
        return new Check(
                headerOf("topic"),
                row.text("what"),
                row.text("unit"),
                printed,
                ours,
                Tolerance.parse(tolerance, printed),
                source);
    }

    private String headerOf(String key) {
        return header.getOrDefault(key, "");
    }

    private static ReferenceRow row(String path, List<String> columns, String[] cells) {
        if (cells.length != columns.size()) {
            throw new IllegalArgumentException(path + ": a row has " + cells.length + " cells for " + columns);
        }
        Map<String, String> byColumn = new LinkedHashMap<>();
        for (int i = 0; i < cells.length; i++) {
            byColumn.put(columns.get(i).strip(), cells[i].strip());
        }
        return new ReferenceRow(byColumn);
    }

    private static List<String> lines(String path) {
        ClassLoader loader = ReferenceFile.class.getClassLoader();
        try (InputStream in = loader.getResourceAsStream("reference/" + path)) {
            if (in == null) {
                throw new IllegalArgumentException("no reference file " + path);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
