package org.shutoffbench.harness.statistics;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** Rows of a reference file beside the tests; comment lines and the header are skipped. */
final class ReferenceRows {

    private ReferenceRows() {}

    static List<String[]> of(String file) {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(ReferenceRows.class.getResourceAsStream("/reference/statistics/" + file), file),
                StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(",", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static double[] numbers(String[] row, int from) {
        return Arrays.stream(row, from, row.length)
                .filter(cell -> !cell.isEmpty())
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
