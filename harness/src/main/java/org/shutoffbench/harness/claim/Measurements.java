package org.shutoffbench.harness.claim;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.scenario.file.NearestKey;
import org.shutoffbench.harness.scenario.file.Place;
import org.shutoffbench.harness.scenario.file.Problems;
import org.shutoffbench.harness.scenario.unit.Quantity;

/**
 * Measured joints from a file of comma-separated values, as the claim says it is laid out. Whatever is missing, double or in
 * another unit is refused with its row.
 *
 * @param joints in the order of their first reading
 */
record Measurements(List<MeasuredJoint> joints) {

    private static final int MOST_PROBLEMS = 20;

    /** Times the target from which a value is a slip of the pen or of the unit. */
    private static final int FAR_OFF = 100;

    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]*\\.?[0-9]+([eE][+-]?[0-9]{1,3})?");

    /**
     * One joint.
     *
     * @param readings in SI, at least one
     * @param calledDone yes where the file does not say
     */
    record MeasuredJoint(
            String name, @Nullable String lot, @Nullable String family, boolean calledDone, List<Double> readings) {

        double mean() {
            return readings.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        }
    }

    /**
     * Reads a file.
     *
     * @throws IOException if it cannot be read
     * @throws org.shutoffbench.harness.scenario.file.ScenarioException with every row that cannot be used
     */
    static Measurements read(Path file, Claim claim, Claim.MeasuredColumns columns) throws IOException {
        return new Reader(file.toString(), claim, columns).read(file);
    }

    private static final class Reader {
        private final String file;
        private final Claim claim;
        private final Claim.MeasuredColumns columns;
        private final double unit;
        private final Problems problems = new Problems();
        private final Map<String, Integer> places = new HashMap<>();
        private final Map<String, MeasuredJoint> joints = new LinkedHashMap<>();
        private final Map<String, Integer> rowOf = new HashMap<>();
        private int fields;

        Reader(String file, Claim claim, Claim.MeasuredColumns columns) {
            this.file = file;
            this.claim = claim;
            this.columns = columns;
            this.unit = Quantity.parse("1 " + columns.unit(), claim.quantity().dimension())
                    .si();
        }

        Measurements read(Path path) throws IOException {
            try (CsvReader<CsvRecord> csv = CsvReader.builder()
                    .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                    .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                    .ofCsvRecord(Files.newBufferedReader(path))) {
                boolean header = true;
                for (CsvRecord row : csv) {
                    if (header) {
                        header(row);
                        problems.throwIfAny();
                        header = false;
                        fields = row.getFieldCount();
                    } else if (row.getFieldCount() != fields) {
                        uneven(row);
                    } else if (problems.count() < MOST_PROBLEMS) {
                        row(row);
                    }
                }
                if (header) {
                    problem(0, "", "is empty", "a line with the names of the columns comes first");
                }
            } catch (CsvParseException damaged) {
                if (!(damaged.getCause() instanceof CharacterCodingException)) {
                    problem(
                            0,
                            "",
                            "is no table of comma-separated values: " + damaged.getMessage(),
                            "give every row a field for every column, and quote fields that hold commas");
                }
                notText(damaged.getCause());
            } catch (UncheckedIOException damaged) {
                notText(damaged.getCause());
            }
            problems.throwIfAny();
            if (joints.isEmpty()) {
                problem(0, "", "holds no measurement", "give one row per reading");
                problems.throwIfAny();
            }
            return new Measurements(List.copyOf(joints.values()));
        }

        private void notText(@Nullable Throwable cause) throws IOException {
            if (cause instanceof CharacterCodingException) {
                problem(0, "", "is not text in UTF-8", "save it as comma-separated values in UTF-8");
            } else if (cause instanceof IOException unreadable) {
                throw unreadable;
            }
        }

        private void uneven(CsvRecord row) {
            if (problems.count() < MOST_PROBLEMS) {
                problem(
                        (int) row.getStartingLineNumber(),
                        "",
                        "has " + row.getFieldCount() + " fields, the header " + fields,
                        "give every row a field for every column, write decimals with a point, and quote fields that hold"
                                + " commas");
            }
        }

        private void header(CsvRecord row) {
            List<String> names = row.getFields().stream()
                    .map(name -> name.replace("\ufeff", "").strip())
                    .toList();
            for (int i = 0; i < names.size(); i++) {
                Integer before = places.put(names.get(i), i);
                if (before != null) {
                    problem(1, names.get(i), "stands twice in the header", "give every column a name of its own");
                }
            }
            String separator = names.size() > 1
                    ? null
                    : names.get(0).contains(";") ? "semicolons" : names.get(0).contains("\t") ? "tabs" : null;
            if (separator != null) {
                problem(1, "", "separates columns by " + separator, "save the file as comma-separated values");
                return;
            }
            for (String wanted : columns.named()) {
                if (!places.containsKey(wanted)) {
                    problem(
                            1,
                            wanted,
                            "is no column of this file, though the claim's \"measured\" names it",
                            NearestKey.remedy(wanted, names));
                }
            }
        }

        private void row(CsvRecord row) {
            int line = (int) row.getStartingLineNumber();
            String joint = field(row, columns.joint());
            Double value = value(line, field(row, columns.value()));
            Boolean done = calledDone(line, row);
            String lot = optional(line, row, columns.lot());
            String family = optional(line, row, columns.family());
            String reading = optional(line, row, columns.reading());
            if (joint.isEmpty()) {
                problem(line, columns.joint(), "is missing", "every reading says which joint it is of");
                return;
            }
            List<String> families = claim.population().families();
            if (family != null && !claim.population().anyFamily() && !families.contains(family)) {
                problem(
                        line,
                        String.valueOf(columns.family()),
                        "found \"" + family + "\", of which the claim does not speak",
                        NearestKey.remedy(family, families));
                return;
            }
            if (value == null || done == null) {
                return;
            }
            Integer before = rowOf.putIfAbsent(joint + "\n" + (reading == null ? "" : reading), line);
            if (before != null) {
                problem(
                        line,
                        columns.joint(),
                        "found \"" + joint + "\"" + (reading == null ? "" : ", reading \"" + reading + "\"")
                                + " again, first in row " + before,
                        columns.reading() == null
                                ? "give each joint once, or name a column that numbers its readings (measured.reading)"
                                : "give each reading of a joint once");
                return;
            }
            add(line, new MeasuredJoint(joint, lot, family, done, List.of(value)));
        }

        private void add(int line, MeasuredJoint found) {
            MeasuredJoint known = joints.get(found.name());
            if (known == null) {
                joints.put(found.name(), found);
                return;
            }
            if (!java.util.Objects.equals(known.lot(), found.lot())
                    || !java.util.Objects.equals(known.family(), found.family())
                    || known.calledDone() != found.calledDone()) {
                problem(
                        line,
                        columns.joint(),
                        "joint \"" + found.name() + "\" has another lot, family or verdict than in an earlier row",
                        "a joint belongs to one lot and one family");
                return;
            }
            List<Double> readings = new ArrayList<>(known.readings());
            readings.addAll(found.readings());
            joints.put(
                    found.name(),
                    new MeasuredJoint(
                            found.name(), found.lot(), found.family(), found.calledDone(), List.copyOf(readings)));
        }

        private @Nullable Double value(int line, String text) {
            if (text.isEmpty()) {
                problem(line, columns.value(), "is missing", "leave the row out, and say in the report that you did");
                return null;
            }
            if (!NUMBER.matcher(text).matches()) {
                problem(
                        line,
                        columns.value(),
                        "found \"" + text + "\"",
                        "a plain number in " + columns.unit()
                                + " belongs here, with a point for decimals, as for the whole column; a file must not mix"
                                + " units");
                return null;
            }
            double si = new BigDecimal(text).doubleValue() * unit;
            if (si > FAR_OFF * claim.target()) {
                problem(
                        line,
                        columns.value(),
                        "found \"" + text + "\", more than " + FAR_OFF + " times the target",
                        "check the value and its unit, " + columns.unit());
                return null;
            }
            if (si < 0) {
                problem(line, columns.value(), "found \"" + text + "\"", "a value of 0 or more belongs here");
                return null;
            }
            return si;
        }

        private @Nullable Boolean calledDone(int line, CsvRecord row) {
            if (columns.calledDone() == null) {
                return true;
            }
            String text = field(row, columns.calledDone());
            if (text.equals("yes") || text.equals("no")) {
                return text.equals("yes");
            }
            problem(line, columns.calledDone(), "found \"" + text + "\"", "yes or no belongs here");
            return null;
        }

        private @Nullable String optional(int line, CsvRecord row, @Nullable String column) {
            if (column == null) {
                return null;
            }
            String text = field(row, column);
            if (text.isEmpty()) {
                problem(
                        line,
                        column,
                        "is missing",
                        "the claim's \"measured\" names this column, so every row fills it");
            }
            return text;
        }

        private String field(CsvRecord row, String column) {
            String text = row.getField(places.getOrDefault(column, 0));
            if (text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0) {
                problem(
                        (int) row.getStartingLineNumber(),
                        column,
                        "goes on over more than one line",
                        "close the quotes that open in this row");
            }
            return text.strip();
        }

        private void problem(int line, String column, String found, String remedy) {
            problems.add(line == 0 ? Place.whole(file) : new Place(file, line), column, found, remedy);
        }
    }
}
