package org.shutoffbench.harness.scenario;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.scenario.file.Section;
import org.shutoffbench.harness.scenario.file.Tree;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.harness.scenario.unit.Quantity;
import org.shutoffbench.joint.strength.PropertyClass;
import org.shutoffbench.joint.thread.HexDimensions;
import org.shutoffbench.joint.thread.ThreadDesignation;

/** Reads one family. Problems are collected; what is returned can be used only where there are none. */
final class FamilyReader {

    private static final Range PROBABILITY = Range.of(Dimension.PURE, "0", "1");

    /** Keys that are resolved before a family is read. */
    private static final List<String> ELSEWHERE = List.of("like", "surface", "state");

    private static final String COMPUTED_TIMES = "computed times";

    private final Section family;
    private final Map<JointKey, Amount> numbers = new EnumMap<>(JointKey.class);
    private final Map<Part, Double> presence = new EnumMap<>(Part.class);

    FamilyReader(Section family) {
        this.family = family;
    }

    @Nullable
    JointFamily read(String name) {
        int before = family.problems().count();
        ELSEWHERE.forEach(family::take);
        JointFamily.WrittenThread thread = new ThreadReader(family).read();
        Assembly assembly = new AssemblyReader(family).read();
        friction(thread, assembly);
        stiffness(assembly);
        required(family, JointKey.SEATING);
        optional(family, JointKey.TURNS_TO_SNUG);
        optional(family, JointKey.RUNNING_TORQUE);
        PropertyClass propertyClass = propertyClass();
        YieldRule rule = yieldRule(family.has("class"));
        part(Part.PREVAILING, this::prevailing);
        part(Part.FOULING, section -> required(section, JointKey.FOULING_TORQUE));
        part(Part.COATING, section -> required(section, JointKey.COATING_TORQUE));
        boolean[] everyTurn = {false};
        part(Part.DAMAGED_THREAD, section -> everyTurn[0] = damage(section));
        part(Part.GALLING, this::galling);
        family.finish();
        if (thread == null || family.problems().count() > before) {
            return null;
        }
        JointFamily read =
                new JointFamily(name, thread, propertyClass, rule, assembly, numbers, presence, everyTurn[0]);
        return new PossibleJoint(family, read).checked();
    }

    private @Nullable PropertyClass propertyClass() {
        String title = family.text("class");
        try {
            return title == null ? null : PropertyClass.named(title);
        } catch (IllegalArgumentException e) {
            family.problem("class", String.valueOf(e.getMessage()));
            return null;
        }
    }

    private void stiffness(@Nullable Assembly assembly) {
        String key = JointKey.STIFFNESS.key();
        if (assembly == null) {
            required(family, JointKey.STIFFNESS);
            return;
        }
        if (!family.has("class")) {
            family.missing("class", "a computed stiffness needs the bolt's class, for example class: 8.8");
        }
        if (family.has(JointKey.GRIP.key())) {
            put(JointKey.GRIP, reader(JointKey.GRIP).read(family, JointKey.GRIP.key()));
        }
        if (family.take(key) instanceof Tree.Branch branch && branch.has(COMPUTED_TIMES)) {
            Section times = new Section(branch, family.path(key), family.problems());
            put(
                    JointKey.STIFFNESS_OVER_COMPUTED,
                    reader(JointKey.STIFFNESS_OVER_COMPUTED).read(times, COMPUTED_TIMES));
            times.finish();
        } else if (family.has(key)) {
            family.refuse(key, "is told twice", "grip or layers tell it; give {computed times: ...} to let it scatter");
        }
    }

    private void friction(JointFamily.@Nullable WrittenThread thread, @Nullable Assembly assembly) {
        Section friction = family.section("friction");
        if (friction == null) {
            if (!family.has("friction")) {
                family.missing("friction", "give {mu_th: 0.12, mu_b: 0.12, D_b: 15.6 mm}");
            }
            return;
        }
        if (friction.has(JointKey.NUT_FACTOR.key())) {
            for (JointKey other : List.of(JointKey.MU_TH, JointKey.MU_B)) {
                if (friction.has(other.key())) {
                    friction.problem(other.key(), "give either nut_factor or mu_th and mu_b, not both");
                }
            }
            required(friction, JointKey.NUT_FACTOR);
        } else {
            required(friction, JointKey.MU_TH);
            bearingFriction(friction);
        }
        bearingDiameter(friction, thread, assembly);
        optional(friction, JointKey.STATIC_RATIO);
        optional(friction, JointKey.RETIGHTENING_FACTOR);
        optional(friction, JointKey.RETIGHTENING_LIMIT);
        friction.finish();
    }

    /** Of a standard size, the effective bearing diameter is that of its hexagon and its clearance hole. */
    private void bearingDiameter(
            Section friction, JointFamily.@Nullable WrittenThread thread, @Nullable Assembly assembly) {
        if (assembly != null && !friction.has(JointKey.D_B.key())) {
            return; // that of the assembled joint
        }
        HexDimensions hexagon = thread == null
                ? null
                : ThreadDesignation.hexagonOf(thread.screw()).orElse(null);
        if (hexagon == null || friction.has(JointKey.D_B.key())) {
            required(friction, JointKey.D_B);
        } else {
            double diameter = (hexagon.bearingFaceM() + hexagon.clearanceHoleM()) / 2;
            put(JointKey.D_B, new Amount.Fixed(Quantity.ofSi(diameter, Dimension.LENGTH)));
        }
    }

