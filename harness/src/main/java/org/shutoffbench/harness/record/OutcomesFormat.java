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
    public static final List<String> COLUMNS = List.of(
            "family",
            "joint",
            "lot",
            "piece",
            "repeat",
            "tool",
            "strategy",
            "settings",
            "end_reason",
            "verdict",
            "outcome",
            "clamp_force_N",
            "clamping_torque_Nm",
            "prevailing_torque_Nm",
            "nut_angle_deg",
            "blows",
            "time_s",
            "run_on_angle_deg");

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
        StrategyName strategy = strategies.get(r.strategy());
        return List.of(
                families.get(r.family()),
                Integer.toString(r.joint()),
                Integer.toString(r.lot()),
                Integer.toString(r.piece()),
                Integer.toString(r.repeat()),
                Integer.toString(r.tool()),
                strategy.name(),
                strategy.settings(),
                r.endReason().title(),
                r.verdict().name(),
                r.outcome().title(),
                decimal(r.clampForceN(), TighteningRecord.FORCE_DIGITS),
                decimal(r.clampingTorqueNm(), TighteningRecord.TORQUE_AND_ANGLE_DIGITS),
                decimal(r.prevailingTorqueNm(), TighteningRecord.TORQUE_AND_ANGLE_DIGITS),
                decimal(r.nutAngleDeg(), TighteningRecord.TORQUE_AND_ANGLE_DIGITS),
                Integer.toString(r.blows()),
                decimal(r.timeS(), TighteningRecord.TIME_DIGITS),
                decimal(r.runOnAngleDeg(), TighteningRecord.TORQUE_AND_ANGLE_DIGITS));
    }

    private static String decimal(double value, int digits) {
        StringBuilder text = new StringBuilder();
        Decimals.append(text, value, digits);
        return text.toString();
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
                number(row.getField(17)));
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
