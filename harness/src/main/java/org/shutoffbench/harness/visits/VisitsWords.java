package org.shutoffbench.harness.visits;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.shutoffbench.harness.scenario.Costs;

/** The report in words and plain tables, every symbol defined where it stands. */
public final class VisitsWords {

    private static final String UNKNOWN = "unknown";

    private final VisitsReport report;
    private final Costs costs;

    public VisitsWords(VisitsReport report) {
        this.report = report;
        this.costs = report.costs();
    }

    /** Everything, for a console or a file. */
    public String text() {
        List<String> lines = new ArrayList<>();
        lines.add("One visit or two: " + report.strategy() + ", " + report.scenario());
        lines.add("");
        lines.add("Can the audit be left out? " + answer());
        lines.add("");
        lines.addAll(table(familyRows()));
        lines.addAll(symbols());
        lines.add("");
        lines.addAll(table(modeRows()));
        lines.add(
                "An audit of torque sees torque: a joint with the right torque and too little clamp force passes it.");
        lines.add("");
        lines.addAll(table(wayRows()));
        lines.add(howPut());
        lines.add("");
        lines.addAll(job());
        lines.add(bounds());
        return String.join("\n", lines) + "\n";
    }

    /** The answer in one sentence or two. */
    public String answer() {
        return switch (report.answer()) {
            case DEFENSIBLE ->
                "Defensible from here: on every family the rate of joints left low lies below p*, the rate from"
                        + " which on an audit of every joint would pay.";
            case NOT_YET -> notYet();
            case NO -> no();
        };
    }

    private String no() {
        String pays = families(f -> f.answer() == Answer.NO && f.auditPays());
        String blind = families(f -> f.answer() == Answer.NO && !f.auditPays());
        String text = "No: ";
        if (!pays.isEmpty()) {
            text += "on " + pays
                    + " the rate of joints left low lies above p*, the rate from which on an audit of every joint pays";
        }
        if (!blind.isEmpty()) {
            text += (pays.isEmpty() ? "" : "; ") + "on " + blind
                    + " too many joints stay low, but this audit is not shown to find enough of them to pay: another check"
                    + " is needed, not none";
        }
        return text + ".";
    }

    private String notYet() {
        FamilyVisits neediest = report.neediest();
        if (neediest == null) {
            return "Not yet.";
        }
        String needed = neediest.moreJoints() >= CleanJoints.MOST
                ? "no number of clean joints that anybody tightens"
                : whole(neediest.moreJoints()) + " more clean joints of " + neediest.family();
        String families = families(f -> f.answer() == Answer.NOT_YET);
        return "Not yet: " + needed + " would settle it" + (families.contains(",") ? "; open on " + families : "")
                + ".";
    }

    private String families(Predicate<FamilyVisits> which) {
        return String.join(
                ", ",
                report.families().stream()
                        .filter(which)
                        .map(FamilyVisits::family)
                        .toList());
    }