    /** {@code mu_b} is a number of its own or {@code {mu_th times: ...}}. */
    private void bearingFriction(Section friction) {
        if (friction.take(JointKey.MU_B.key()) instanceof Tree.Branch branch && branch.has("mu_th times")) {
            Section times = new Section(branch, friction.path(JointKey.MU_B.key()), friction.problems());
            put(JointKey.MU_B_OVER_MU_TH, reader(JointKey.MU_B_OVER_MU_TH).read(times, "mu_th times"));
            times.finish();
        } else {
            required(friction, JointKey.MU_B);
        }
    }

    private YieldRule yieldRule(boolean hasClass) {
        Tree value = family.take("yield");
        YieldRule byDefault = hasClass ? YieldRule.BY_CLASS : YieldRule.OFF;
        if (value instanceof Tree.Branch branch && !isNumber(branch)) {
            Section section = new Section(branch, family.path("yield"), family.problems());
            Tree force = section.take(JointKey.YIELD_FORCE.key());
            YieldRule rule = force == null ? byDefault : yieldAt(section.path(JointKey.YIELD_FORCE.key()), force);
            optional(section, JointKey.YIELD_SLOPE);
            optional(section, JointKey.YIELD_FRACTURE);
            section.finish();
            return checked(rule, hasClass);
        }
        for (JointKey key : List.of(JointKey.YIELD_SLOPE, JointKey.YIELD_FRACTURE)) {
            put(key, byDefault(key));
        }
        return checked(value == null ? byDefault : yieldAt(family.path("yield"), value), hasClass);
    }

    private YieldRule yieldAt(String path, Tree value) {
        if (value instanceof Tree.Text text
                && (text.value().equals("off") || text.value().equals("by class"))) {
            return text.value().equals("off") ? YieldRule.OFF : YieldRule.BY_CLASS;
        }
        put(JointKey.YIELD_FORCE, reader(JointKey.YIELD_FORCE).read(value, path));
        return YieldRule.AT_FORCE;
    }

    private YieldRule checked(YieldRule rule, boolean hasClass) {
        if (rule == YieldRule.BY_CLASS && !hasClass) {
            family.problem("yield", "yield by class needs the family's class, for example class: 8.8");
        }
        return rule;
    }

    private static boolean isNumber(Tree.Branch branch) {
        return branch.has("normal") || branch.has("lognormal") || branch.has("uniform");
    }

    private void prevailing(Section section) {
        required(section, JointKey.PREVAILING_TORQUE);
        either(section, JointKey.PREVAILING_FROM, JointKey.PREVAILING_BEFORE_SNUG);
        optional(section, JointKey.PREVAILING_RAMP);
        optional(section, JointKey.PREVAILING_FIRST_LOSS);
        optional(section, JointKey.PREVAILING_LATER_LOSS);
        optional(section, JointKey.PREVAILING_EARLIER);
    }

    private boolean damage(Section section) {
        required(section, JointKey.DAMAGE_TORQUE);
        required(section, JointKey.DAMAGE_WIDTH);
        required(section, JointKey.DAMAGE_FROM);
        return section.yesOrNo("every_turn", false);
    }

    private void galling(Section section) {
        required(section, JointKey.GALLING_FACTOR);
        either(section, JointKey.GALLING_FROM, JointKey.GALLING_PAST_SNUG);
    }

    private void part(Part part, java.util.function.Consumer<Section> keys) {
        Section section = family.section(part.key());
        if (section == null) {
            return;
        }
        keys.accept(section);
        Amount present = new AmountReader(Dimension.PURE, PROBABILITY, JointKey.LEVELS, section.problems())
                .read(section, "present");
        if (present != null && !(present instanceof Amount.Fixed)) {
            section.problem("present", "a probability belongs here, for example 10 %");
        }
        double probability = present == null ? 1 : present.median();
        if (probability > 0) {
            presence.put(part, probability);
        } else {
            JointKey.of(part.key()).forEach(numbers::remove);
        }
        section.finish();
    }

    private void either(Section section, JointKey one, JointKey other) {
        boolean both = section.has(one.key()) && section.has(other.key());
        if (both || !(section.has(one.key()) || section.has(other.key()))) {
            String remedy = "give one of " + one.key() + " (counted from the start) and " + other.key();
            section.problems()
                    .add(
                            section.place(),
                            section.path(),
                            both ? "says its place twice" : "its place is missing",
                            remedy);
            return;
        }
        JointKey given = section.has(one.key()) ? one : other;
        put(given, reader(given).read(section, given.key()));
    }

    private void required(Section section, JointKey key) {
        if (!section.has(key.key())) {
            section.missing(key.key(), "give " + key.meaning());
            return;
        }
        put(key, reader(key).read(section, key.key()));
    }

    private void optional(Section section, JointKey key) {
        put(key, section.has(key.key()) ? reader(key).read(section, key.key()) : byDefault(key));
    }

    private static Amount byDefault(JointKey key) {
        String text = key.byDefault();
        if (text == null) {
            throw new IllegalStateException(key + " has no default");
        }
        return new Amount.Fixed(Quantity.parse(text, key.dimension()));
    }

    private void put(JointKey key, @Nullable Amount amount) {
        if (amount != null) {
            numbers.put(key, amount);
        }
    }

    private AmountReader reader(JointKey key) {
        return new AmountReader(key.dimension(), key.range(), JointKey.LEVELS, family.problems());
    }
}
