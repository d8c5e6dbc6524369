package org.shutoffbench.harness.report.joint;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.shutoffbench.harness.report.Caution;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.joint.strength.AssemblyLimit;

/**
 * Torque over nut angle of one joint as an SVG picture: all torque dashed, clamping torque solid, marks at 70 % and 90 % of
 * yield. Elastic: it ends where the bolt yields.
 */
public final class TorqueAngleCurve {

    private static final int WIDTH = 760;
    private static final int HEIGHT = 420;
    private static final int LEFT = 74;
    private static final int RIGHT = 104;
    private static final int TOP = 44;
    private static final int BOTTOM = 74;
    private static final int POINTS = 300;
    private static final double SHOWN_BEFORE_SNUG_RAD = Math.toRadians(120);

    private static final double MINIMUM_BEFORE_SNUG_RAD = Math.toRadians(10);

    private final JointSubject subject;
    private final UnitSystem system;
    private final JointLaw law;
    private final double fromRad;
    private final double toRad;
    private final double highest;
    private final StringBuilder svg = new StringBuilder();

    private TorqueAngleCurve(JointSubject subject, UnitSystem system) {
        this.subject = subject;
        this.system = system;
        this.law = subject.specification().law();
        double endForceN = endForceN();
        double endRad = law.clamp().angleForForceRad(endForceN);
        this.fromRad = -Math.min(SHOWN_BEFORE_SNUG_RAD, Math.max(0.6 * endRad, MINIMUM_BEFORE_SNUG_RAD));
        this.toRad = endRad;
        this.highest = Axis.roundUp(torque(this::total, toRad));
    }

    /** The picture, ending in a line feed. */
    public static String svg(JointSheet sheet, UnitSystem system) {
        return new TorqueAngleCurve(sheet.subject(), system).draw();
    }

    private double endForceN() {
        AssemblyLimit limit = subject.limit();
        if (limit != null) {
            return limit.yieldForceN();
        }
        double aimed = subject.aimedForceN();
        return Double.isNaN(aimed) ? law.clamp().forceN(law.clamp().seatingWidthRad() + Math.PI) : 1.2 * aimed;
    }

    private String draw() {
        add(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"0 0 %d %d\" width=\"%d\" height=\"%d\""
                        + " font-family=\"system-ui, sans-serif\" font-size=\"13\">",
                WIDTH, HEIGHT, WIDTH, HEIGHT);
        add("<title>Torque over nut angle: %s</title>", escaped(subject.title()));
        add("<desc>%s</desc>", escaped(description()));
        add("<rect width=\"%d\" height=\"%d\" fill=\"#fbfaf7\"/>", WIDTH, HEIGHT);
        add("<text x=\"%d\" y=\"24\" font-size=\"15\">%s</text>", LEFT, escaped(subject.title()));
        axes();
        curve(this::total, "#d55e00", "6 4");
        curve(this::clamping, "#0072b2", "none");
        label(this::total, "all torque", -10, share(0), "#a04600");
        label(this::clamping, "clamping torque", 14, share(0.4 * toRad), "#0072b2");
        marks();
        add(
                "<text x=\"%d\" y=\"%d\" font-size=\"10\" fill=\"#4c545d\">%s</text>",
                LEFT, HEIGHT - 24, escaped(caution(0)));
        add(
                "<text x=\"%d\" y=\"%d\" font-size=\"10\" fill=\"#4c545d\">%s</text>",
                LEFT, HEIGHT - 10, escaped(caution(1)));
        return svg.append("</svg>\n").toString();
    }

