package org.shutoffbench.harness.scenario;

import java.util.Arrays;
import java.util.List;
import org.shutoffbench.harness.scenario.unit.Dimension;

/** The quantity by which a joint is judged. */
@SuppressWarnings("ImmutableEnumChecker") // a Range is a record of records
public enum JudgedQuantity {
    /** T_F = kappa_on F: running and prevailing torque not counted. */
    CLAMPING_TORQUE("clamping torque", Dimension.TORQUE, "0.01 N*m", "100 kN*m"),
    CLAMP_FORCE("clamp force", Dimension.FORCE, "1 N", "100 MN");

    private final String title;
    private final Dimension dimension;
    private final Range targetRange;

    JudgedQuantity(String title, Dimension dimension, String least, String most) {
        this.title = title;
        this.dimension = dimension;
        this.targetRange = Range.of(dimension, least, most);
    }

    /** As written in scenario files. */
    public String title() {
        return title;
    }

    public Dimension dimension() {
        return dimension;
    }

    Range targetRange() {
        return targetRange;
    }

    /** All titles. */
    public static List<String> titles() {
        return Arrays.stream(values()).map(JudgedQuantity::title).toList();
    }

    /** The quantity of a title.
     *
     * @throws java.util.NoSuchElementException where there is none
     */
    public static JudgedQuantity of(String title) {
        return Arrays.stream(values())
                .filter(quantity -> quantity.title.equals(title))
                .findFirst()
                .orElseThrow();
    }
}
