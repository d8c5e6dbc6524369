package org.shutoffbench.harness.claim;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.claim.ClaimPage.Grid;
import org.shutoffbench.harness.claim.ClaimPage.Part;
import org.shutoffbench.harness.claim.Measurements.MeasuredJoint;
import org.shutoffbench.harness.statistics.Interval;
import org.shutoffbench.harness.statistics.PairedRateDifference;
import org.shutoffbench.harness.statistics.RateBound;
import org.shutoffbench.harness.statistics.StandardNormal;

/** What measured joints say of one or more claims, in words and tables; several files or claims stand side by side. */
final class JudgementPage {

    private static final double INTERVALS = 0.95;

    private final ClaimJudgement judged;
    private final Claim claim;
    private final ClaimWords words;
    private final List<MeasuredJoint> joints;
    private final @Nullable GuardBand guard;

    private JudgementPage(ClaimJudgement judged) {
        this.judged = judged;
        this.claim = judged.claim();
        this.words = new ClaimWords(claim);
        this.joints = judged.joints();
        this.guard = judged.guard();
    }

    /** The page of at least one judgement. */
    static ClaimPage of(List<ClaimJudgement> judgements) {
        List<Part> parts = new ArrayList<>();
        boolean several = judgements.size() > 1;
        if (several) {
            parts.add(sideBySide(judgements));
        }
        List<String> titles = new ArrayList<>();
        for (ClaimJudgement judged : judgements) {
            JudgementPage page = new JudgementPage(judged);
            titles.add(page.title(several ? " by " + judged.file() : ""));
            String who = several ? ": " + judged.claim().name() + ", " + judged.file() : "";
            page.parts()
                    .forEach(part ->
                            parts.add(new Part(part.heading() + who, part.sentences(), part.table(), part.picture())));
        }
        return new ClaimPage("Judgement on measured joints", String.join("; ", titles), parts);
    }

    private static Part sideBySide(List<ClaimJudgement> judgements) {
        List<List<String>> rows = new ArrayList<>();
        for (ClaimJudgement judged : judgements) {
            rows.add(List.of(
                    judged.claim().name() + ", " + judged.file(),
                    judged.unsoundGauge()
                            ? "no verdict"
                            : judged.answer().toString().toLowerCase(Locale.ROOT),
                    judged.outside() + " of " + judged.joints().size(),
                    ClaimWords.percent(judged.lower()) + " %",
                    ClaimWords.percent(judged.upper()) + " %",
                    ClaimWords.percent(judged.claim().allowed()) + " %"));
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(
                "Each judged by itself. Bounds of the failing share as the verdict uses them, each one-sided with the"
                        + " confidence of its claim.");
        for (int i = 1; i < judgements.size(); i++) {
            String paired = paired(judgements.get(0), judgements.get(i));
            if (paired != null) {
                sentences.add(paired);
            }
        }
        return Part.of("Side by side", sentences)
                .with(new Grid(List.of("claim and file", "verdict", "fail", "at least", "at most", "allowed"), rows));
    }

    /** The difference on joints that both files name, where there are any and the claim is the same. */
    private static @Nullable String paired(ClaimJudgement first, ClaimJudgement second) {
        if (first.file().equals(second.file()) || !first.claim().equals(second.claim())) {
            return null;
        }
        Map<String, MeasuredJoint> byName = new LinkedHashMap<>();
        first.joints().forEach(joint -> byName.put(joint.name(), joint));
        long n = 0;
        long onlyFirst = 0;
        long onlySecond = 0;
        for (MeasuredJoint joint : second.joints()) {
            MeasuredJoint other = byName.get(joint.name());
            if (other != null && Objects.equals(other.family(), joint.family())) {
                boolean firstFails = first.result(other) != GuardBand.Result.INSIDE;
                boolean secondFails = second.result(joint) != GuardBand.Result.INSIDE;
                n++;
                onlyFirst += firstFails && !secondFails ? 1 : 0;
                onlySecond += secondFails && !firstFails ? 1 : 0;
            }
        }
        if (n == 0) {
            return first.file() + " and " + second.file()
                    + " name no joint in common, so they are not compared in pairs.";
        }
        Interval bounds = PairedRateDifference.bounds(onlyFirst, onlySecond, n, INTERVALS);
        String apart = bounds.low() > 0 || bounds.high() < 0 ? "" : "; that does not tell them apart";
        return "On the " + n + " joints that both files name: " + onlyFirst + " fail in " + first.file() + " alone, "
                + onlySecond + " in " + second.file() + " alone. Share failing in the first less that in the second "
                + points((double) (onlyFirst - onlySecond) / n) + " points, 95 % bounds " + points(bounds.low())
                + " to "
                + points(bounds.high()) + apart + ". Undecided joints count as failing here.";
    }

    private static String points(double share) {
        return String.format(Locale.ROOT, "%+.1f", 100 * share).replace('-', '\u2212');
    }

    private List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        parts.add(Part.of("The claim", words.claim()));
        parts.add(evidence());
        Part families = families();
        if (families != null) {
            parts.add(families);
        }
        Part spread = spread();
        if (spread != null) {
            parts.add(spread);
        }
        Part gauge = gauge();
        if (gauge != null) {
            parts.add(gauge);
        }
        if (judged.simulated() != null) {
            parts.add(beside(judged.simulated()));
        }
        parts.add(Part.of("What was not tested", untested()));
        return parts;
    }

