package org.shutoffbench.harness.scenario;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.scenario.unit.Dimension;

/**
 * Every number of a family, with its place in the file. Defaults marked assumed are engineering choices of this project.
 */
@SuppressWarnings("ImmutableEnumChecker") // a Range is a record of records
public enum JointKey {
    MU_TH("friction", "mu_th", Dimension.PURE, "0.01", "1", null, "friction coefficient in the thread"),
    MU_B("friction", "mu_b", Dimension.PURE, "0.01", "1", null, "friction coefficient under nut or head"),
    MU_B_OVER_MU_TH("friction", "mu_b", Dimension.PURE, "0.1", "10", null, "mu_b as a multiple of mu_th"),
    NUT_FACTOR("friction", "nut_factor", Dimension.PURE, "0.05", "1", null, "K = T/(F d), instead of the coefficients"),
    D_B("friction", "D_b", Dimension.LENGTH, "1 mm", "1 m", null, "effective bearing diameter (d_w + d_h)/2"),
    STATIC_RATIO(
            "friction", "static_ratio", Dimension.PURE, "1", "3", "1.05", "breakaway over moving torque (assumed)"),
    STIFFNESS(
            "",
            "stiffness",
            Dimension.STIFFNESS,
            "1 N/mm",
            "100000 kN/mm",
            null,
            "joint stiffness k_J, bolt and parts in series"),
    STIFFNESS_OVER_COMPUTED(
            "", "stiffness", Dimension.PURE, "0.1", "10", null, "stiffness as a multiple of what the parts give"),
    GRIP("", "grip", Dimension.LENGTH, "1 mm", "10 m", null, "clamped length, washers included"),
    SEATING(
            "",
            "seating",
            Dimension.ANGLE,
            "0 deg",
            "2 turns",
            null,
            "nut angle over which uneven parts come to bear, x_a"),
    TURNS_TO_SNUG(
            "",
            "turns_to_snug",
            Dimension.PURE,
            "0",
            "100",
            "2",
            "turns from the start until the parts touch (assumed)"),
    RUNNING_TORQUE(
            "",
            "running_torque",
            Dimension.TORQUE,
            "0 N*m",
            "100 N*m",
            "0.2 N*m",
            "torque of the free thread (assumed)"),
    YIELD_FORCE("yield", "force", Dimension.FORCE, "1 N", "100 MN", null, "clamp force at which the bolt yields"),
    YIELD_SLOPE(
            "yield",
            "slope_ratio",
            Dimension.PURE,
            "0.001",
            "0.99",
            "0.06",
            "slope above yield over elastic slope (assumed)"),
    YIELD_FRACTURE(
            "yield",
            "fracture_angle",
            Dimension.ANGLE,
            "1 deg",
            "10 turns",
            "60 deg",
            "plastic nut angle at fracture (assumed)"),
    PREVAILING_TORQUE(
            "prevailing", "torque", Dimension.TORQUE, "0 N*m", "1000 N*m", null, "full prevailing torque T_pmax"),
    PREVAILING_FROM(
            "prevailing",
            "from",
            Dimension.ANGLE,
            "0 turns",
            "100 turns",
            null,
            "where the locking element begins, from the start"),
    PREVAILING_BEFORE_SNUG(
            "prevailing",
            "before_snug",
            Dimension.ANGLE,
            "0 turns",
            "100 turns",
            null,
            "the same, counted back from snug"),
    PREVAILING_RAMP(
            "prevailing",
            "ramp",
            Dimension.ANGLE,
            "1 deg",
            "20 turns",
            "1 turn",
            "angle over which prevailing torque builds up"),
    FOULING_TORQUE(
            "fouling",
            "torque",
            Dimension.TORQUE,
            "0 N*m",
            "1000 N*m",
            null,
            "constant extra torque of a fouled thread"),
    COATING_TORQUE(
            "coating",
            "torque_rate",
            Dimension.ANGULAR_STIFFNESS,
            "0 N*m/turn",
            "1000 N*m/turn",
            null,
            "extra torque of a thick coating, growing from the start"),
    DAMAGE_TORQUE(
            "damaged_thread",
            "torque",
            Dimension.TORQUE,
            "0 N*m",
            "1000 N*m",
            null,
            "height of the extra torque at a damaged place"),
    DAMAGE_WIDTH(
            "damaged_thread",
            "width",
            Dimension.ANGLE,
            "1 deg",
            "1 turn",
            null,
            "nut angle that the damaged place covers"),
    DAMAGE_FROM(
            "damaged_thread",
            "from",
            Dimension.ANGLE,
            "0 turns",
            "100 turns",
            null,
            "where the damaged place begins, from the start"),
    RETIGHTENING_FACTOR(
            "friction",
            "retightening_factor",
            Dimension.PURE,
            "0.2",
            "5",
            "1",
            "factor on friction for each earlier tightening"),
    RETIGHTENING_LIMIT(
            "friction", "retightening_limit", Dimension.PURE, "0.1", "10", "1", "factor that is never passed"),
    PREVAILING_FIRST_LOSS(
            "prevailing",
            "first_loss",
            Dimension.PURE,
            "0",
            "0.99",
            "17.5 %",
            "share of prevailing torque lost by the first seating"),
    PREVAILING_LATER_LOSS(
            "prevailing",
            "later_loss",
            Dimension.PURE,
            "0",
            "0.99",
            "5 %",
            "share lost by each later seating (assumed)"),
    PREVAILING_EARLIER(
            "prevailing",
            "earlier_seatings",
            Dimension.PURE,
            "0",
            "100",
            "0",
            "seatings before the first tightening here"),
    GALLING_FACTOR("galling", "factor", Dimension.PURE, "1", "20", null, "factor on thread friction once it galls"),
    GALLING_FROM("galling", "from", Dimension.ANGLE, "0 turns", "100 turns", null, "where it galls, from the start"),
    GALLING_PAST_SNUG(
            "galling", "past_snug", Dimension.ANGLE, "0 turns", "20 turns", null, "the same, counted from snug");

    /** Levels that a joint's number may scatter at; each joint by default. */
    static final List<Level> LEVELS = List.of(Level.PIECE, Level.LOT, Level.REPEAT);

    private final String section;
    private final String key;
    private final Dimension dimension;
    private final Range range;
    private final @Nullable String byDefault;
    private final String meaning;

    JointKey(
            String section,
            String key,
            Dimension dimension,
            String least,
            String most,
            @Nullable String byDefault,
            String meaning) {
        this.section = section;
        this.key = key;
        this.dimension = dimension;
        this.range = Range.of(dimension, least, most);
        this.byDefault = byDefault;
        this.meaning = meaning;
    }

    /** The map that it stands in, for example {@code friction}; empty for the family's own. */
    public String section() {
        return section;
    }

    /** As written in scenario files. */
    public String key() {
        return key;
    }

    /** Its name among all numbers of a joint, for example {@code prevailing torque}. */
    public String title() {
        return switch (this) {
            case MU_B_OVER_MU_TH -> "friction mu_b over mu_th";
            case STIFFNESS_OVER_COMPUTED -> "stiffness over computed";
            default -> section.isEmpty() ? key : section.replace('_', ' ') + " " + key;
        };
    }

    public Dimension dimension() {
        return dimension;
    }

    public Range range() {
        return range;
    }

    /** What counts where the file does not give it; null where nothing does. */
    public @Nullable String byDefault() {
        return byDefault;
    }

    /** One line for people. */
    public String meaning() {
        return meaning;
    }

    static List<JointKey> of(String section) {
        return Arrays.stream(values())
                .filter(key -> key.section.equals(section))
                .toList();
    }
}
