package org.shutoffbench.harness.population;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.draw.Stream;
import org.shutoffbench.harness.scenario.Level;
import org.shutoffbench.sensor.Quantity;
import org.shutoffbench.sensor.SensorErrors;
import org.shutoffbench.sensor.SensorSuite;

/** Draws gain and offset of the sensors of one tool. */
final class SensorErrorDraw {

    private final SensorSuite suite;
    private final Map<Quantity, ScatterSource> gains = new EnumMap<>(Quantity.class);
    private final Map<Quantity, ScatterSource> offsets = new EnumMap<>(Quantity.class);

    SensorErrorDraw(SensorSuite suite) {
        this.suite = suite;
        suite.channels().forEach((quantity, sensor) -> {
            if (sensor.gainError() > 0) {
                gains.put(quantity, source(quantity.title() + " gain"));
            }
            if (sensor.offsetError() > 0) {
                offsets.put(quantity, source(quantity.title() + " offset"));
            }
        });
    }

    private static ScatterSource source(String name) {
        return ScatterSource.of(ScatterSource.Group.SENSORS, name, Stream.TOOL, Level.TOOL);
    }

    List<ScatterSource> sources() {
        List<ScatterSource> sources = new ArrayList<>(gains.values());
        sources.addAll(offsets.values());
        return sources;
    }

    /** The errors; what was drawn is added to the values. */
    SensorErrors draw(DrawSource draws, Map<String, Double> values) {
        SensorErrors errors = SensorErrors.of(suite, new SensorErrors.Uniforms() {
            @Override
            public double gain(Quantity quantity) {
                return uniform(gains.get(quantity));
            }

            @Override
            public double offset(Quantity quantity) {
                return uniform(offsets.get(quantity));
            }

            private double uniform(@Nullable ScatterSource source) {
                return source == null ? 0.5 : draws.uniform(source);
            }
        });
        gains.forEach((quantity, source) -> values.put(source.name(), errors.gain(quantity)));
        offsets.forEach((quantity, source) -> values.put(source.name(), errors.offset(quantity)));
        return errors;
    }
}
