package org.shutoffbench.harness.record;

import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.run.Decimals;
import org.shutoffbench.harness.run.EndReason;
import org.shutoffbench.harness.run.Outcome;
import org.shutoffbench.harness.run.TighteningRecord;

/**
 * The outcomes file: one row per joint and strategy, comma-separated, UTF-8, a header line, units in the column names. It
 * carries no time and no host.
 */
public final class OutcomesFormat {

    /** Column names in order. */
    public static final List<String> COLUMNS =
            Stream.of(OutcomeColumn.values()).map(OutcomeColumn::title).toList();

    /**
     * How a strategy is named in a row.
     *
     * @param name as in the scenario
     * @param settings {@code home}, {@code all} or {@code given}
     */
    public record StrategyName(String name, String settings) {}

    private final List<String> families;
    private final List<StrategyName> strategies;

    public OutcomesFormat(List<String> families, List<StrategyName> strategies) {
        this.families = List.copyOf(families);
        this.strategies = List.copyOf(strategies);
    }

    /** The header line, with its line end. */
    public String header() {
        return String.join(",", COLUMNS) + "\n";
    }

    /** The rows of one or more joints, with line ends. */
    public String rows(Iterable<TighteningRecord> records) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            for (TighteningRecord r : records) {
                csv.writeRecord(fields(r));
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    private List<String> fields(TighteningRecord r) {
        return Stream.of(OutcomeColumn.values()).map(c -> text(c, r)).toList();
    }

    /** A column of a row as the file writes it; empty where there is no value. */
    public String text(OutcomeColumn column, TighteningRecord r) {
        Object value = value(column, r);
        if (value instanceof Double number) {
            StringBuilder text = new StringBuilder();
            Decimals.append(text, number, column.kind().digits());
            return text.toString();
        }
        return value == null ? "" : value.toString();
    }

    /** A column of a row: a String, an Integer, or a Double; null where there is no value. */
    public @Nullable Object value(OutcomeColumn column, TighteningRecord r) {
        return switch (column) {
            case FAMILY -> families.get(r.family());
            case JOINT -> r.joint();
            case LOT -> r.lot();
            case PIECE -> r.piece();
            case REPEAT -> r.repeat();
            case TOOL -> r.tool();
            case STRATEGY -> strategies.get(r.strategy()).name();
            case SETTINGS -> strategies.get(r.strategy()).settings();
            case END_REASON -> r.endReason().title();
            case VERDICT -> r.verdict().name();
            case OUTCOME -> r.outcome().title();
            case CLAMP_FORCE -> number(r.clampForceN());
            case CLAMPING_TORQUE -> number(r.clampingTorqueNm());
            case PREVAILING_TORQUE -> number(r.prevailingTorqueNm());
            case NUT_ANGLE -> number(r.nutAngleDeg());
            case BLOWS -> r.blows();
            case TIME -> number(r.timeS());
            case RUN_ON_ANGLE -> number(r.runOnAngleDeg());
            case GUARD_STEPS -> r.guardSteps();
        };
    }

    private static @Nullable Double number(double value) {
        return Double.isNaN(value) ? null : value;
    }

    /** What a column of text can hold here; empty for numbers. */
    public List<String> allowed(OutcomeColumn column) {
        return switch (column) {
            case FAMILY -> families;
            case STRATEGY ->
                strategies.stream().map(StrategyName::name).distinct().toList();
            case SETTINGS ->
                strategies.stream().map(StrategyName::settings).distinct().toList();
            case END_REASON ->
                Stream.of(EndReason.values()).map(EndReason::title).toList();
            case VERDICT -> Stream.of(Verdict.values()).map(Verdict::name).toList();
            case OUTCOME -> Stream.of(Outcome.values()).map(Outcome::title).toList();
            default -> List.of();
        };
    }

    /**
     * Reads a row back.
     *
     * @throws IllegalArgumentException where the row was not written by this format for these families and strategies
     */
    public TighteningRecord parse(CsvRecord row) {
        if (row.getFieldCount() != COLUMNS.size()) {
            throw new IllegalArgumentException("line " + row.getStartingLineNumber() + ": " + COLUMNS.size()
                    + " fields expected, " + row.getFieldCount() + " found");
        }
        return new TighteningRecord(
                indexOf(families, row.getField(0), "family"),
                Integer.parseInt(row.getField(1)),
                Integer.parseInt(row.getField(2)),
                Integer.parseInt(row.getField(3)),
                Integer.parseInt(row.getField(4)),
                Integer.parseInt(row.getField(5)),
                indexOf(strategies, new StrategyName(row.getField(6), row.getField(7)), "strategy"),
                named(EndReason.values(), EndReason::title, row.getField(8)),
                Verdict.valueOf(row.getField(9)),
                named(Outcome.values(), Outcome::title, row.getField(10)),
                number(row.getField(11)),
                number(row.getField(12)),
                number(row.getField(13)),
                number(row.getField(14)),
                Integer.parseInt(row.getField(15)),
                number(row.getField(16)),
                number(row.getField(17)),
                Integer.parseInt(row.getField(18)));
    }

    private static double number(String field) {
        return field.isEmpty() ? Double.NaN : Double.parseDouble(field);
    }

    private static <T> int indexOf(List<T> known, T found, String what) {
        int index = known.indexOf(found);
        if (index < 0) {
            throw new IllegalArgumentException("unknown " + what + " " + found);
        }
        return index;
    }

    private static <T> T named(T[] values, Function<T, String> title, String found) {
        return Stream.of(values)
                .filter(v -> title.apply(v).equals(found))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("unknown value \"" + found + "\""));
    }
}
