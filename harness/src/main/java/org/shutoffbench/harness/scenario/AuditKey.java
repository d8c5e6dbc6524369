package org.shutoffbench.harness.scenario;

import java.util.List;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.harness.scenario.unit.Quantity;

/** Every number of a hand audit that may scatter. Equations and sources: docs/audit.md. */
@SuppressWarnings("ImmutableEnumChecker") // an Amount is a record of records
public enum AuditKey {
    STICTION(
            "stiction",
            Dimension.PURE,
            "0.5",
            "3",
            normal("1.05", "3 %", Dimension.PURE),
            "how much more the rested nut needs to break away than a nut that has just stopped"),
    EMBEDDING(
            "embedding",
            Dimension.LENGTH,
            "0 um",
            "500 um",
            fixed("11 um", Dimension.LENGTH),
            "what the surfaces settle before the audit"),
    RELAXATION(
            "relaxation",
            Dimension.PURE,
            "0 %",
            "20 %",
            fixed("0.5 %", Dimension.PURE),
            "share of the clamp force lost for every tenfold of time after the first minute"),
    DELAY(
            "delay",
            Dimension.TIME,
            "0 s",
            "100000 min",
            fixed("60 min", Dimension.TIME),
            "time from tightening to audit"),
    OVERSHOOT(
            "overshoot",
            Dimension.ANGLE,
            "0 deg",
            "60 deg",
            new Amount.Lognormal(
                    Quantity.parse("1 deg", Dimension.ANGLE),
                    new Spread(
                            Spread.Measure.SIGMA,
                            java.util.Map.of(Level.REPEAT, Quantity.parse("60 %", Dimension.PURE)))),
            "nut angle that the hand turns on before it stops"),
    GAIN(
            "gain",
            Dimension.PURE,
            "-50 %",
            "50 %",
            new Amount.Uniform(
                    Quantity.parse("-4 %", Dimension.PURE), Quantity.parse("4 %", Dimension.PURE), Level.REPEAT),
            "deviation of the hand tool"),
    REPEAT_ERROR(
            "repeat_error",
            Dimension.PURE,
            "-50 %",
            "50 %",
            normal("0 %", "1.5 %", Dimension.PURE),
            "scatter of a reading with one hand tool");

    /** Levels that a number of the audit may scatter at: each joint has an auditor and a hand tool of its own. */
    static final List<Level> LEVELS = List.of(Level.REPEAT);

    private final String key;
    private final Dimension dimension;
    private final Range range;
    private final Amount byDefault;
    private final String meaning;

    AuditKey(String key, Dimension dimension, String least, String most, Amount byDefault, String meaning) {
        this.key = key;
        this.dimension = dimension;
        this.range = Range.of(dimension, least, most);
        this.byDefault = byDefault;
        this.meaning = meaning;
    }

    private static Amount fixed(String text, Dimension dimension) {
        return new Amount.Fixed(Quantity.parse(text, dimension));
    }

    private static Amount normal(String mean, String sd, Dimension dimension) {
        return new Amount.Normal(
                Quantity.parse(mean, dimension),
                new Spread(Spread.Measure.SD, java.util.Map.of(Level.REPEAT, Quantity.parse(sd, dimension))));
    }

    /** As written in scenario files. */
    public String key() {
        return key;
    }

    /** Its name among all draws, for example {@code audit overshoot}. */
    public String title() {
        return "audit " + key;
    }

    public Dimension dimension() {
        return dimension;
    }

    public Range range() {
        return range;
    }

    /** What counts where the file says nothing (assumed). */
    public Amount byDefault() {
        return byDefault;
    }

    /** One line for people. */
    public String meaning() {
        return meaning;
    }
}
