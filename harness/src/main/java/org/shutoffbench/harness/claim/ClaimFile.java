package org.shutoffbench.harness.claim;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.scenario.JudgedQuantity;
import org.shutoffbench.harness.scenario.file.FileKind;
import org.shutoffbench.harness.scenario.file.Problems;
import org.shutoffbench.harness.scenario.file.Section;
import org.shutoffbench.harness.scenario.file.Tree;
import org.shutoffbench.harness.scenario.file.TreeReader;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.harness.scenario.unit.Quantity;
import org.shutoffbench.harness.statistics.RiskPoint;
import org.shutoffbench.harness.statistics.StandardNormal;

/**
 * Reads claim files. What a claim leaves out is not guessed: it is refused with the question that the seller must answer.
 */
public final class ClaimFile {

    private static final int FORMAT = 1;
    private static final int MANY = 1_000_000;

    private final Problems problems = new Problems();
    private final Section root;

    private ClaimFile(Tree.Branch tree) {
        this.root = new Section(tree, "", problems);
    }

    /**
     * The claim in a file.
     *
     * @throws org.shutoffbench.harness.scenario.file.ScenarioException with everything that is wrong or missing
     */
    public static Claim read(Path file) {
        return new ClaimFile(TreeReader.read(file, FileKind.CLAIM)).claim();
    }

    /** The same from a text; the name stands in messages. */
    public static Claim parse(String name, String text) {
        return new ClaimFile(TreeReader.parse(name, text, FileKind.CLAIM)).claim();
    }

    private Claim claim() {
        if (!root.has("claim")) {
            root.missing("claim", "a claim file begins with the line \"claim: 1\"");
        }
        root.wholeNumber("claim", FORMAT, FORMAT, FORMAT);
        String name = root.name("name");
        if (!root.has("name")) {
            root.missing("name", "give the claim a name");
        }
        JudgedQuantity quantity = quantity();
        double target = positive(
                root,
                "target",
                quantity.dimension(),
                "ask the seller: which value is meant to be reached? Give "
                        + quantity.dimension().title());
        double tolerance = tolerance(target, quantity);
        Double index = null;
        double coverage = Double.NaN;
        if (root.has("index") && root.has("coverage")) {
            root.problem("index", "a claim names a coverage or an index, not both; leave one out");
        } else if (root.has("index")) {
            index = positive(root, "index", Dimension.PURE, "");
        } else {
            coverage = share(
                    root,
                    "coverage",
                    "ask the seller: what share of all joints lies inside the tolerance, or which capability index is"
                            + " promised? Give coverage: 99 % or index: 1.33");
        }
        double confidence = share(
                root, "confidence", "decide how sure you must be before you believe it, for example confidence: 95 %");
        Claim.Population population = population();
        FailureRule failure = failure();
        if (index != null) {
            coverage = 1 - failure.limits() * StandardNormal.survival(3 * index);
        }
        RiskPoint seller = seller();
        Double seconds = root.has("seconds_per_joint") ? positive(root, "seconds_per_joint", Dimension.TIME, "") : null;
        Claim.Gauge gauge = gauge(quantity);
        Claim.MeasuredColumns measured = measured(quantity);
        root.finish();
        if (seller != null && coverage < 1 && seller.failing() >= 1 - coverage) {
            Tree given = root.take("seller");
            problems.add(
                    given == null ? root.place() : given.place(),
                    "seller.failing",
                    "is not below the share that the claim allows, " + ClaimWords.percent(1 - coverage) + " %",
                    "give the smaller share at which the seller wants to be accepted");
        }
        problems.throwIfAny();
        return new Claim(
                String.valueOf(name),
                quantity,
                target,
                target - tolerance,
                target + tolerance,
                coverage,
                index,
                confidence,
                population,
                failure,
                seller,
                seconds,
                gauge,
                measured);
    }

