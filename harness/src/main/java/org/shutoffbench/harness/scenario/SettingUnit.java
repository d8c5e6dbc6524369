package org.shutoffbench.harness.scenario;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.harness.scenario.unit.Quantity;

/**
 * The unit of a strategy's setting: files may give any unit of the same kind, the strategy gets its own.
 *
 * @param written as the strategy declares it, "1" for a pure number
 * @param dimension null for a unit that only the strategy knows
 */
record SettingUnit(String written, @Nullable Dimension dimension) {

    static SettingUnit of(Setting setting) {
        String unit = setting.unit();
        Dimension dimension = unit.equals("1")
                ? Dimension.PURE
                : Arrays.stream(Dimension.values())
                        .filter(candidate -> candidate.units().contains(unit))
                        .findFirst()
                        .orElse(null);
        return new SettingUnit(unit, dimension);
    }

    /**
     * A value in the strategy's unit.
     *
     * @throws IllegalArgumentException with a message for people
     */
    double parse(String text) {
        String number = text.endsWith(written) ? text.substring(0, text.length() - written.length()) : text;
        boolean isOwnUnit = !number.equals(text) && !Character.isLetter(lastOf(number)); // "5 ms" does not end in "s"
        if (!written.equals("1") && isOwnUnit) {
            return Quantity.parse(number, Dimension.PURE).si();
        }
        if (dimension == null) {
            throw new IllegalArgumentException("write a number and the unit " + written);
        }
        return fromSi(Quantity.parse(text, dimension).si());
    }

    private static char lastOf(String text) {
        return text.isEmpty() ? ' ' : text.charAt(text.length() - 1);
    }

    /** Text that parses to exactly the same value. */
    String write(double value) {
        String number = Quantity.ofSi(value, Dimension.PURE).text();
        return written.equals("1") ? number : number + " " + written;
    }

    double fromSi(double si) {
        return si / siOfOne();
    }

    double siOfOne() {
        return dimension == null || dimension.isPure()
                ? 1
                : Quantity.parse("1 " + written, dimension).si();
    }
}
