package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shutoffbench.harness.run.Trace;

/**
 * One tightening as a static drawing: torque, clamp force and nut angle over time, torque over nut angle, with blows, zones
 * of the joint, the window, the stop command, and the strategy's own estimates beside the truth.
 */
public final class TracePicture {

    private static final int WIDTH = 1120;
    private static final int HEIGHT = 800;
    private static final int MOST_POINTS = 1500;
    private static final double AXIS_OVER_TARGET = 1.5;
    private static final String STYLE = """
            svg{background:#fbfaf7;font:13px system-ui,'Segoe UI',Roboto,'Noto Sans','DejaVu Sans',sans-serif;fill:#1b1f24}
            .soft{fill:#4c545d}.axis{stroke:#4c545d;fill:none}.rule{stroke:#dad6cd}.band{fill:#eaf0f4}
            .truth{stroke:#0072b2;stroke-width:2.2;fill:none}.total{stroke:#1b1f24;stroke-width:1.4;stroke-dasharray:5 3;fill:none}
            .own{stroke:#c44e00;stroke-width:1.8;stroke-dasharray:8 3 2 3;fill:none}.blow{stroke:#1b1f24}
            .stop{stroke:#b04f8e;stroke-width:1.6;stroke-dasharray:2 2}.zone{stroke:#4c545d;stroke-dasharray:1 3}
            .head{font-size:17px;font-weight:700}
            """;

    private final TraceContent content;
    private final JointCurves curves;
    private final StringBuilder svg = new StringBuilder();

    private TracePicture(TraceContent content) {
        this.content = content;
        this.curves = new JointCurves(content.law());
    }

    /** The drawing as SVG text. */
    public static String svg(TraceContent content) {
        return new TracePicture(content).draw();
    }

    /** A pair of coordinates in the units of a panel. */
    private record At(double x, double y) {}

    /** A line of a panel. */
    private record Line(String kind, String name, List<At> points) {}

    /**
     * A panel with its axes.
     *
     * @param marks places on the x axis that matter
     */
    private record Panel(
            int left,
            int top,
            String title,
            String xTitle,
            double fromX,
            double toX,
            double fromY,
            double toY,
            List<Mark> marks) {

        static final int WIDE = 460;
        static final int TALL = 270;

        double x(double value) {
            return left + WIDE * Math.min(1, Math.max(0, (value - fromX) / (toX - fromX)));
        }

        double y(double value) {
            return top + TALL - TALL * Math.min(1, Math.max(0, (value - fromY) / (toY - fromY)));
        }
    }

    /** A vertical line with a word. */
    private record Mark(String kind, double x, String word) {}

    private String draw() {
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ")
                .append(WIDTH)
                .append(' ')
                .append(HEIGHT)
                .append("\" role=\"img\" aria-labelledby=\"title values\"><title id=\"title\">")
                .append(escaped(content.title()))
                .append("</title><desc id=\"values\">")
                .append(escaped(inWords()))
                .append("</desc><style>")
                .append(STYLE)
                .append("</style>");
        text(60, 32, "start", "head", content.title());
        text(60, 54, "start", "soft", content.ending() + "; simulated, not a tightening procedure");
        torqueOverTime();
        forceOverTime();
        angleOverTime();
        torqueOverAngle();
        return svg.append("</svg>\n").toString();
    }

    private String inWords() {
        TraceContent.Point end = content.points().get(content.points().size() - 1);
        return String.format(
                Locale.ROOT,
                "%d blows, stop command at %.3f s; ends at %.1f degrees past snug with %.1f kN. %s.",
                content.blows().size(),
                content.stopTimeS(),
                end.pastSnugDeg(),
                end.clampForceN() / 1000,
                content.ending());
    }

    private double mostNm() {
        return Scale.reaching(AXIS_OVER_TARGET * content.target().clampingTorqueNm(), null)
                .max();
    }

    private double endS() {
        return content.points().get(content.points().size() - 1).timeS();
    }

    private List<Mark> timeMarks() {
        List<Mark> marks = new ArrayList<>();
        for (Trace.Blow blow : content.blows()) {
            marks.add(new Mark("blow", blow.timeS(), ""));
        }
        marks.add(new Mark("stop", content.stopTimeS(), "stop"));
        return marks;
    }

