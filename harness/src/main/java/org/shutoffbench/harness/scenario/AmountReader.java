package org.shutoffbench.harness.scenario;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.scenario.file.Problems;
import org.shutoffbench.harness.scenario.file.Section;
import org.shutoffbench.harness.scenario.file.Tree;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.harness.scenario.unit.Quantity;

/**
 * Reads one number of a scenario, fixed or distributed. What is wrong is told once and the reading goes on with null.
 */
final class AmountReader {

    private static final List<String> SHAPES = List.of("normal", "lognormal", "uniform");

    private final Dimension dimension;
    private final Range range;
    private final List<Level> levels;
    private final Problems problems;

    /** The first level is the default. */
    AmountReader(Dimension dimension, Range range, List<Level> levels, Problems problems) {
        this.dimension = dimension;
        this.range = range;
        this.levels = levels;
        this.problems = problems;
    }

    /** The number at a key of a section; null where it is not given or wrong. */
    @Nullable
    Amount read(Section section, String key) {
        Tree value = section.take(key);
        return value == null ? null : read(value, section.path(key));
    }

    /** The same where scatter makes no sense. */
    @Nullable
    Quantity readFixed(Section section, String key) {
        Amount amount = read(section, key);
        if (amount instanceof Amount.Fixed fixed) {
            return fixed.quantity();
        }
        if (amount != null) {
            section.problem(key, "one number belongs here, without scatter");
        }
        return null;
    }

    @Nullable
    Amount read(Tree value, String path) {
        if (value instanceof Tree.Text text) {
            Quantity quantity = quantity(text, path, dimension);
            return quantity == null ? null : inRange(new Amount.Fixed(quantity), value, path);
        }
        if (value instanceof Tree.Branch branch) {
            Section section = new Section(branch, path, problems);
            List<String> given = SHAPES.stream().filter(branch::has).toList();
            if (given.size() == 1) {
                Amount shape = shape(section, given.get(0));
                section.finish();
                return shape == null ? null : inRange(shape, value, path);
            }
        }
        problems.add(
                value.place(),
                path,
                "found " + value.shown(),
                "give " + dimension.title() + ", or one of {normal: ..., cv: ...}, {lognormal: ..., cv: ...},"
                        + " {uniform: [..., ...]}");
        return null;
    }

    private @Nullable Amount shape(Section section, String name) {
        Tree value = section.take(name);
        if (name.equals("uniform")) {
            return uniform(section, value);
        }
        Quantity middle = value == null ? null : quantity(value, section.path(name), dimension);
        Spread spread = spread(section, name);
        if (middle == null || spread == null) {
            return null;
        }
        if (name.equals("normal")) {
            return new Amount.Normal(middle, spread);
        }
        if (!(middle.si() > 0)) {
            section.problem(name, "a lognormal number has a median above 0");
            return null;
        }
        return new Amount.Lognormal(middle, spread);
    }

    private @Nullable Amount uniform(Section section, @Nullable Tree value) {
        Level level = level(section);
        if (!(value instanceof Tree.Sequence ends) || ends.items().size() != 2) {
            section.problem("uniform", "two ends belong here: [least, greatest]");
            return null;
        }
        Quantity low = quantity(ends.items().get(0), section.path("uniform[0]"), dimension);
        Quantity high = quantity(ends.items().get(1), section.path("uniform[1]"), dimension);
        if (low == null || high == null) {
            return null;
        }
        if (!(low.si() < high.si())) {
            section.problems()
                    .add(
                            value.place(),
                            section.path("uniform"),
                            "runs from " + low + " to " + high,
                            "the first end is the lower one");
            return null;
        }
        return new Amount.Uniform(low, high, level);
    }

    /** One of cv, sigma, sd at one level, or coefficients of variation by level. */
    private @Nullable Spread spread(Section section, String shape) {
        Map<Level, Quantity> byLevel = new EnumMap<>(Level.class);
        for (Level level : levels) {
            Tree size = section.take(level.title());
            if (size != null) {
                put(byLevel, level, fraction(section, level.title(), size));
            }
        }
        List<Spread.Measure> given = new ArrayList<>();
        for (Spread.Measure measure : measures(shape)) {
            if (section.has(measure.title())) {
                given.add(measure);
            }
        }
        if (given.size() + (byLevel.isEmpty() ? 0 : 1) != 1) {
            boolean broken = levels.stream().anyMatch(level -> section.has(level.title())) && given.isEmpty();
            if (!broken) {
                section.problems()
                        .add(
                                section.place(),
                                section.path(),
                                given.isEmpty() ? "its scatter is missing" : "its scatter is told twice",
                                "give one of " + ways(shape));
            }
            return null;
        }
        if (given.isEmpty()) {
            return new Spread(Spread.Measure.CV, byLevel);
        }
        Spread.Measure measure = given.get(0);
        Tree size = section.take(measure.title());
        if (size != null) {
            put(
                    byLevel,
                    level(section),
                    measure == Spread.Measure.SD
                            ? positive(section, measure.title(), size)
                            : fraction(section, measure.title(), size));
        }
        return byLevel.isEmpty() ? null : new Spread(measure, byLevel);
    }

    private static void put(Map<Level, Quantity> sizes, Level level, @Nullable Quantity size) {
        if (size != null) {
            sizes.put(level, size);
        }
    }

    private static List<Spread.Measure> measures(String shape) {
        return shape.equals("normal")
                ? List.of(Spread.Measure.CV, Spread.Measure.SD)
                : List.of(Spread.Measure.CV, Spread.Measure.SIGMA);
    }

    private String ways(String shape) {
        List<String> ways = new ArrayList<>();
        measures(shape).forEach(measure -> ways.add(measure.title()));
        levels.forEach(level -> ways.add(level.title()));
        return String.join(", ", ways);
    }

    private Level level(Section section) {
        List<String> titles = levels.stream().map(Level::title).toList();
        String chosen = section.choice("per", titles, titles.get(0));
        return levels.get(titles.indexOf(chosen));
    }

    private @Nullable Quantity fraction(Section section, String key, Tree size) {
        Quantity quantity = quantity(size, section.path(key), Dimension.PURE);
        if (quantity != null && !(quantity.si() > 0 && quantity.si() <= 1)) {
            section.problem(key, size, "a scatter lies above 0 % and not above 100 %, for example 8 %");
            return null;
        }
        return quantity;
    }

    private @Nullable Quantity positive(Section section, String key, Tree size) {
        Quantity quantity = quantity(size, section.path(key), dimension);
        if (quantity != null && !(quantity.si() > 0)) {
            section.problem(key, size, "a standard deviation is positive");
            return null;
        }
        return quantity;
    }

    private @Nullable Quantity quantity(Tree value, String path, Dimension of) {
        if (!(value instanceof Tree.Text text)) {
            problems.add(value.place(), path, "found " + value.shown(), "give " + of.title());
            return null;
        }
        try {
            return Quantity.parse(text.value(), of);
        } catch (IllegalArgumentException e) {
            problems.add(value.place(), path, "found " + value.shown(), String.valueOf(e.getMessage()));
            return null;
        }
    }

    private @Nullable Amount inRange(Amount amount, Tree value, String path) {
        if (range.holds(amount.lowest()) && range.holds(amount.highest())) {
            return amount;
        }
        if (amount instanceof Amount.Fixed) {
            problems.add(value.place(), path, "found " + value.shown(), "allowed: " + range);
        } else {
            problems.add(
                    value.place(),
                    path,
                    "would draw values outside its range (at 4 sigma)",
                    "allowed: " + range + "; take less scatter, or a lognormal for a number that cannot be negative");
        }
        return null;
    }
}