    private String title(String by) {
        String name = "\"" + claim.name() + "\"" + by;
        if (judged.unsoundGauge()) {
            return name + " cannot be judged with this gauge: it repeats too badly";
        }
        return switch (judged.answer()) {
            case SUPPORTED ->
                name + " is supported by " + joints.size() + " measured joints"
                        + (judged.byVariables() ? ", by their mean and spread" : "");
            case REFUTED -> {
                List<String> failing = judged.families(GuardBand.Result.OUTSIDE);
                yield name + " is refuted: " + judged.outside() + " of " + joints.size() + " measured joints fail"
                        + (failing.isEmpty() ? "" : ", too many of " + String.join(", ", failing));
            }
            case UNDECIDED -> name + " is undecided: " + needed();
        };
    }

    private String needed() {
        if (judged.byVariables()) {
            return neededByVariables();
        }
        if (judged.upper() <= claim.allowed()) {
            return "all joints together hold it, but it is not shown of "
                    + String.join(", ", judged.families(GuardBand.Result.UNDECIDED)) + "; measure more "
                    + (judged.clustered() ? "lots" : "joints") + " there";
        }
        if (judged.clustered()) {
            return "joints of one lot are not independent; measure joints from more lots";
        }
        double allowed = claim.allowed() * joints.size();
        if (judged.outside() <= allowed && judged.outside() + judged.undecided() > allowed) {
            return "the gauge leaves " + judged.undecided() + " of " + joints.size()
                    + " joints undecided, too many to say; measure with a better gauge";
        }
        return more(
                judged.outside() > allowed ? judged.outside() : judged.outside() + judged.undecided(), joints.size());
    }

    private String more(long counted, long n) {
        long more = RateBound.moreToSettle(counted, n, claim.allowed(), claim.confidence());
        return more < 0
                ? "the share that fails lies at the limit itself, no number of joints would settle it"
                : "need about " + ClaimWords.whole(more) + " more joints at the rate seen";
    }

    private String neededByVariables() {
        for (MeasuredSpread spread : judged.spreads()) {
            String said = spread.family() + ": ";
            switch (spread.finding()) {
                case TOO_FEW -> {
                    return said + spread.n() + " joints are too few to see whether values are normal";
                }
                case NOT_NORMAL -> {
                    return said + "values are not normal, so mean and spread say nothing; count failures";
                }
                case SHARES_LOTS -> {
                    return said + "joints of one lot are not independent; measure one joint of each lot";
                }
                case TOO_NEAR -> {
                    return said + "the mean lies " + ClaimWords.digits(spread.distance())
                            + " standard deviations from a limit, " + ClaimWords.digits(spread.k()) + " are needed of "
                            + spread.n() + " joints";
                }
                case KEEPS_DISTANCE -> {}
            }
        }
        return "a family that the claim names was not measured";
    }

