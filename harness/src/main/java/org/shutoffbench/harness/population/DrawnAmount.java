package org.shutoffbench.harness.population;

import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;
import org.shutoffbench.draw.Stream;
import org.shutoffbench.harness.scenario.Amount;
import org.shutoffbench.harness.scenario.Level;

/** A number of a scenario together with the sources that it is drawn from. */
final class DrawnAmount {

    private final Amount amount;
    private final Map<Level, ScatterSource> sources = new EnumMap<>(Level.class);

    DrawnAmount(ScatterSource.Group group, String name, Amount amount) {
        this.amount = amount;
        for (Level level : amount.levels()) {
            sources.put(level, ScatterSource.of(group, name, stream(group, level), level));
        }
    }

    private static Stream stream(ScatterSource.Group group, Level level) {
        return switch (level) {
            case LOT -> Stream.LOT;
            case PIECE -> Stream.PIECE;
            case REPEAT -> group == ScatterSource.Group.OPERATOR ? Stream.OPERATOR : Stream.REPEAT;
            case TOOL -> Stream.TOOL;
        };
    }

    Collection<ScatterSource> sources() {
        return sources.values();
    }

    double value(DrawSource draws) {
        return amount.value(level -> {
            ScatterSource source = sources.get(level);
            return source == null ? 0.5 : draws.uniform(source);
        });
    }
}