    private JudgedQuantity quantity() {
        if (!root.has("quantity")) {
            root.missing(
                    "quantity",
                    "ask the seller: is it the torque at the joint or the clamp force? One of "
                            + String.join(", ", JudgedQuantity.titles()));
            return JudgedQuantity.CLAMPING_TORQUE;
        }
        return JudgedQuantity.of(
                root.choice("quantity", JudgedQuantity.titles(), JudgedQuantity.CLAMPING_TORQUE.title()));
    }

    /** Half width of the tolerance: a share of the target, or a value of its own. */
    private double tolerance(double target, JudgedQuantity quantity) {
        String question = "ask the seller: within how much of the target? Give a percentage such as 15 % or "
                + quantity.dimension().title();
        if (!root.has("tolerance")) {
            root.missing("tolerance", question);
            return Double.NaN;
        }
        if (root.take("tolerance") instanceof Tree.Text text) {
            boolean relative = text.value().strip().endsWith("%");
            double found = positive(root, "tolerance", relative ? Dimension.PURE : quantity.dimension(), question);
            double half = relative ? found * target : found;
            if (half >= target) {
                root.problem("tolerance", "a tolerance below the target itself belongs here");
            }
            return half;
        }
        root.problem("tolerance", question);
        return Double.NaN;
    }

    private Claim.Population population() {
        Section section = root.section("population");
        if (section == null) {
            if (!root.has("population")) {
                root.missing(
                        "population",
                        "ask the seller: on which joints, from how many lots, with how many tools, at which battery"
                                + " states? Give {families: any, lots: 10, tools: 3, battery: [80 %, 100 %]}");
            }
            return new Claim.Population(List.of(), 0, 0, 1, 1);
        }
        List<String> families = families(section);
        int lots = number(section, "lots", "ask the seller: over how many lots does it hold?");
        int tools = number(section, "tools", "ask the seller: for how many tools does it hold, or for one?");
        double[] battery = battery(section);
        section.finish();
        return new Claim.Population(families, lots, tools, battery[0], battery[1]);
    }

    private List<String> families(Section section) {
        String question = "ask the seller: on which families of joints? Give a list of names, or any";
        Tree value = section.take("families");
        List<String> names = new ArrayList<>();
        if (value == null) {
            section.missing("families", question);
        } else if (value instanceof Tree.Sequence list && !list.items().isEmpty()) {
            for (Tree item : list.items()) {
                if (item instanceof Tree.Text text && Section.isName(text.value())) {
                    names.add(text.value());
                } else {
                    section.problem("families", item, question);
                }
            }
        } else if (!(value instanceof Tree.Text text && text.value().equals("any"))) {
            section.problem("families", value, question);
        }
        return names;
    }

    /** A whole number from 1, or 0 for any. */
    private static int number(Section section, String key, String question) {
        Tree value = section.take(key);
        if (value == null) {
            section.missing(key, question + " Give a whole number, or any");
            return 0;
        }
        if (value instanceof Tree.Text text && text.value().equals("any")) {
            return 0;
        }
        return (int) section.wholeNumber(key, 1, MANY, 1);
    }

    private double[] battery(Section section) {
        String question = "ask the seller: down to which battery state? Give two shares of the nominal voltage, such as"
                + " [80 %, 100 %]";
        Tree value = section.take("battery");
        if (value == null) {
            section.missing("battery", question);
        } else if (value instanceof Tree.Sequence list
                && list.items().size() == 2
                && list.items().get(0) instanceof Tree.Text from
                && list.items().get(1) instanceof Tree.Text to) {
            try {
                double least = Quantity.parse(from.value(), Dimension.PURE).si();
                double most = Quantity.parse(to.value(), Dimension.PURE).si();
                if (least > 0 && least <= most && most <= 1) {
                    return new double[] {least, most};
                }
            } catch (IllegalArgumentException notANumber) {
                // told below
            }
            section.problem("battery", value, question);
        } else {
            section.problem("battery", value, question);
        }
        return new double[] {1, 1};
    }

