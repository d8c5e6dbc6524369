package org.shutoffbench.harness.scenario.unit;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A kind of quantity and the units in which files may give it. The first unit of each is the SI unit that the program
 * counts in.
 *
 * <p>Factors of inch, pound-force and the like are exact by definition (international yard and pound; standard
 * acceleration of free fall 9.80665 m/s^2): NIST SP 811, appendix B.
 */
@SuppressWarnings("ImmutableEnumChecker") // the map is filled here and never changes
public enum Dimension {
    PURE("a plain number or a percentage", "", "1", "%", "0.01"),
    TORQUE(
            "a torque",
            "N*m",
            "1",
            "kN*m",
            "1000",
            "N*mm",
            "0.001",
            "ft*lbf",
            "1.3558179483314004",
            "lbf*ft",
            "1.3558179483314004",
            "in*lbf",
            "0.1129848290276167",
            "lbf*in",
            "0.1129848290276167"),
    FORCE("a force", "N", "1", "kN", "1000", "MN", "1e6", "lbf", "4.4482216152605", "kip", "4448.2216152605"),
    LENGTH("a length", "m", "1", "mm", "0.001", "um", "1e-6", "cm", "0.01", "in", "0.0254"),
    ANGLE("an angle", "rad", "1", "deg", "pi/180", "turns", "2 pi", "turn", "2 pi"),
    STIFFNESS(
            "a stiffness",
            "N/m",
            "1",
            "kN/mm",
            "1e6",
            "N/mm",
            "1000",
            "kN/m",
            "1000",
            "MN/m",
            "1e6",
            "GN/m",
            "1e9",
            "lbf/in",
            "175.12683524647636",
            "kip/in",
            "175126.83524647636",
            "Mlbf/in",
            "175126835.24647636"),
    ANGULAR_STIFFNESS("a torque per angle", "N*m/rad", "1", "N*m/deg", "180/pi", "N*m/turn", "1/(2 pi)"),
    ANGULAR_DAMPING("a torque per turning rate", "N*m*s/rad", "1", "N*m*s", "1"),
    INERTIA("a moment of inertia", "kg*m^2", "1", "kg*cm^2", "1e-4", "kg*mm^2", "1e-6", "g*mm^2", "1e-9"),
    ANGULAR_SPEED("a turning rate", "rad/s", "1", "deg/s", "pi/180", "rpm", "2 pi/60"),
    TIME("a time", "s", "1", "ms", "0.001", "us", "1e-6", "min", "60"),
    FREQUENCY("a frequency", "Hz", "1", "kHz", "1000"),
    PRESSURE(
            "a stress or pressure",
            "Pa",
            "1",
            "MPa",
            "1e6",
            "GPa",
            "1e9",
            "N/mm^2",
            "1e6",
            "psi",
            "6894.757293168361",
            "ksi",
            "6894757.293168361"),
    ACCELERATION("an acceleration", "m/s^2", "1", "g", "9.80665"),
    CURRENT("a current", "A", "1"),
    VOLTAGE("a voltage", "V", "1"),
    TEMPERATURE("a temperature", "degC", "1");

    private final String title;
    private final Map<String, Factor> factors = new LinkedHashMap<>();

    Dimension(String title, String... unitsAndFactors) {
        this.title = title;
        for (int i = 0; i < unitsAndFactors.length; i += 2) {
            factors.put(unitsAndFactors[i], Factor.of(unitsAndFactors[i + 1]));
        }
    }

    /** What it is, with its article, as error messages say it. */
    public String title() {
        return title;
    }

    /** The unit that the program counts in; empty for a plain number. */
    public String siUnit() {
        return units().get(0);
    }

    /** Every unit that files may use, the SI unit first. */
    public List<String> units() {
        return List.copyOf(factors.keySet());
    }

    /** True if a bare number is complete. */
    public boolean isPure() {
        return this == PURE;
    }

    /** The value in SI of so many of a unit, or null where this dimension does not have the unit. */
    @Nullable
    Double toSi(BigDecimal number, String unit) {
        Factor factor = factors.get(unit);
        return factor == null ? null : factor.times(number);
    }

    /** How units read once spaces, dots and a few habits of writing are evened out. */
    static String normalised(String unit) {
        String plain = unit.strip()
                .replace("\u00b7", "*")
                .replace("\u00b0C", "degC")
                .replace("\u00b0", "deg")
                .replace("\u00b5", "u")
                .replace("\u00b2", "^2")
                .replaceAll("\\s*([*/])\\s*", "$1")
                .replaceAll("\\s+", "*");
        return HABITS.getOrDefault(plain, plain);
    }

    private static final Map<String, String> HABITS = Map.ofEntries(
            Map.entry("Nm", "N*m"),
            Map.entry("kNm", "kN*m"),
            Map.entry("Nmm", "N*mm"),
            Map.entry("m*N", "N*m"),
            Map.entry("Nm/rad", "N*m/rad"),
            Map.entry("Nm/deg", "N*m/deg"),
            Map.entry("Nm/turn", "N*m/turn"),
            Map.entry("Nms/rad", "N*m*s/rad"),
            Map.entry("kg*m2", "kg*m^2"),
            Map.entry("kg*mm2", "kg*mm^2"),
            Map.entry("m/s2", "m/s^2"),
            Map.entry("N/mm2", "N/mm^2"),
            Map.entry("percent", "%"));

    /** An exact decimal factor times a count of pi, so that decimal units convert with one rounding. */
    private record Factor(BigDecimal decimal, double irrational) {

        static Factor of(String text) {
            return switch (text) {
                case "pi/180" -> new Factor(BigDecimal.ONE, Math.PI / 180);
                case "2 pi" -> new Factor(BigDecimal.ONE, 2 * Math.PI);
                case "180/pi" -> new Factor(BigDecimal.ONE, 180 / Math.PI);
                case "1/(2 pi)" -> new Factor(BigDecimal.ONE, 1 / (2 * Math.PI));
                case "2 pi/60" -> new Factor(BigDecimal.ONE, 2 * Math.PI / 60);
                default -> new Factor(new BigDecimal(text), 1);
            };
        }

        double times(BigDecimal number) {
            return number.multiply(decimal).doubleValue() * irrational;
        }
    }
}