    private void axes() {
        for (double t : Axis.ticks(0, highest)) {
            add(
                    "<line x1=\"%d\" x2=\"%d\" y1=\"%.1f\" y2=\"%.1f\" stroke=\"#dad6cd\"/>",
                    LEFT, WIDTH - RIGHT, y(t), y(t));
            add("<text x=\"%d\" y=\"%.1f\" text-anchor=\"end\">%s</text>", LEFT - 8, y(t) + 4, Axis.label(t));
        }
        for (double a : Axis.ticks(Math.toDegrees(fromRad), Math.toDegrees(toRad))) {
            add(
                    "<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%s</text>",
                    x(Math.toRadians(a)), HEIGHT - BOTTOM + 18, Axis.label(a));
        }
        add(
                "<line x1=\"%.1f\" x2=\"%.1f\" y1=\"%d\" y2=\"%d\" stroke=\"#4c545d\" stroke-dasharray=\"2 3\"/>",
                x(0), x(0), TOP, HEIGHT - BOTTOM);
        add("<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\" fill=\"#4c545d\">snug</text>", x(0), TOP - 4);
        add(
                "<text x=\"%d\" y=\"%d\" text-anchor=\"end\">nut angle past snug, deg</text>",
                WIDTH - RIGHT, HEIGHT - BOTTOM + 36);
        add("<text x=\"%d\" y=\"%d\">%s</text>", 8, TOP - 8, Measure.TORQUE.unit(system));
    }

    private void curve(DoubleUnaryOperator nm, String colour, String dash) {
        StringBuilder path = new StringBuilder();
        for (int i = 0; i <= POINTS; i++) {
            double angle = fromRad + (toRad - fromRad) * i / POINTS;
            path.append(String.format(Locale.ROOT, "%s%.1f %.1f", i == 0 ? "M" : "L", x(angle), y(torque(nm, angle))));
        }
        add(
                "<path d=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"2\" stroke-dasharray=\"%s\"/>",
                path, colour, dash);
    }

    private void label(DoubleUnaryOperator nm, String text, int shift, double where, String colour) {
        double angle = fromRad + (toRad - fromRad) * where;
        String anchor = shift < 0 ? "end" : "start";
        add(
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" fill=\"%s\">%s</text>",
                x(angle) + shift, y(torque(nm, angle)) + (shift < 0 ? -8 : 4), anchor, colour, text);
    }

    private double share(double pastSnugRad) {
        return (pastSnugRad - fromRad) / (toRad - fromRad);
    }

    private void marks() {
        AssemblyLimit limit = subject.limit();
        if (limit == null) {
            return;
        }
        for (double share : new double[] {0.7, 0.9}) {
            double angle = law.clamp().angleForForceRad(limit.forceN(share));
            double height = y(torque(this::clamping, angle));
            add(
                    "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"#fbfaf7\" stroke=\"#0072b2\" stroke-width=\"2\"/>",
                    x(angle), height);
            add("<text x=\"%.1f\" y=\"%.1f\">%.0f %% of yield</text>", x(angle) + 8, height + 14, 100 * share);
        }
    }

    private String description() {
        return String.format(
                Locale.ROOT,
                "Nut angle from %.0f to %.0f deg past snug; all torque at the end %.1f %s, clamping torque %.1f %s.",
                Math.toDegrees(fromRad),
                Math.toDegrees(toRad),
                torque(this::total, toRad),
                Measure.TORQUE.unit(system),
                torque(this::clamping, toRad),
                Measure.TORQUE.unit(system));
    }

    private double clamping(double pastSnugRad) {
        double galled =
                law.torqueTensionAt(law.clamp().snugAngleRad() + pastSnugRad).kappaOnM();
        return galled * law.clamp().forceN(pastSnugRad);
    }

    private double total(double pastSnugRad) {
        return clamping(pastSnugRad) + law.freeTorque().torqueNm(law.clamp().snugAngleRad() + pastSnugRad);
    }

    private double torque(DoubleUnaryOperator nm, double pastSnugRad) {
        return Measure.TORQUE.in(system, nm.applyAsDouble(pastSnugRad));
    }

    private double x(double pastSnugRad) {
        return LEFT + (WIDTH - LEFT - RIGHT) * (pastSnugRad - fromRad) / (toRad - fromRad);
    }

    private double y(double torque) {
        return HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * torque / highest;
    }

    /** First or second part of the caution, cut after its first sentences. */
    private static String caution(int part) {
        int cut = Caution.TEXT.indexOf("Check on");
        return part == 0 ? Caution.TEXT.substring(0, cut).strip() : Caution.TEXT.substring(cut);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private void add(String format, Object... values) {
        svg.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}
