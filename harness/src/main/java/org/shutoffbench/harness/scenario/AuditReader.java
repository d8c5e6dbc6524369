package org.shutoffbench.harness.scenario;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.scenario.file.NearestKey;
import org.shutoffbench.harness.scenario.file.Problems;
import org.shutoffbench.harness.scenario.file.Section;
import org.shutoffbench.harness.scenario.file.Tree;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.harness.scenario.unit.Quantity;

/** Reads the sections {@code audit} and {@code costs}. */
final class AuditReader {

    private static final Range LIMIT = Range.of(Dimension.TORQUE, "0.01 N*m", "100000 N*m");
    private static final Range ALLOWANCE = Range.of(Dimension.TORQUE, "0 N*m", "100000 N*m");
    private static final Range RESOLUTION = Range.of(Dimension.TORQUE, "0 N*m", "1000 N*m");
    private static final Range SKIPPED = Range.of(Dimension.PURE, "0 %", "90 %");
    private static final Range SECONDS = Range.of(Dimension.TIME, "0 s", "10000 min");
    private static final Range MONEY = Range.of(Dimension.PURE, "0", "1000000000000");
    private static final Range SAMPLE = Range.of(Dimension.PURE, "0.01 %", "100 %");
    private static final int LARGEST_LOT = 1_000_000;

    private final Section root;
    private final Problems problems;

    AuditReader(Section root) {
        this.root = root;
        this.problems = root.problems();
    }

    /** The audit; null where the scenario has none. */
    @Nullable
    AuditRecipe audit(List<JointFamily> families) {
        Section audit = root.section("audit");
        if (audit == null) {
            return null;
        }
        Map<AuditKey, Amount> numbers = new EnumMap<>(AuditKey.class);
        for (AuditKey key : AuditKey.values()) {
            Amount amount =
                    new AmountReader(key.dimension(), key.range(), AuditKey.LEVELS, problems).read(audit, key.key());
            if (amount != null) {
                numbers.put(key, amount);
            }
        }
        Quantity lowest = null;
        Quantity highest = null;
        Section accept = audit.section("accept");
        if (accept != null) {
            lowest = fixed(accept, "lowest", Dimension.TORQUE, LIMIT);
            highest = fixed(accept, "highest", Dimension.TORQUE, LIMIT);
            if (lowest != null && highest != null && !(lowest.si() < highest.si())) {
                accept.refuse("highest", "does not exceed the lowest, " + lowest, "give a torque above it, or none");
            }
            accept.finish();
        }
        Map<String, Quantity> allows = allows(audit, families);
        Quantity resolution = given(audit, "resolution", Dimension.TORQUE, RESOLUTION, "1 N*m");
        Quantity skipped = given(audit, "skipped", Dimension.PURE, SKIPPED, "1 %");
        audit.finish();
        return new AuditRecipe(numbers, lowest, highest, allows, resolution, skipped);
    }

    private Map<String, Quantity> allows(Section audit, List<JointFamily> families) {
        Map<String, Quantity> allows = new LinkedHashMap<>();
        Section given = audit.section("allows");
        if (given == null) {
            return allows;
        }
        List<String> names = families.stream().map(JointFamily::name).toList();
        for (Tree.Entry entry : given.entries()) {
            if (!names.contains(entry.key())) {
                problems.add(
                        entry.place(),
                        given.path(entry.key()),
                        "is no family of this scenario",
                        NearestKey.remedy(entry.key(), names));
                continue;
            }
            Amount amount = new AmountReader(Dimension.TORQUE, ALLOWANCE, AuditKey.LEVELS, problems)
                    .read(entry.value(), given.path(entry.key()));
            if (amount instanceof Amount.Fixed one) {
                allows.put(entry.key(), one.quantity());
            } else if (amount != null) {
                problems.add(
                        entry.place(), given.path(entry.key()), "scatters", "one torque belongs here, without scatter");
            }
        }
        return allows;
    }

    /** The costs; null where the scenario has none. */
    @Nullable
    Costs costs() {
        Section costs = root.section("costs");
        if (costs == null) {
            return null;
        }
        String currency = costs.has("currency") ? costs.name("currency") : "units of money";
        double perHour = money(costs, "per_hour", "give the cost of an hour of labour, a plain number");
        double escape = money(costs, "escape", "give the cost of a joint that is left low, a plain number");
        double parts = costs.has("rework_parts") ? money(costs, "rework_parts", "") : 0;
        Costs read = new Costs(
                String.valueOf(currency),
                perHour,
                needed(costs, "tightening", "give the handling time of a joint at the first visit, such as 10 s"),
                needed(costs, "audit", "give the time of one audit, such as 30 s"),
                needed(costs, "rework", "give the time of one rework, such as 3 min"),
                parts,
                escape,
                given(costs, "sample", Dimension.PURE, SAMPLE, "10 %"),
                (int) costs.wholeNumber("lot", 1, LARGEST_LOT, 100));
        if (costs.has("escape") && !(read.escape() > read.reworkCost())) {
            costs.refuse(
                    "escape",
                    "costs no more than a rework, " + read.reworkCost(),
                    "nothing is audited to prevent what costs less than to put right; give a greater cost");
        }
        costs.finish();
        return read;
    }

    private double money(Section section, String key, String remedy) {
        if (!section.has(key)) {
            section.missing(key, remedy);
            return 0;
        }
        Quantity found = fixed(section, key, Dimension.PURE, MONEY);
        return found == null ? 0 : found.si();
    }

    private Quantity needed(Section section, String key, String remedy) {
        if (!section.has(key)) {
            section.missing(key, remedy);
        }
        return given(section, key, Dimension.TIME, SECONDS, "0 s");
    }

    private Quantity given(Section section, String key, Dimension dimension, Range range, String byDefault) {
        Quantity found = fixed(section, key, dimension, range);
        return found == null ? Quantity.parse(byDefault, dimension) : found;
    }

    private @Nullable Quantity fixed(Section section, String key, Dimension dimension, Range range) {
        return new AmountReader(dimension, range, AuditKey.LEVELS, problems).readFixed(section, key);
    }
}