    private Part evidence() {
        List<String> sentences = new ArrayList<>();
        sentences.add(joints.size() + " joints: " + judged.outside() + " fail"
                + (guard == null ? "" : ", " + judged.undecided() + " undecided within the gauge's uncertainty")
                + ". Failing share at most "
                + ClaimWords.percent(judged.upper()) + " %, at least " + ClaimWords.percent(judged.lower())
                + " %, each with "
                + ClaimWords.percent(claim.confidence()) + " % confidence; allowed "
                + ClaimWords.percent(claim.allowed()) + " %.");
        if (judged.clustered()) {
            sentences.add("The joints come from " + ClaimJudgement.lots(joints)
                    + " lots; all bounds, those of single families too, count joints of one lot only as far as they are"
                    + " independent.");
        }
        if (guard == null) {
            sentences.add("The claim states no gauge, so readings are taken as the truth.");
        }
        return Part.of("The evidence", sentences);
    }

    private @Nullable Part families() {
        List<String> names = joints.stream()
                .map(MeasuredJoint::family)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
        if (names.isEmpty()) {
            return null;
        }
        List<List<String>> rows = new ArrayList<>();
        for (String family : names) {
            List<MeasuredJoint> own = judged.ofFamily(family);
            long lots = ClaimJudgement.lots(own);
            rows.add(List.of(
                    family,
                    Integer.toString(own.size()),
                    lots == 0 ? "not told" : Long.toString(lots),
                    Long.toString(own.stream()
                            .filter(j -> judged.result(j) != GuardBand.Result.INSIDE)
                            .count()),
                    ClaimWords.percent(judged.upper(own)) + " %"));
        }
        List<String> sentences = new ArrayList<>();
        sentences.add("Every family is judged by its own joints: supported where the bound \"at most\" lies within the "
                + ClaimWords.percent(claim.allowed()) + " % allowed, on each of them"
                + (guard == null ? "." : "; undecided joints count as failing."));
        String shift = meanShift();
        if (shift != null) {
            sentences.add(shift);
        }
        return Part.of("By family", sentences)
                .with(new Grid(List.of("family", "joints", "lots", "fail", "at most"), rows));
    }

