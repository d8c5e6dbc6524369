package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.run.Outcome;
import org.shutoffbench.harness.study.PrevailingScan;
import org.shutoffbench.harness.study.PrevailingScan.Ending;
import org.shutoffbench.harness.study.PrevailingScan.Level;
import org.shutoffbench.harness.study.Ranking.Standing;
import org.shutoffbench.harness.study.Strategy;
import org.shutoffbench.harness.study.StudySummary;

/** From which prevailing torque on a counted joint stays loose, told on the median joint of a family. */
final class PrevailingLevels {

    private static final List<String> COUNTING = List.of("blow detection");

    private final StudySummary summary;
    private final Names names;

    PrevailingLevels(StudySummary summary, Names names) {
        this.summary = summary;
        this.names = names;
    }

    /**
     * The level from which a strategy that only counts blows calls the median joint done before it is seated, or else while
     * it is low; and what the nut costs in blows. Empty where no such strategy ran or none of the levels is so high.
     */
    Optional<Finding> finding() {
        for (PrevailingScan scan : summary.prevailingScans()) {
            for (int strategy : countingStrategies()) {
                for (Outcome left : List.of(Outcome.UNSEATED, Outcome.LOW)) {
                    Optional<Level> from = firstOfLastRun(scan, strategy, left);
                    if (from.isPresent()) {
                        return Optional.of(finding(scan, strategy, left, from.get()));
                    }
                }
            }
        }
        return Optional.empty();
    }

    /**
     * A finding.
     *
     * @param heading one sentence without its full stop
     * @param reason why, in whole sentences
     */
    record Finding(String heading, String reason) {}

    private Finding finding(PrevailingScan scan, int strategy, Outcome left, Level from) {
        Ending ending = from.endings().get(strategy);
        String joint = "the median " + names.joints(scan.family()).replaceFirst(" joints$", "");
        String heading = (from.equals(scan.levels().get(0))
                        ? "Even without prevailing torque, "
                        : "From " + nm(from) + " of prevailing torque on, ")
                + names.strategy(strategy) + " stops after " + ending.blows()
                + (left == Outcome.UNSEATED
                        ? " blows before " + joint + " is seated"
                        : " blows and leaves " + joint + " low")
                + ", and calls it done";
        Level none = scan.levels().get(0);
        Level most = scan.levels().get(scan.levels().size() - 1);
        String reason = "Counted on the median joint alone: before the nut touches the joint the tool has struck "
                + blows(none) + " without prevailing torque, " + blows(from) + " at " + nm(from)
                + (from.equals(most) ? "" : " and " + blows(most) + " at " + nm(most))
                + "; a count spent there clamps nothing.";
        return new Finding(heading, reason);
    }

    /** Strategies that listen to blows and nothing else: those set on one joint first, then the worst in rank. */
    private List<Integer> countingStrategies() {
        List<Integer> counting = new ArrayList<>();
        for (Standing standing : summary.ranking().standings()) {
            if (summary.strategies().get(standing.strategy()).channels().equals(COUNTING)) {
                counting.add(0, standing.strategy());
            }
        }
        counting.sort(Comparator.comparing(s -> summary.strategies().get(s).settings() != Strategy.SettingsKind.HOME));
        return counting;
    }

    /** The level from which on every level ends like this or unseated, called done. */
    private static Optional<Level> firstOfLastRun(PrevailingScan scan, int strategy, Outcome left) {
        Optional<Level> first = Optional.empty();
        for (int i = scan.levels().size() - 1; i >= 0; i--) {
            Ending ending = scan.levels().get(i).endings().get(strategy);
            boolean so = ending.silentMiss() && (ending.outcome() == left || ending.outcome() == Outcome.UNSEATED);
            if (!so) {
                return first;
            }
            first = Optional.of(scan.levels().get(i));
        }
        return first;
    }

    /** Every strategy at every level. */
    List<PlainTable> tables() {
        return summary.prevailingScans().stream().map(this::table).toList();
    }

    private PlainTable table(PrevailingScan scan) {
        List<String> heads = new ArrayList<>(List.of("Strategy"));
        List<String> struck = new ArrayList<>(List.of("blows before the nut touches the joint"));
        for (Level level : scan.levels()) {
            heads.add(nm(level));
            struck.add(Integer.toString(level.blowsBeforeSnug()));
        }
        List<List<String>> rows = new ArrayList<>(List.of(struck));
        for (Standing standing : summary.ranking().standings()) {
            List<String> row = new ArrayList<>(List.of(names.strategy(standing.strategy())));
            for (Level level : scan.levels()) {
                row.add(words(level.endings().get(standing.strategy())));
            }
            rows.add(row);
        }
        return new PlainTable(
                "Table of the median joint by prevailing torque, " + names.family(scan.family()),
                "How each strategy left one joint with all other numbers at their medians, and the blows it took",
                heads,
                rows);
    }

    private static String words(Ending ending) {
        return ending.outcome().title() + (ending.verdict() == Verdict.REACHED ? "" : ", not called done") + ", "
                + ending.blows();
    }

    private static String nm(Level level) {
        return Printed.fixed(level.torqueNm(), 0) + " N\u00b7m";
    }

    private static String blows(Level level) {
        return level.blowsBeforeSnug() == 1
                ? "1 blow"
                : level.blowsBeforeSnug() == 0 ? "no blow" : level.blowsBeforeSnug() + " blows";
    }
}
