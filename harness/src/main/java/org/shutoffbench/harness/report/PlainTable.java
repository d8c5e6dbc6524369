package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A table behind a disclosure.
 *
 * @param summary what the closed disclosure says
 * @param caption what the table holds, with units
 * @param heads of the columns, the first one over the row heads
 * @param rows as long as heads; the first cell is the row's head
 */
record PlainTable(String summary, String caption, List<String> heads, List<List<String>> rows) {

    PlainTable {
        heads = List.copyOf(heads);
        rows = List.copyOf(rows);
        for (List<String> row : rows) {
            if (row.size() != heads.size()) {
                throw new IllegalArgumentException("a row of " + row.size() + " under " + heads.size() + " heads");
            }
        }
    }

    /** A row as the template reads it. */
    record Row(String head, List<String> cells) {}

    List<Row> lines() {
        List<Row> lines = new ArrayList<>();
        for (List<String> row : rows) {
            lines.add(new Row(row.get(0), row.subList(1, row.size())));
        }
        return lines;
    }

    String html(Templates templates) {
        return templates.fill("table", this);
    }
}
