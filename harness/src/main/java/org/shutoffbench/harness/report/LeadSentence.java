package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.shutoffbench.harness.study.CellSummary;
import org.shutoffbench.harness.study.Headline;
import org.shutoffbench.harness.study.Ranking.WorstFamilyDifference;
import org.shutoffbench.harness.study.Rate;
import org.shutoffbench.harness.study.StudySummary;

/**
 * The sentence that opens a report: who did best on the worst family, as far as the data tell strategies apart, then the
 * worst silent miss. None and all are written as counts; so is every rate of fewer than 50 joints.
 */
final class LeadSentence {

    private static final int FEW = 50;
    private static final int DIFFERENCES_SPELT_OUT = 1;
    private static final int NAMES_SPELT_OUT = 6;

    private final StudySummary summary;
    private final Names names;
    private final List<Span> spans = new ArrayList<>();

    private LeadSentence(StudySummary summary, Names names) {
        this.summary = summary;
        this.names = names;
    }

    /** The lead, strategy names marked. */
    static List<Span> of(StudySummary summary, Names names) {
        LeadSentence lead = new LeadSentence(summary, names);
        lead.finding();
        lead.silentMiss();
        lead.say(".");
        Span first = lead.spans.get(0);
        lead.spans.set(0, new Span(Printed.capital(first.text()), first.name()));
        return List.copyOf(lead.spans);
    }

    /** The small print under the lead: differences with their bounds, and what intervals are meant. */
    static String note(StudySummary summary, Names names) {
        return new LeadSentence(summary, names).note();
    }

    private void finding() {
        Headline headline = summary.headline();
        Rate worst = headline.worst();
        switch (headline.finding()) {
            case SEPARATED -> {
                leaders();
                say(" brought " + atLeast(worst) + " into the window on every family");
            }
            case INSEPARABLE -> {
                leaders();
                say(" cannot be told apart: each brought " + atLeast(lowestOfLeaders()));
                say(" into the window on every family");
            }
            case ALONE -> {
                leaders();
                say(" brought " + atLeast(worst) + " into the window on every family, compared with no other strategy");
            }
            case NONE_SERVES -> {
                say("No strategy served every family");
                if (worst != null && worst.count() == 0) {
                    say(": each brought none of " + worst.n() + " joints into the window on some family");
                } else if (worst != null && !headline.leaders().isEmpty()) {
                    say(": the best, ");
                    leader();
                    say(", brought " + share(worst) + " " + names.joints(headline.worstFamily()) + " into the window");
                }
            }
            case TOO_FEW -> say("Too few joints to rank: fewer than " + FEW + " ran in some cells");
            case NOTHING_RAN -> say("No strategy ran on every family, so none is ranked");
        }
    }

    private void leader() {
        spans.add(Span.name(names.strategy(summary.headline().leaders().get(0))));
    }

    private void leaders() {
        List<Integer> leaders = summary.headline().leaders();
        List<String> together = names.together(leaders);
        list(
                together.size() > 1
                        ? together
                        : leaders.stream().map(names::strategy).toList());
    }

    private void list(List<String> strategies) {
        for (int i = 0; i < strategies.size(); i++) {
            if (i > 0) {
                say(i == strategies.size() - 1 ? " and " : ", ");
            }
            spans.add(Span.name(strategies.get(i)));
        }
    }

    private void silentMiss() {
        Headline.SilentMiss miss = summary.headline().silentMiss();
        if (summary.headline().finding() == Headline.Finding.NOTHING_RAN && miss == null) {
            return;
        }
        say("; ");
        if (miss == null || miss.rate().count() == 0) {
            say("no strategy called a low or unseated joint done");
            return;
        }
        if (miss.rate().count() == miss.rate().n()) {
            List<String> all = names.together(asBad(miss));
            int spelt = all.size() <= NAMES_SPELT_OUT ? all.size() : NAMES_SPELT_OUT - 1;
            list(
                    spelt == all.size()
                            ? all
                            : Stream.concat(
                                            all.subList(0, spelt).stream(),
                                            Stream.of((all.size() - spelt) + " other strategies"))
                                    .toList());
            say(" brought none of " + miss.rate().n() + " " + names.joints(miss.family())
                    + " into the window and called all of them done");
        } else {
            spans.add(Span.name(names.strategy(miss.strategy())));
            say(" called " + share(miss.rate()) + " " + names.joints(miss.family())
                    + " done while they were low or unseated");
        }
    }

    /** The strategies that called every joint of the family done while it was low or unseated, the named one first. */
    private List<Integer> asBad(Headline.SilentMiss miss) {
        List<Integer> found = new ArrayList<>(List.of(miss.strategy()));
        for (CellSummary cell : summary.cells()) {
            if (cell.family() == miss.family()
                    && cell.strategy() != miss.strategy()
                    && cell.rates() != null
                    && cell.rates().silentMiss().count()
                            == cell.rates().silentMiss().n()) {
                found.add(cell.strategy());
            }
        }
        return found;
    }

    private String note() {
        List<String> parts = new ArrayList<>();
        List<WorstFamilyDifference> differences = summary.headline().differences();
        boolean inseparable = summary.headline().finding() == Headline.Finding.INSEPARABLE;
        for (WorstFamilyDifference d : differences.subList(0, Math.min(DIFFERENCES_SPELT_OUT, differences.size()))) {
            parts.add("Difference between " + names.strategy(d.first()) + " and " + names.strategy(d.second()) + " on "
                    + names.family(d.family()) + ": " + Printed.points(d.difference()) + " points, " + confidence()
                    + " % bounds " + Printed.points(d.low()) + " to " + Printed.points(d.high())
                    + ", paired on the same " + d.n() + " joints.");
        }
        if (differences.size() > DIFFERENCES_SPELT_OUT) {
            parts.add((differences.size() - DIFFERENCES_SPELT_OUT) + " more in the table of comparisons.");
        }
        if (inseparable) {
            parts.add("More joints may separate them.");
        }
        parts.add("Rates are per joint run; intervals " + confidence() + " %, "
                + summary.methods().rates().title() + ".");
        return String.join(" ", parts);
    }

    private String confidence() {
        return Printed.level(summary.methods().confidence());
    }

    private Rate lowestOfLeaders() {
        return summary.ranking().standings().stream()
                .filter(s -> summary.headline().leaders().contains(s.strategy()) && s.inWindow() != null)
                .map(s -> java.util.Objects.requireNonNull(s.inWindow()))
                .min(java.util.Comparator.comparingDouble(Rate::estimate))
                .orElseThrow();
    }

    private static String atLeast(@org.jspecify.annotations.Nullable Rate worst) {
        if (worst == null) {
            throw new IllegalStateException("a leader without a rate");
        }
        if (worst.count() == worst.n()) {
            return "all joints (" + worst.n() + " of " + worst.n() + " in its worst family)";
        }
        return "at least " + share(worst) + " joints";
    }

    /** "99.6 % of", "none of 500", "all 500", or counts where joints are few. */
    private static String share(Rate rate) {
        if (rate.count() == 0 || rate.count() == rate.n() || rate.n() < FEW) {
            return Printed.countOf(rate.count(), rate.n());
        }
        return Printed.percent(rate) + " % of";
    }

    private void say(String text) {
        spans.add(Span.of(text));
    }
}
