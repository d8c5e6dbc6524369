package org.shutoffbench.validation;

/**
 * How far our value may lie from a published one.
 *
 * @param text as written in the reference file: {@code 0.4 %}, {@code 0.05 absolute} or {@code last digit}
 * @param relative share of the published value
 * @param absolute in the unit of the value
 */
public record Tolerance(String text, double relative, double absolute) {

    /** Reads a tolerance; {@code last digit} is half a unit of the last digit printed. */
    public static Tolerance parse(String text, String printedValue) {
        if (text.equals("last digit")) {
            return new Tolerance(text, 0, 0.5000001 * lastDigit(printedValue));
        }
        int space = text.indexOf(' ');
        double number = Double.parseDouble(text.substring(0, space));
        return switch (text.substring(space + 1)) {
            case "%" -> new Tolerance(text, number / 100, 0);
            case "absolute" -> new Tolerance(text, 0, number);
            default -> throw new IllegalArgumentException("no tolerance: " + text);
        };
    }

    private static double lastDigit(String printed) {
        return new java.math.BigDecimal(printed).ulp().doubleValue();
    }

    boolean holds(double published, double ours) {
        return Math.abs(ours - published) <= Math.max(absolute, relative * Math.abs(published));
    }
}
