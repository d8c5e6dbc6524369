package org.shutoffbench.harness.scenario;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.shutoffbench.harness.scenario.unit.Quantity;

/**
 * How far a number scatters, by level.
 *
 * @param measure how the sizes are told
 * @param sizes one or more coefficients of variation, or one size by another measure
 */
public record Spread(Measure measure, Map<Level, Quantity> sizes) {

    /** How the size of a scatter is told. */
    public enum Measure {
        /** Coefficient of variation: standard deviation over mean. */
        CV("cv"),
        /** Standard deviation of the natural logarithm. */
        SIGMA("sigma"),
        /** Standard deviation in the unit of the number itself. */
        SD("sd");

        private final String title;

        Measure(String title) {
            this.title = title;
        }

        /** As written in scenario files. */
        public String title() {
            return title;
        }
    }

    public Spread {
        sizes = Collections.unmodifiableMap(new EnumMap<>(sizes));
    }

    public List<Level> levels() {
        return List.copyOf(sizes.keySet());
    }

    /** Standard deviation of a level's part, before any cut, of a number with a mean. */
    double sd(Level level, double mean) {
        return measure == Measure.SD ? size(level) : size(level) * Math.abs(mean);
    }

    /** Standard deviation of the logarithm of a level's factor, exact for a coefficient of variation. */
    double logSd(Level level) {
        double size = size(level);
        return measure == Measure.CV ? Math.sqrt(StrictMath.log1p(size * size)) : size;
    }

    private double size(Level level) {
        Quantity size = sizes.get(level);
        return size == null ? 0 : size.si();
    }

    /** As a scenario file writes it. */
    String written() {
        return sizes.entrySet().stream()
                .map(entry -> measure == Measure.CV
                        ? entry.getKey().title() + ": " + entry.getValue()
                        : measure.title() + ": " + entry.getValue() + ", per: "
                                + entry.getKey().title())
                .collect(Collectors.joining(", "));
    }
}
