package org.shutoffbench.harness.report;

/** The mark of a strategy as a small drawing inside text. It stands beside the strategy's name and is hidden from readers by ear. */
final class Symbols {

    private Symbols() {}

    static String svg(Mark mark) {
        String inside = mark.open() || mark.hollow() ? "hollow" : "solid";
        return "<svg class=\"mark\" viewBox=\"-8 -8 16 16\" aria-hidden=\"true\" focusable=\"false\" style=\"--hue:var(--hue-"
                + mark.hue() + ")\"><path class=\"" + inside + "\" d=\"" + mark.path() + "\"/></svg>";
    }
}
