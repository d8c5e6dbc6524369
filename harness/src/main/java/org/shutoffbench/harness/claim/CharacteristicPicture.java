package org.shutoffbench.harness.claim;

import java.util.Locale;
import org.shutoffbench.harness.statistics.AcceptancePlan;

/** The operating characteristic of the plans as a drawing: acceptance over the share that really fails. */
final class CharacteristicPicture {

    private static final double LEFT = 56;
    private static final double TOP = 18;
    private static final double WIDE = 520;
    private static final double TALL = 220;
    private static final int POINTS = 60;
    private static final double REACH = 3;

    private CharacteristicPicture() {}

    static String svg(ClaimPlan plan) {
        double allowed = plan.claim().allowed();
        double most = Math.min(0.999, REACH * allowed);
        StringBuilder svg = new StringBuilder();
        svg.append("<svg class=\"curve\" viewBox=\"0 0 640 290\" role=\"img\" aria-label=\"Operating characteristic;"
                + " its values stand in the table\">");
        for (int percent = 0; percent <= 100; percent += 50) {
            double y = y(percent / 100.0);
            svg.append(String.format(
                    Locale.ROOT,
                    "<path class=\"rule\" d=\"M%.1f %.1fH%.1f\"/><text x=\"%.1f\" y=\"%.1f\" text-anchor=\"end\">%d</text>",
                    LEFT,
                    y,
                    LEFT + WIDE,
                    LEFT - 8,
                    y + 4,
                    percent));
        }
        svg.append(text(LEFT - 40, 10, "start", "% accepted"));
        vertical(svg, LEFT + WIDE * allowed / most, "allowed " + ClaimWords.percent(allowed) + " %");
        if (plan.claim().seller() != null) {
            double good = plan.claim().seller().failing();
            vertical(svg, LEFT + WIDE * good / most, "");
            svg.append(text(
                    LEFT + WIDE * good / most + 4,
                    TOP + TALL + 34,
                    "start",
                    "seller " + ClaimWords.percent(good) + " %"));
        }
        svg.append(text(LEFT, TOP + TALL + 18, "start", "0"));
        svg.append(text(LEFT + WIDE, TOP + TALL + 18, "end", ClaimWords.percent(most) + " % really failing"));
        curve(svg, plan.zeroFailure(), most, "zero", "without a failure", 0);
        if (plan.attributes() != null) {
            curve(svg, plan.attributes(), most, "counted", "by attributes", 1);
        }
        if (plan.variables() != null) {
            curve(svg, plan.variables(), most, "measured", "by variables", 2);
        }
        return svg.append("</svg>").toString();
    }

    private static void curve(StringBuilder svg, AcceptancePlan plan, double most, String look, String name, int row) {
        StringBuilder path = new StringBuilder();
        for (int i = 0; i <= POINTS; i++) {
            double failing = most * i / POINTS;
            path.append(String.format(
                    Locale.ROOT,
                    "%s%.1f %.1f",
                    i == 0 ? "M" : "L",
                    LEFT + WIDE * i / POINTS,
                    y(plan.acceptance(failing))));
        }
        double at = TOP + 24 + 20 * row;
        svg.append("<path class=\"line ")
                .append(look)
                .append("\" d=\"")
                .append(path)
                .append("\"/>");
        svg.append(String.format(
                Locale.ROOT, "<path class=\"line %s\" d=\"M%.1f %.1fh34\"/>", look, LEFT + WIDE - 190, at - 4));
        svg.append(text(LEFT + WIDE - 148, at, "start", name));
    }

    private static void vertical(StringBuilder svg, double x, String words) {
        svg.append(String.format(Locale.ROOT, "<path class=\"limit\" d=\"M%.1f %.1fV%.1f\"/>", x, TOP, TOP + TALL));
        if (!words.isEmpty()) {
            svg.append(text(x + 4, TOP + TALL + 34, "start", words));
        }
    }

    private static String text(double x, double y, String anchor, String words) {
        return String.format(
                Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>", x, y, anchor, words);
    }

    private static double y(double share) {
        return TOP + TALL * (1 - share);
    }
}