    private List<List<String>> familyRows() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "family",
                "called done",
                "p, % left low",
                "D, % detected",
                "r, % falsely rejected",
                "p*, %",
                "p* at D = 1, %",
                "answer"));
        for (FamilyVisits f : report.families()) {
            rows.add(List.of(
                    f.family(),
                    whole(f.called()) + " of " + whole(f.joints()),
                    percent(f.missed()),
                    percent(f.detection()),
                    percent(f.falseRejection()),
                    threshold(f.threshold()),
                    threshold(f.perfect()),
                    f.answer().title() + (f.moreJoints() > 0 ? ": " + more(f.moreJoints()) : "")));
        }
        return rows;
    }

    private static String more(long joints) {
        return joints >= CleanJoints.MOST ? "no number settles it" : whole(joints) + " more clean joints";
    }

    /** The formula and what stands in it. */
    public List<String> symbols() {
        String money = costs.currency();
        return List.of(
                "p* = (c_a + r c_r) / (D (c_f - c_r) + r c_r), the rate of joints left low from which on an audit of every"
                        + " joint costs less than none",
                "  p    share of the joints called done that are low or unseated",
                "  D    share of those that the audit rejects",
                "  r    share of the other joints called done that the audit rejects",
                "  c_a  one audit: " + seconds(costs.audit().si()) + " of labour, "
                        + amount(report.threshold().auditCost()) + " " + money,
                "  c_r  one rework: " + seconds(costs.rework().si()) + " of labour and parts, "
                        + amount(report.threshold().reworkCost()) + " " + money,
                "  c_f  one joint that stays low: " + amount(report.threshold().escapeCost()) + " " + money);
    }

    private List<List<String>> modeRows() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("what is wrong", "joints", "% that the audit rejects"));
        for (VisitsReport.ModeRow mode : report.modes()) {
            rows.add(List.of(mode.mode(), whole(mode.joints()), percent(mode.rejected())));
        }
        return rows;
    }

    private List<List<String>> wayRows() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "per joint, families in equal shares", "seconds", costs.currency(), "% put right", "% left low"));
        for (Way way : report.ways()) {
            rows.add(List.of(
                    way.title(),
                    amount(way.seconds()),
                    amount(way.cost()),
                    percent(way.rework()),
                    percent(way.leftLow())));
        }
        return rows;
    }

    private String howPut() {
        return "Sample: " + costs.sampleSize() + " of a lot of " + whole(costs.lot())
                + " joints; one rejection, and the rest of the lot is audited. A joint that the tool does not call done is"
                + " put right at once; rework is taken to succeed.";
    }

    private List<String> job() {
        Job job = report.job();
        return List.of(
                "A job of " + whole(job.joints()) + " joints, families in equal shares, in expectation:",
                "  labour saved by leaving out the audit of every joint: " + amount(job.savedHours()) + " hours",
                "  the risk it carries: " + amount(job.uncaught())
                        + " more joints stay low, which the audit would have caught",
                "  joints left low: " + amount(job.leftLowOnePass()) + " after one pass, "
                        + amount(job.leftLowAudited()) + " after an audit of every joint");
    }

    private String bounds() {
        String level = amount(100 * report.confidence());
        return "In brackets: bounds that hold together with at least " + level
                + " % for the answer (all families), and for costs and job; exact intervals, propagated to their worst"
                + " corners. Failures by kind: " + level + " % each. Simulated joints, assumed auditor.";
    }

    /** A share in percent with its bounds. */
    public static String percent(Bounded share) {
        return estimate(share, 100) + " (" + number(100 * share.low()) + " to " + number(100 * share.high()) + ")";
    }

    /** p* in percent; beyond 100 no audit pays. */
    public static String threshold(Bounded rate) {
        return (Double.isNaN(rate.estimate()) ? UNKNOWN : atMostAll(rate.estimate())) + " (" + atMostAll(rate.low())
                + " to " + atMostAll(rate.high()) + ")";
    }

    private static String atMostAll(double rate) {
        return rate > 1 ? "over 100" : number(100 * rate);
    }

    private static String amount(Bounded value) {
        return estimate(value, 1) + " (" + number(value.low()) + " to " + number(value.high()) + ")";
    }

    private static String amount(double value) {
        return number(value);
    }

    private static String estimate(Bounded value, double factor) {
        return Double.isNaN(value.estimate()) ? UNKNOWN : number(factor * value.estimate());
    }

    private static String seconds(double seconds) {
        return number(seconds) + " s";
    }

    private static String whole(long number) {
        return String.format(Locale.ROOT, "%,d", number);
    }

    /** Three significant digits, whole from 1,000 on. */
    private static String number(double value) {
        if (Math.abs(value) >= 1000) {
            return whole(Math.round(value));
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(3, RoundingMode.HALF_EVEN));
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static List<String> table(List<List<String>> rows) {
        int columns = rows.get(0).size();
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int c = 0; c < columns; c++) {
                widths[c] = Math.max(widths[c], row.get(c).length());
            }
        }
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int c = 0; c < columns; c++) {
                line.append(row.get(c)).append(" ".repeat(widths[c] - row.get(c).length() + 2));
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }
}
