package org.shutoffbench.harness.report.joint;

import java.util.Locale;

/**
 * One line of the sheet.
 *
 * @param name in words; unique on the sheet
 * @param symbol as in docs/physics.md; empty for none
 * @param measure kind of number
 * @param si value in SI base units
 * @param source key into docs/references.md, or what the number rests on
 */
record Fact(String name, String symbol, Measure measure, double si, String source) {

    double value(UnitSystem system) {
        return measure.in(system, si);
    }

    /** Four significant digits, without an exponent. */
    String printed(UnitSystem system) {
        double value = value(system);
        if (value == 0) {
            return "0";
        }
        int digits = 3 - (int) Math.floor(Math.log10(Math.abs(value)));
        return String.format(Locale.ROOT, "%." + Math.max(0, Math.min(9, digits)) + "f", value);
    }
}