    private void torqueOverTime() {
        Panel panel = new Panel(60, 100, "Torque, N\u00b7m", "time, s", 0, endS(), 0, mostNm(), timeMarks());
        List<At> clamping = new ArrayList<>();
        List<At> total = new ArrayList<>();
        for (TraceContent.Point p : thinned(content.points())) {
            double nm = clampingNm(p);
            clamping.add(new At(p.timeS(), nm));
            total.add(new At(p.timeS(), nm + curves.freeNm(p.pastSnugDeg())));
        }
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("truth", "clamps", clamping));
        lines.add(new Line("total", "turns the nut", total));
        lines.addAll(own("N m", 1));
        draw(panel, windowNm(), lines);
    }

    private void forceOverTime() {
        double kappaOnM = curves.kappaOnM();
        double[] window = {windowNm()[0] / kappaOnM / 1000, windowNm()[1] / kappaOnM / 1000};
        Panel panel = new Panel(
                620,
                100,
                "Clamp force, kN",
                "time, s",
                0,
                endS(),
                0,
                Scale.reaching(mostNm() / kappaOnM / 1000, null).max(),
                timeMarks());
        List<At> force = new ArrayList<>();
        thinned(content.points()).forEach(p -> force.add(new At(p.timeS(), p.clampForceN() / 1000)));
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("truth", "truth", force));
        lines.addAll(own("N", 1e-3));
        draw(panel, window, lines);
    }

    private void angleOverTime() {
        double least = content.points().get(0).pastSnugDeg();
        double most = Math.max(
                30,
                content.points().stream()
                        .mapToDouble(TraceContent.Point::pastSnugDeg)
                        .max()
                        .orElse(0));
        Panel panel = new Panel(
                60,
                470,
                "Nut angle past snug, deg",
                "time, s",
                0,
                endS(),
                Math.min(least, -30),
                most * 1.1,
                timeMarks());
        List<At> angle = new ArrayList<>();
        thinned(content.points()).forEach(p -> angle.add(new At(p.timeS(), p.pastSnugDeg())));
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("truth", "truth", angle));
        lines.addAll(own("deg", 1));
        draw(panel, new double[] {0, 0}, lines);
    }

    private void torqueOverAngle() {
        double last = curves.angleForTorqueDeg(mostNm());
        double first = Math.max(content.points().get(0).pastSnugDeg(), Math.min(-1.2 * last, lowestStart()));
        List<Mark> marks = new ArrayList<>();
        for (Trace.Blow blow : content.blows()) {
            marks.add(new Mark("blow", Math.toDegrees(blow.nutAngleRad()), ""));
        }
        marks.add(new Mark("zone", 0, ""));
        marks.add(new Mark("zone", Math.toDegrees(content.law().clamp().seatingWidthRad()), ""));
        for (int zone = 1; zone < content.law().freeTorque().zoneCount(); zone++) {
            marks.add(new Mark(
                    "zone", Math.toDegrees(content.law().freeTorque().startRad(zone)) + curves.startDeg(), ""));
        }
        Panel panel = new Panel(
                620, 470, "Torque over nut angle, N\u00b7m", "deg past snug", first, last, 0, mostNm(), marks);
        List<At> clamping = new ArrayList<>();
        List<At> total = new ArrayList<>();
        for (double deg : curves.grid(first, last)) {
            clamping.add(new At(deg, curves.clampingNm(deg)));
            total.add(new At(deg, curves.clampingNm(deg) + curves.freeNm(deg)));
        }
        draw(
                panel,
                windowNm(),
                List.of(new Line("truth", "clamps", clamping), new Line("total", "turns the nut", total)));
        text(panel.x(0) - 5, panel.top() + 12, "end", "soft", "snug");
        text(panel.x(lowestStart() / 1.1) + 5, panel.top() + Panel.TALL - 60, "start", "soft", freeWords());
        TraceContent.Point end = content.points().get(content.points().size() - 1);
        svg.append(String.format(
                Locale.ROOT,
                "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"6\" fill=\"#fbfaf7\" stroke=\"#b04f8e\" stroke-width=\"2.5\"/>",
                panel.x(end.pastSnugDeg()),
                panel.y(clampingNm(end))));
    }

    private String freeWords() {
        double free = curves.freeNm(0);
        return free > 1 ? "prevailing torque, " + Printed.fixed(free, 1) + " N\u00b7m at snug" : "";
    }

    /** Where the locking element begins, so that it is in the picture. */
    private double lowestStart() {
        double lowest = 0;
        for (int zone = 1; zone < content.law().freeTorque().zoneCount(); zone++) {
            lowest = Math.min(lowest, Math.toDegrees(content.law().freeTorque().startRad(zone)) + curves.startDeg());
        }
        return 1.1 * lowest;
    }

    private double clampingNm(TraceContent.Point p) {
        double angleRad = content.law().clamp().snugAngleRad() + Math.toRadians(p.pastSnugDeg());
        return content.law().torqueTensionAt(angleRad).kappaOnM() * p.clampForceN();
    }

    private double[] windowNm() {
        double target = content.target().clampingTorqueNm();
        double half = content.target().windowFraction() * target;
        return new double[] {target - half, target + half};
    }

    /** The strategy's estimates in a unit, each as a line. */
    private List<Line> own(String unit, double factor) {
        List<Line> lines = new ArrayList<>();
        for (TraceContent.Estimate estimate : content.estimates()) {
            boolean radians = "deg".equals(unit) && "rad".equals(estimate.unit());
            if (!estimate.values().isEmpty() && (estimate.unit().equals(unit) || radians)) {
                List<At> points = new ArrayList<>();
                for (TraceContent.Value v : thinned(estimate.values())) {
                    points.add(new At(v.timeS(), radians ? Math.toDegrees(v.value()) : factor * v.value()));
                }
                lines.add(new Line("own", "its own " + estimate.name(), points));
            }
        }
        return lines;
    }

    private static <T> List<T> thinned(List<T> all) {
        int step = 1 + all.size() / MOST_POINTS;
        List<T> kept = new ArrayList<>();
        for (int i = 0; i < all.size(); i += step) {
            kept.add(all.get(i));
        }
        if ((all.size() - 1) % step != 0) {
            kept.add(all.get(all.size() - 1));
        }
        return kept;
    }

    private void draw(Panel panel, double[] band, List<Line> lines) {
        if (band[1] > band[0]) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<rect class=\"band\" x=\"%d\" y=\"%.1f\" width=\"%d\" height=\"%.1f\"/>",
                    panel.left(),
                    panel.y(band[1]),
                    Panel.WIDE,
                    panel.y(band[0]) - panel.y(band[1])));
        }
        axes(panel);
        panel.marks().forEach(mark -> mark(panel, mark));
        int row = 0;
        for (Line line : lines) {
            path(panel, line);
            int y = panel.top() + 30 + 16 * row++;
            svg.append(String.format(
                    Locale.ROOT, "<path class=\"%s\" d=\"M%d,%dh26\"/>", line.kind(), panel.left() + 8, y - 4));
            text(panel.left() + 40, y, "start", "soft", line.name());
        }
    }

    private void axes(Panel panel) {
        text(panel.left(), panel.top() - 10, "start", "", panel.title());
        for (double y : roundTicks(panel.fromY(), panel.toY())) {
            svg.append(String.format(
                    Locale.ROOT, "<path class=\"rule\" d=\"M%d,%.1fh%d\"/>", panel.left(), panel.y(y), Panel.WIDE));
            text(panel.left() - 6, panel.y(y) + 4, "end", "soft", Printed.fixed(y, 0));
        }
        int decimals = panel.toX() - panel.fromX() < 20 ? 1 : 0;
        for (double x : roundTicks(panel.fromX(), panel.toX())) {
            text(panel.x(x), panel.top() + Panel.TALL + 28, "middle", "soft", Printed.fixed(x, decimals));
        }
        text(panel.left() + Panel.WIDE, panel.top() + Panel.TALL + 44, "end", "soft", panel.xTitle());
        svg.append(String.format(
                Locale.ROOT,
                "<path class=\"axis\" d=\"M%d,%dh%d\"/>",
                panel.left(),
                panel.top() + Panel.TALL,
                Panel.WIDE));
    }

    private static List<Double> roundTicks(double from, double to) {
        List<Double> scale = Scale.reaching(to - from, null).halves();
        double step = scale.get(1) - scale.get(0);
        List<Double> ticks = new ArrayList<>();
        for (double tick = step * Math.ceil(from / step - 1e-9); tick <= to + 1e-9 * step; tick += step) {
            ticks.add(tick);
        }
        return ticks;
    }

    private void mark(Panel panel, Mark mark) {
        if (mark.x() < panel.fromX() || mark.x() > panel.toX()) {
            return;
        }
        boolean blow = "blow".equals(mark.kind());
        svg.append(String.format(
                Locale.ROOT,
                "<path class=\"%s\" d=\"M%.1f,%dV%d\"/>",
                mark.kind(),
                panel.x(mark.x()),
                panel.top() + Panel.TALL + (blow ? 2 : 0),
                blow ? panel.top() + Panel.TALL + 10 : panel.top()));
        if (!mark.word().isEmpty()) {
            text(panel.x(mark.x()) + 4, panel.top() + Panel.TALL - 6, "start", "soft", mark.word());
        }
    }

    private void path(Panel panel, Line line) {
        svg.append("<path class=\"").append(line.kind()).append("\" d=\"");
        char command = 'M';
        for (At at : line.points()) {
            svg.append(String.format(Locale.ROOT, "%c%.1f,%.1f", command, panel.x(at.x()), panel.y(at.y())));
            command = 'L';
        }
        svg.append("\"/>");
    }

    private void text(double x, double y, String anchor, String kind, String words) {
        svg.append(String.format(
                Locale.ROOT,
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" class=\"%s\">%s</text>",
                x,
                y,
                anchor,
                kind,
                escaped(words)));
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
