package org.shutoffbench.harness.record.export;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.shutoffbench.harness.record.OutcomeColumn;
import org.shutoffbench.harness.record.OutcomesFormat;
import org.shutoffbench.harness.run.TighteningRecord;

/**
 * A condition on one column: {@code family=lock nut}, {@code clamping_torque_Nm<71.4}. A missing number meets no condition.
 *
 * @param value as text for columns of text, else as a number
 */
public record Condition(OutcomeColumn column, Comparison comparison, String value) {

    private static final Pattern SHAPE = Pattern.compile("\\s*(\\w+)\\s*(!=|<=|>=|=|<|>)\\s*(.*?)\\s*");

    /** How a value is compared. */
    public enum Comparison {
        EQUAL("="),
        NOT_EQUAL("!="),
        BELOW("<"),
        AT_MOST("<="),
        ABOVE(">"),
        AT_LEAST(">=");

        private final String sign;

        Comparison(String sign) {
            this.sign = sign;
        }

        private boolean holds(int order) {
            return switch (this) {
                case EQUAL -> order == 0;
                case NOT_EQUAL -> order != 0;
                case BELOW -> order < 0;
                case AT_MOST -> order <= 0;
                case ABOVE -> order > 0;
                case AT_LEAST -> order >= 0;
            };
        }

        private static Comparison of(String sign) {
            return Arrays.stream(values())
                    .filter(c -> c.sign.equals(sign))
                    .findFirst()
                    .orElseThrow();
        }
    }

    /**
     * Reads a condition.
     *
     * @param format says which words a column of text can hold
     * @throws IllegalArgumentException where it has no meaning; the message says what is allowed
     */
    public static Condition parse(String text, OutcomesFormat format) {
        Matcher shape = SHAPE.matcher(text);
        if (!shape.matches()) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" is no condition; give COLUMN=VALUE, with = != < <= > or >= between them");
        }
        OutcomeColumn column = column(shape.group(1));
        Comparison comparison = Comparison.of(shape.group(2));
        String value = shape.group(3);
        if (column.kind() == OutcomeColumn.Kind.TEXT) {
            requireWord(text, column, comparison, value, format.allowed(column));
        } else {
            requireNumber(text, column, value);
        }
        return new Condition(column, comparison, value);
    }

    /**
     * The column of a title.
     *
     * @throws IllegalArgumentException where there is none; the message lists them
     */
    public static OutcomeColumn column(String title) {
        return OutcomeColumn.titled(title)
                .orElseThrow(() -> new IllegalArgumentException("\"" + title + "\" is no column; the columns are "
                        + String.join(", ", OutcomesFormat.COLUMNS)));
    }

    private static void requireWord(
            String text, OutcomeColumn column, Comparison comparison, String value, List<String> allowed) {
        if (comparison != Comparison.EQUAL && comparison != Comparison.NOT_EQUAL) {
            throw new IllegalArgumentException(
                    "\"" + text + "\": " + column.title() + " holds words; compare them with = or !=");
        }
        if (!allowed.contains(value)) {
            throw new IllegalArgumentException("\"" + text + "\": " + column.title() + " is one of "
                    + allowed.stream().collect(Collectors.joining(", ")) + ", never \"" + value + "\"");
        }
    }

    private static void requireNumber(String text, OutcomeColumn column, String value) {
        try {
            if (Double.isFinite(Double.parseDouble(value))) {
                return;
            }
        } catch (NumberFormatException notANumber) {
            throw new IllegalArgumentException("\"" + text + "\": " + column.title()
                    + " holds numbers; give a plain number in the unit of the column's name");
        }
        throw new IllegalArgumentException("\"" + text + "\": the number must be finite");
    }

    boolean holds(OutcomesFormat format, TighteningRecord row) {
        Object found = format.value(column, row);
        if (found == null) {
            return false;
        }
        int order = found instanceof Number number
                ? Double.compare(number.doubleValue(), Double.parseDouble(value))
                : found.toString().compareTo(value);
        return comparison.holds(order);
    }

    /** As it is typed. */
    @Override
    public String toString() {
        return column.title() + comparison.sign + value;
    }
}
