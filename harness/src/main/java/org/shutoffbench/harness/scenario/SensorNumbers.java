package org.shutoffbench.harness.scenario;

import java.util.List;
import org.shutoffbench.harness.scenario.file.Section;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.harness.scenario.unit.Quantity;

/** Reads single numbers of a map of the sensors; what is not given keeps its value. */
final class SensorNumbers {

    private static final double NS_PER_S = 1e9;

    private final Section section;

    SensorNumbers(Section section) {
        this.section = section;
    }

    double value(String key, Dimension dimension, Range range, double byDefault) {
        Quantity found =
                new AmountReader(dimension, range, List.of(Level.TOOL), section.problems()).readFixed(section, key);
        return found == null ? byDefault : found.si();
    }

    long nanoseconds(String key, Range range, long byDefault) {
        return Math.round(value(key, Dimension.TIME, range, byDefault / NS_PER_S) * NS_PER_S);
    }
}
