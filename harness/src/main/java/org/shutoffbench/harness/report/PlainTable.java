package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A table behind a disclosure.
 *
 * @param summary what the closed disclosure says
 * @param caption what the table holds, with units
 * @param heads of the columns, the first one over the row heads
 * @param rows as long as heads; the first cell is the row's head
 * @param paper which rows are printed on paper; null for all
 */
record PlainTable(
        String summary,
        String caption,
        List<String> heads,
        List<List<String>> rows,
        @Nullable Paper paper) {

    private static final int SLIM = 6;
    private static final int MANY = 9;
    private static final int SENTENCE = 40;
    /** Letters that fit on half the width of a page. */
    private static final int HALF_PAGE = 100;

    /**
     * Rows of a long table that paper is spent on.
     *
     * @param note says on paper what is left out and where it is
     */
    record Paper(String note, Set<Integer> rows) {}

    /** A table that is printed whole. */
    PlainTable(String summary, String caption, List<String> heads, List<List<String>> rows) {
        this(summary, caption, heads, rows, null);
    }

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
    record Row(String head, List<String> cells, boolean offPaper) {}

    /** Narrow enough to be printed in two columns. */
    boolean slim() {
        return heads.size() < SLIM && !prose() && letters() < HALF_PAGE;
    }

    /** Letters of the longest cells of a row, side by side. */
    private int letters() {
        return IntStream.range(0, heads.size())
                .map(column -> rows.stream()
                        .mapToInt(row -> row.get(column).length())
                        .max()
                        .orElse(0))
                .sum();
    }

    /** Cells are sentences, which may break. */
    boolean prose() {
        return rows.stream().anyMatch(row -> row.stream().skip(1).anyMatch(cell -> cell.length() > SENTENCE));
    }

    /** So wide that paper needs smaller print. */
    boolean many() {
        return heads.size() > MANY;
    }

    List<Row> lines() {
        List<Row> lines = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            List<String> row = rows.get(i);
            lines.add(new Row(
                    row.get(0),
                    row.subList(1, row.size()),
                    paper != null && !paper.rows().contains(i)));
        }
        return lines;
    }

    String html(Templates templates) {
        return templates.fill("table", this);
    }
}
