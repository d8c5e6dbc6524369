package org.shutoffbench.harness.scenario.unit;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with its unit, as written and in SI.
 *
 * @param si value in the dimension's SI unit (angles in rad); finite
 * @param text as a person wrote it; parses to exactly the same value
 */
public record Quantity(double si, String text) {

    private static final int LONGEST = 60;
    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("([+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d{1,3})?)\\s*(\\S.*)?");

    /** A value in the SI unit, written so that it parses to the same bits. */
    public static Quantity ofSi(double si, Dimension dimension) {
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException("a quantity must be finite");
        }
        String number = si == Math.rint(si) && Math.abs(si) < 1e15
                ? Long.toString((long) si)
                : Double.toString(si).replace('E', 'e');
        return new Quantity(si + 0.0, dimension.isPure() ? number : number + " " + dimension.siUnit());
    }

    /**
     * Reads a quantity.
     *
     * @throws IllegalArgumentException with a message for people: what is wrong and what would be right
     */
    public static Quantity parse(String text, Dimension dimension) {
        String stripped = text.strip();
        Matcher matcher = NUMBER_AND_UNIT.matcher(stripped);
        if (stripped.length() > LONGEST || !matcher.matches()) {
            throw new IllegalArgumentException("not " + dimension.title() + "; " + examples(dimension));
        }
        String unit = matcher.group(2) == null ? "" : Dimension.normalised(matcher.group(2));
        Double si = dimension.toSi(new BigDecimal(matcher.group(1)), unit);
        if (si == null) {
            throw new IllegalArgumentException((unit.isEmpty()
                            ? "the unit is missing"
                            : "\"" + matcher.group(2).strip() + "\" is not a unit of "
                                    + dimension.title().replaceFirst("^an? ", ""))
                    + "; " + examples(dimension));
        }
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException("the number is too large");
        }
        return new Quantity(si + 0.0, stripped);
    }

    private static String examples(Dimension dimension) {
        return dimension.isPure()
                ? "write a plain number such as 0.12 or a percentage such as 8 %"
                : "write a number and one of the units " + String.join(", ", dimension.units());
    }

    @Override
    public String toString() {
        return text;
    }
}