    private FailureRule failure() {
        if (!root.has("failure")) {
            root.missing(
                    "failure",
                    "ask the seller: which joints count against the claim? One of "
                            + String.join(", ", FailureRule.titles()));
            return FailureRule.OUTSIDE;
        }
        return FailureRule.of(root.choice("failure", FailureRule.titles(), FailureRule.OUTSIDE.title()));
    }

    private @Nullable RiskPoint seller() {
        Section section = root.section("seller");
        if (section == null) {
            return null;
        }
        double failing = share(section, "failing", "give the failing share at which the seller wants to be accepted");
        double risk = share(section, "risk", "give the risk of being rejected there, for example 5 %");
        section.finish();
        return failing > 0 && risk > 0 ? new RiskPoint(failing, risk) : null;
    }

    private Claim.@Nullable Gauge gauge(JudgedQuantity quantity) {
        Section section = root.section("gauge");
        if (section == null) {
            return null;
        }
        double u = positive(
                section,
                "uncertainty",
                quantity.dimension(),
                "give the expanded uncertainty of a reading from the gauge's certificate");
        double k = positive(
                section,
                "coverage_factor",
                Dimension.PURE,
                "give the coverage factor that the certificate names, often 2");
        Double repeatability =
                section.has("repeatability") ? positive(section, "repeatability", quantity.dimension(), "") : null;
        section.finish();
        return new Claim.Gauge(u, k, repeatability);
    }

    private Claim.@Nullable MeasuredColumns measured(JudgedQuantity quantity) {
        Section section = root.section("measured");
        if (section == null) {
            return null;
        }
        String value = required(section, "value", "name the column that holds the " + quantity.title());
        String unit = required(section, "unit", "say in which unit the whole column is");
        String joint = required(section, "joint", "name the column that says which joint it was");
        Claim.MeasuredColumns columns = new Claim.MeasuredColumns(
                value,
                unit,
                joint,
                section.has("lot") ? section.text("lot") : null,
                section.has("family") ? section.text("family") : null,
                section.has("reading") ? section.text("reading") : null,
                section.has("called_done") ? section.text("called_done") : null);
        if (!unit.isEmpty()) {
            try {
                Quantity.parse("1 " + unit, quantity.dimension());
            } catch (IllegalArgumentException wrong) {
                section.problem("unit", String.valueOf(wrong.getMessage()));
            }
        }
        Set<String> named = new HashSet<>();
        for (String column : columns.named()) {
            if (!named.add(column)) {
                section.problem(
                        "value", "the column \"" + column + "\" is named twice; every kind of entry has its own");
            }
        }
        section.finish();
        return columns;
    }

    private static String required(Section section, String key, String remedy) {
        if (!section.has(key)) {
            section.missing(key, remedy);
            return "";
        }
        String text = section.text(key);
        return text == null ? "" : text;
    }

    /** A value above 0 in SI; NaN where it is missing or wrong, which is told. */
    private static double positive(Section section, String key, Dimension dimension, String question) {
        Tree value = section.take(key);
        if (value == null) {
            section.missing(key, question);
            return Double.NaN;
        }
        if (!(value instanceof Tree.Text text)) {
            section.problem(key, value, "give " + dimension.title());
            return Double.NaN;
        }
        try {
            double si = Quantity.parse(text.value(), dimension).si();
            if (si > 0) {
                return si;
            }
            section.problem(key, value, "a value above 0 belongs here");
        } catch (IllegalArgumentException wrong) {
            section.problem(key, value, String.valueOf(wrong.getMessage()));
        }
        return Double.NaN;
    }

    /** A share between 0 and 1, neither included; NaN where it is missing or wrong, which is told. */
    private static double share(Section section, String key, String question) {
        double found = positive(section, key, Dimension.PURE, question);
        if (found >= 1) {
            section.problem(key, "a share below 100 % belongs here: no test can show that all joints do");
            return Double.NaN;
        }
        return found;
    }
}