    private @Nullable Part spread() {
        List<MeasuredSpread> spreads = judged.spreads();
        if (spreads.isEmpty() || joints.size() < 2) {
            return null;
        }
        List<List<String>> rows = new ArrayList<>();
        for (MeasuredSpread spread : spreads) {
            boolean known = spread.n() > 1 && spread.sd() > 0;
            Interval mean = known ? spread.meanBounds(INTERVALS) : null;
            rows.add(List.of(
                    spread.family(),
                    Integer.toString(spread.n()),
                    words.value(spread.mean())
                            + (mean == null
                                    ? ""
                                    : " (" + words.value(mean.low()) + " to " + words.value(mean.high()) + ")"),
                    known ? words.value(spread.sd()) : "",
                    known ? ClaimWords.digits(spread.distance()) : "",
                    Double.isNaN(spread.k()) ? "" : ClaimWords.digits(spread.k()),
                    Double.isNaN(spread.normality())
                            ? "too few"
                            : spread.normality() < 0.001 ? "below 0.001" : ClaimWords.digits(spread.normality()),
                    says(spread)));
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(
                judged.byVariables()
                        ? "The command asked for a verdict by variables: support comes from mean and spread alone. Too many"
                                + " failing joints refute all the same."
                        : "These figures decide nothing here; --by variables lets them support the claim.");
        sentences.add("k: distance of the mean to the nearer limit"
                + (guard == null ? "" : ", less the gauge's uncertainty,")
                + " in standard deviations s, that shows the claim for as many joints, if values are normal (k method). p:"
                + " probability of values as odd as these where they are normal (Anderson-Darling); below 0.05 they are not"
                + " taken as normal. A p above it does not prove them so: a rare kind of joints that the sample missed shows"
                + " in no figure of it.");
        return Part.of("Mean and spread", sentences)
                .with(new Grid(List.of("joints", "n", "mean (95 %)", "s", "distance / s", "k", "p", "says"), rows));
    }

    private static String says(MeasuredSpread spread) {
        return switch (spread.finding()) {
            case TOO_FEW -> "nothing: too few";
            case NOT_NORMAL -> "nothing: not normal";
            case SHARES_LOTS -> "nothing: lots shared";
            case TOO_NEAR -> "not shown";
            case KEEPS_DISTANCE -> "shown, if normal";
        };
    }

    /** Families that each repeat well enough about their own mean, and together do not hold the tolerance. */
    private @Nullable String meanShift() {
        double half = (claim.highest() - claim.lowest()) / 2;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double together = 0;
        int n = 0;
        List<MeasuredSpread> spreads = judged.spreads();
        for (MeasuredSpread s : spreads) {
            if (s.n() < 2 || 2 * StandardNormal.survival(half / s.sd()) > claim.allowed()) {
                return null;
            }
            least = Math.min(least, s.mean());
            most = Math.max(most, s.mean());
            together += s.n()
                    * (StandardNormal.cdf((claim.lowest() - s.mean()) / s.sd())
                            + StandardNormal.survival((claim.highest() - s.mean()) / s.sd()));
            n += s.n();
        }
        if (spreads.size() < 2 || together / n <= claim.allowed()) {
            return null;
        }
        return "A mean shift between families: each repeats within the tolerance about its own mean, but the means lie "
                + words.value(most - least) + " apart (" + ClaimWords.percent((most - least) / claim.target())
                + " % of the target), and together they do not hold it. A figure given per joint type hides this.";
    }

    private @Nullable Part gauge() {
        List<String> sentences = new ArrayList<>();
        Double repeat = judged.repeatability();
        if (repeat != null && joints.size() > 1) {
            double share = repeat / judged.total();
            sentences.add("Repeated readings of one joint scatter by " + words.value(repeat) + ", "
                    + ClaimWords.percent(Math.min(1, share)) + " % of the total spread"
                    + (judged.unsoundGauge()
                            ? ": the gauge is unsound (more than 30 %, common practice). What looks like scatter of the"
                                    + " joints may be the gauge's; no verdict is given. Repair the gauge, then measure again."
                            : "; up to 30 % is common practice."));
        }
        if (guard != null) {
            sentences.addAll(guard.part(words).sentences());
        }
        return sentences.isEmpty() ? null : Part.of("The gauge", sentences);
    }

    private Part beside(ClaimJudgement.Simulated bank) {
        String what = bank.what() + ": " + bank.failing() + " of " + bank.n() + " simulated joints fail. ";
        return Part.of(
                "Simulated joints beside them",
                bank.weight() == 0
                        ? what + "They do not enter the verdict (weight 0)."
                        : what + "They enter the bounds with a weight of " + ClaimWords.digits(bank.weight())
                                + " of a measured joint each, because the command asked for it: the verdict is no longer one"
                                + " of measurements alone.");
    }

    private List<String> untested() {
        List<String> sentences = new ArrayList<>();
        Claim.Population p = claim.population();
        TreeSet<String> seen = new TreeSet<>();
        joints.stream().map(MeasuredJoint::family).filter(Objects::nonNull).forEach(seen::add);
        if (p.anyFamily()) {
            sentences.add("The claim is of any joint; measured were "
                    + (seen.isEmpty() ? "joints whose family the file does not name" : String.join(", ", seen)) + ".");
        } else {
            List<String> missing =
                    p.families().stream().filter(f -> !seen.contains(f)).toList();
            if (!missing.isEmpty()) {
                sentences.add("No measured joint is named as one of " + String.join(", ", missing) + ".");
            }
        }
        long lots = ClaimJudgement.lots(joints);
        if (p.lots() == 0 || lots < p.lots()) {
            sentences.add((lots == 0 ? "The file names no lots" : lots + " lots were measured") + "; the claim is of "
                    + ClaimWords.lots(p.lots()) + ".");
        }
        sentences.add("Tools and battery states are not in the file: the claim is of "
                + ClaimWords.tools(p.tools()) + ", battery "
                + ClaimWords.percent(p.batteryFrom()) + " to " + ClaimWords.percent(p.batteryTo()) + " %.");
        return sentences;
    }
}
