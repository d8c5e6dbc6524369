package org.shutoffbench.harness.report;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A stretch of a sentence.
 *
 * @param text as written, not escaped
 * @param name whether it is the name of a strategy, which pages mark
 */
record Span(String text, boolean name) {

    static Span of(String text) {
        return new Span(text, false);
    }

    static Span name(String text) {
        return new Span(text, true);
    }

    /** The sentence as plain text. */
    static String plain(List<Span> spans) {
        return spans.stream().map(Span::text).collect(Collectors.joining());
    }
}
