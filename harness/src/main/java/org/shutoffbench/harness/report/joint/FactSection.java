package org.shutoffbench.harness.report.joint;

import java.util.ArrayList;
import java.util.List;

/** A group of facts under one heading. */
final class FactSection {

    private final String title;
    private final List<Fact> facts = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();

    FactSection(String title) {
        this.title = title;
    }

    FactSection add(String name, String symbol, Measure measure, double si, String source) {
        facts.add(new Fact(name, symbol, measure, si, source));
        return this;
    }

    /** A sentence below the facts. */
    FactSection remark(String sentence) {
        remarks.add(sentence);
        return this;
    }

    String title() {
        return title;
    }

    List<Fact> facts() {
        return List.copyOf(facts);
    }

    List<String> remarks() {
        return List.copyOf(remarks);
    }
}
