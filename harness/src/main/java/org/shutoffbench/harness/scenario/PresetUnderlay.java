package org.shutoffbench.harness.scenario;

import java.util.Locale;
import java.util.Optional;
import org.shutoffbench.harness.scenario.file.Overlay;
import org.shutoffbench.harness.scenario.file.Problems;
import org.shutoffbench.harness.scenario.file.Tree;
import org.shutoffbench.harness.scenario.file.TreeReader;
import org.shutoffbench.joint.friction.FrictionScatter;
import org.shutoffbench.joint.friction.Scatter;
import org.shutoffbench.joint.preset.Chance;
import org.shutoffbench.joint.preset.JointPreset;
import org.shutoffbench.joint.preset.SurfacePreset;
import org.shutoffbench.joint.prevailing.MetricPrevailing;
import org.shutoffbench.joint.prevailing.UnifiedPrevailing;
import org.shutoffbench.joint.thread.MetricSize;
import org.shutoffbench.joint.thread.ScrewThread;
import org.shutoffbench.joint.thread.ThreadDesignation;
import org.shutoffbench.joint.thread.ThreadForm;
import org.shutoffbench.joint.thread.UnifiedSize;

/**
 * Turns the keys {@code surface} and {@code state} of a family into the keys that they stand for, and lays the family's own
 * over them.
 */
final class PresetUnderlay {

    private static final String SURFACE = "surface";
    private static final String STATE = "state";

    private final Problems problems;

    PresetUnderlay(Problems problems) {
        this.problems = problems;
    }

    Tree.Branch under(Tree.Branch family, String path) {
        Tree.Branch whole = Overlay.without(Overlay.without(family, SURFACE), STATE);
        Tree state = family.get(STATE);
        if (state instanceof Tree.Text text) {
            whole = lay(whole, state, path + "." + STATE, () -> state(JointPreset.named(text.value()), family));
        } else if (state != null) {
            problems.add(state.place(), path + "." + STATE, "found " + state.shown(), "name the state of a joint");
        }
        Tree surface = family.get(SURFACE);
        if (surface instanceof Tree.Text text) {
            whole = lay(whole, surface, path + "." + SURFACE, () -> surface(SurfacePreset.named(text.value())));
        } else if (surface != null) {
            problems.add(surface.place(), path + "." + SURFACE, "found " + surface.shown(), "name a surface");
        } else if (state instanceof Tree.Text text) {
            whole = lay(
                    whole,
                    state,
                    path + "." + STATE,
                    () -> surface(JointPreset.named(text.value()).surface()));
        }
        return whole;
    }

    private interface Keys {
        String text();
    }

    private Tree.Branch lay(Tree.Branch family, Tree at, String path, Keys keys) {
        try {
            return Overlay.merge(TreeReader.parse(at.place().toString(), keys.text()), family);
        } catch (IllegalArgumentException e) {
            problems.add(at.place(), path, "found " + at.shown(), String.valueOf(e.getMessage()));
            return family;
        }
    }

    private static String surface(SurfacePreset surface) {
        FrictionScatter friction = surface.friction();
        String text = "friction:\n"
                + "  mu_th: " + lognormal(friction.thread()) + "\n"
                + "  mu_b: {mu_th times: " + lognormal(friction.bearingOverThread()) + "}\n"
                + "  static_ratio: " + range(surface.staticRatio(), 1, "") + "\n"
                + "  retightening_factor: " + friction.retightening().factorPerRepeat() + "\n"
                + "  retightening_limit: " + friction.retightening().limitFactor() + "\n";
        return surface.galling().probability() == 0
                ? text
                : text + "galling: {factor: " + range(surface.galling(), 1, "")
                        + ", past_snug: {uniform: [0 deg, 60 deg]}, present: "
                        + surface.galling().probability() + "}\n";
    }

    private static String lognormal(Scatter scatter) {
        StringBuilder text = new StringBuilder("{lognormal: " + scatter.median());
        add(text, Level.LOT, scatter.lotCv());
        add(text, Level.PIECE, scatter.pieceCv());
        add(text, Level.REPEAT, scatter.repeatCv());
        return text.append('}').toString();
    }

    private static void add(StringBuilder text, Level level, double cv) {
        if (cv > 0) {
            text.append(", ").append(level.title()).append(": ").append(cv);
        }
    }

    private static String state(JointPreset state, Tree.Branch family) {
        double highest = highestNm(family);
        StringBuilder text = new StringBuilder("{");
        if (state.lockNut().isPresent()) {
            text.append("prevailing: {torque: ").append(range(state.prevailingShare(), highest, " N*m"));
            text.append(", before_snug: {uniform: [0.6 turns, 1.4 turns]}, ramp: 1 turn, earlier_seatings: ");
            text.append(state.earlierSeatings())
                    .append(", ")
                    .append(present(state.prevailingShare()))
                    .append("}, ");
        }
        part(text, "fouling", "torque", state.foulingShare(), highest, " N*m", "");
        part(text, "coating", "torque_rate", state.coatingSharePerTurn(), highest, " N*m/turn", "");
        part(
                text,
                "damaged_thread",
                "torque",
                state.damageShare(),
                highest,
                " N*m",
                "width: 40 deg, from: {uniform: [0 turns, 1 turn]}, every_turn: yes, ");
        return text.append("}\n").toString();
    }

    private static void part(
            StringBuilder text, String part, String key, Chance chance, double highest, String unit, String more) {
        if (chance.probability() > 0) {
            text.append(part).append(": {").append(key).append(": ").append(range(chance, highest, unit));
            text.append(", ").append(more).append(present(chance)).append("}, ");
        }
    }

    private static String present(Chance chance) {
        return "present: " + chance.probability();
    }

    private static String range(Chance chance, double factor, String unit) {
        String low = number(chance.lowest() * factor) + unit;
        String high = number(chance.highest() * factor) + unit;
        return low.equals(high) ? low : "{uniform: [" + low + ", " + high + "]}";
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.4f", value).replaceFirst("\\.?0+$", "");
    }

    /** Highest prevailing torque that the standard allows a lock nut of the family's size, N m. */
    private static double highestNm(Tree.Branch family) {
        if (!(family.get("thread") instanceof Tree.Text text)) {
            throw new IllegalArgumentException(
                    "the state of a joint counts in shares of a standard size's torque; give a"
                            + " thread such as M12");
        }
        ScrewThread screw = ThreadDesignation.parse(text.value());
        Optional<Double> highest = screw.form() == ThreadForm.METRIC ? metric(screw) : unified(screw);
        return highest.orElseThrow(
                () -> new IllegalArgumentException("no prevailing torque is listed for " + text.value()));
    }

    private static Optional<Double> metric(ScrewThread screw) {
        for (MetricSize size : MetricSize.values()) {
            if (same(size.diameterM(), screw)) {
                return Optional.of(MetricPrevailing.of(size).firstUse().highestNm());
            }
        }
        return Optional.empty();
    }

    private static Optional<Double> unified(ScrewThread screw) {
        for (UnifiedSize size : UnifiedSize.values()) {
            if (same(size.diameterM(), screw)) {
                return Optional.of(UnifiedPrevailing.of(size).used(false).highestNm());
            }
        }
        return Optional.empty();
    }

    private static boolean same(double diameterM, ScrewThread screw) {
        return Math.abs(diameterM - screw.majorDiameterM()) < 1e-6;
    }
}
