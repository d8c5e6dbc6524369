package org.shutoffbench.joint.preset;

import java.util.Locale;
import java.util.stream.Collectors;
import org.shutoffbench.joint.friction.FrictionScatter;
import org.shutoffbench.joint.friction.Retightening;
import org.shutoffbench.joint.friction.Scatter;
import org.shutoffbench.joint.prevailing.LockNutKind;

/** The tables of docs/populations.md as the presets have them. */
final class PopulationsPage {

    private PopulationsPage() {}

    static String surfaces() {
        return SurfacePreset.all().stream().map(PopulationsPage::row).collect(Collectors.joining("\n"));
    }

    static String states() {
        return JointPreset.all().stream().map(PopulationsPage::row).collect(Collectors.joining("\n"));
    }

    private static String row(SurfacePreset preset) {
        FrictionScatter friction = preset.friction();
        Scatter thread = friction.thread();
        return String.format(
                Locale.ROOT,
                "| %s | %s | %s / %s / %s | %s | %.2f | %s | %s | %s | %s |",
                preset.name(),
                shortest(thread.median()),
                percent(thread.lotCv()),
                percent(thread.pieceCv()),
                percent(thread.repeatCv()),
                percent(friction.bearingOverThread().totalCv()),
                friction.logCorrelation(),
                retightening(friction.retightening()),
                range(preset.staticRatio()),
                chance(preset.galling(), ""),
                preset.basis());
    }

    private static String row(JointPreset preset) {
        return String.format(
                Locale.ROOT,
                "| %s | %s | %s | %s | %d | %s | %s | %s | %s |",
                preset.name(),
                preset.surface().name(),
                preset.lockNut().map(LockNutKind::title).orElse("plain"),
                chance(preset.prevailingShare(), " %"),
                preset.earlierSeatings(),
                chance(preset.foulingShare(), " %"),
                chance(preset.coatingSharePerTurn(), " %"),
                chance(preset.damageShare(), " %"),
                preset.basis());
    }

    private static String retightening(Retightening change) {
        return change.equals(Retightening.NONE)
                ? "unchanged"
                : "x " + change.factorPerRepeat() + ", at most x " + change.limitFactor();
    }

    private static String chance(Chance chance, String unit) {
        if (chance.probability() == 0) {
            return "none";
        }
        double size = unit.isEmpty() ? 1 : 100;
        String range = shortest(size * chance.lowest()) + " to " + shortest(size * chance.highest()) + unit;
        return chance.probability() == 1 ? range : percent(chance.probability()) + " of joints: " + range;
    }

    private static String shortest(double value) {
        return new java.math.BigDecimal(value, new java.math.MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String range(Chance chance) {
        return String.format(Locale.ROOT, "%.2f to %.2f", chance.lowest(), chance.highest());
    }

    private static String percent(double share) {
        return new java.math.BigDecimal(100 * share, new java.math.MathContext(3))
                        .stripTrailingZeros()
                        .toPlainString()
                + " %";
    }
}
