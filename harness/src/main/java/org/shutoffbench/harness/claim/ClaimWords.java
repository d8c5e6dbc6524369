package org.shutoffbench.harness.claim;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shutoffbench.harness.scenario.JudgedQuantity;
import org.shutoffbench.harness.statistics.Interval;

/** A claim and its figures in words. */
final class ClaimWords {

    private static final double NOTHING = 1e-6;

    private final Claim claim;

    ClaimWords(Claim claim) {
        this.claim = claim;
    }

    /** The claim as one reads it aloud, and of what it is claimed. */
    List<String> claim() {
        List<String> sentences = new ArrayList<>();
        sentences.add(percent(claim.coverage()) + " % of joints do not end "
                + claim.failure().title() + " of "
                + value(claim.lowest()) + " to " + value(claim.highest()) + " of "
                + claim.quantity().title() + ", target " + value(claim.target()) + "; to be believed with "
                + percent(claim.confidence()) + " % confidence."
                + (claim.index() == null
                        ? ""
                        : " The share is what an index of " + claim.index()
                                + " means for a centred normal process: 1 - 2 Phi(-3 C)."));
        Claim.Population p = claim.population();
        sentences.add("Claimed of " + (p.anyFamily() ? "any joint" : String.join(", ", p.families())) + "; "
                + lots(p.lots()) + "; "
                + tools(p.tools()) + "; battery "
                + percent(p.batteryFrom()) + " to " + percent(p.batteryTo()) + " % of nominal.");
        return sentences;
    }

    static String lots(int lots) {
        return lots == 0 ? "any lot" : lots == 1 ? "one lot" : lots + " lots";
    }

    static String tools(int tools) {
        return tools == 0 ? "any tool" : tools == 1 ? "one tool" : tools + " tools";
    }

    String value(double si) {
        return claim.quantity() == JudgedQuantity.CLAMP_FORCE ? digits(si / 1000) + " kN" : digits(si) + " N\u00b7m";
    }

    /** A share in percent, three digits of it or of what is missing to 100. */
    static String percent(double share) {
        if (share == 0 || share == 1) {
            return share == 0 ? "0" : "100";
        }
        double missing = Math.min(share, 1 - share);
        if (missing < NOTHING) {
            return share < 0.5 ? "below 0.0001" : "above 99.9999";
        }
        int decimals = Math.max(0, 2 - (int) Math.floor(Math.log10(100 * missing)));
        return plain(new BigDecimal(100 * share).setScale(Math.min(decimals, 9), RoundingMode.HALF_EVEN));
    }

    static String interval(Interval interval) {
        return percent(interval.low()) + " to " + percent(interval.high()) + " %";
    }

    static String digits(double value) {
        return plain(new BigDecimal(value).round(new MathContext(4, RoundingMode.HALF_EVEN)));
    }

    static String whole(long value) {
        return String.format(Locale.ROOT, "%,d", value);
    }

    private static String plain(BigDecimal number) {
        String text = number.toPlainString();
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
}
