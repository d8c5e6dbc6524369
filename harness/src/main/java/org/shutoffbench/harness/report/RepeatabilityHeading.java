package org.shutoffbench.harness.report;

import org.shutoffbench.harness.study.Headline;
import org.shutoffbench.harness.study.QuantitySummary;
import org.shutoffbench.harness.study.QuantitySummary.Tolerance;
import org.shutoffbench.harness.study.Ranking.Standing;
import org.shutoffbench.harness.study.StudySummary;

/** The finding on repeatability: the best strategy and the worst silent miss on one family, against the window. */
final class RepeatabilityHeading {

    private RepeatabilityHeading() {}

    /** A range and the share of joints it holds. */
    private record Held(String share, double low, double high) {

        static Held of(QuantitySummary q) {
            Tolerance t = q.tolerance();
            if (t == null || t.low() == null || t.high() == null) {
                return new Held("all " + q.n(), q.smallest(), q.greatest());
            }
            return new Held(Printed.level(t.content()) + " %", Math.max(0, t.low()), t.high());
        }

        String between(ShownQuantity shown) {
            String from = shown.round(low);
            String to = shown.round(high);
            return from.equals(to) ? "at " + from : "between " + from + " and " + to;
        }
    }

    static String of(StudySummary summary, Names names) {
        ShownQuantity shown = ShownQuantity.judged(summary.judge());
        Headline.SilentMiss miss = summary.headline().silentMiss();
        Standing first = summary.ranking().standings().get(0);
        Standing last =
                summary.ranking().standings().get(summary.ranking().standings().size() - 1);
        int other = miss == null || miss.strategy() == first.strategy() ? last.strategy() : miss.strategy();
        int family = miss == null ? Math.max(0, first.worstFamily()) : miss.family();
        QuantitySummary best = shown.of(summary.cell(family, first.strategy()));
        QuantitySummary rest = other == first.strategy() ? null : shown.of(summary.cell(family, other));
        if (best == null) {
            return "How closely each strategy repeats itself";
        }
        Held held = Held.of(best);
        StringBuilder heading = new StringBuilder("On " + names.joints(family) + ", " + held.share() + " end "
                + held.between(shown) + " " + shown.unit + " with " + names.strategy(first.strategy()));
        if (rest != null) {
            Held compared = Held.of(rest);
            heading.append(compared.share().equals(held.share()) ? ", " : ", " + compared.share() + " end ")
                    .append(compared.between(shown))
                    .append(" with ")
                    .append(names.strategy(other));
        }
        return heading.append("; the window is ")
                .append(shown.round(summary.judge().lowest()))
                .append(" to ")
                .append(shown.round(summary.judge().highest()))
                .toString();
    }
}
