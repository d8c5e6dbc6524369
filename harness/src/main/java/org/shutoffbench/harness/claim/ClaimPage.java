package org.shutoffbench.harness.claim;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What there is to say about a claim, before it becomes text on a terminal or a page to print.
 *
 * @param kicker what was done, in two or three words
 * @param title the finding, one sentence made from the data
 * @param sections in order
 */
public record ClaimPage(String kicker, String title, List<Part> sections) {

    public ClaimPage {
        sections = List.copyOf(sections);
    }

    /**
     * A section.
     *
     * @param picture SVG; null where there is none
     */
    public record Part(
            String heading,
            List<String> sentences,
            @Nullable Grid table,
            @Nullable String picture) {

        public Part {
            sentences = List.copyOf(sentences);
        }

        static Part of(String heading, String... sentences) {
            return new Part(heading, List.of(sentences), null, null);
        }

        static Part of(String heading, List<String> sentences) {
            return new Part(heading, sentences, null, null);
        }

        Part with(Grid grid) {
            return new Part(heading, sentences, grid, picture);
        }

        Part with(String svg) {
            return new Part(heading, sentences, table, svg);
        }
    }

    /** A table; the first cell of a row is its head. */
    public record Grid(List<String> heads, List<List<String>> rows) {

        public Grid {
            heads = List.copyOf(heads);
            rows = List.copyOf(rows);
        }
    }

    /** The page as plain text, 100 columns wide where sentences allow. */
    public String text() {
        StringBuilder text = new StringBuilder();
        wrap(text, title);
        for (Part part : sections) {
            text.append('\n').append(part.heading()).append('\n');
            part.sentences().forEach(sentence -> wrap(text, sentence));
            if (part.table() != null) {
                table(text, part.table());
            }
        }
        return text.toString();
    }

    private static void wrap(StringBuilder text, String sentence) {
        int column = 0;
        for (String word : sentence.split(" ", -1)) {
            if (column > 0 && column + 1 + word.length() > 100) {
                text.append('\n');
                column = 0;
            }
            text.append(column == 0 ? "" : " ").append(word);
            column += word.length() + (column == 0 ? 0 : 1);
        }
        text.append('\n');
    }

    private static void table(StringBuilder text, Grid grid) {
        List<List<String>> lines = new ArrayList<>(List.of(grid.heads()));
        lines.addAll(grid.rows());
        int columns = grid.heads().size();
        int[] widths = new int[columns];
        for (List<String> line : lines) {
            for (int i = 0; i < columns; i++) {
                widths[i] = Math.max(widths[i], line.get(i).length());
            }
        }
        for (List<String> line : lines) {
            StringBuilder row = new StringBuilder(" ");
            for (int i = 0; i < columns; i++) {
                String cell = line.get(i);
                String pad = " ".repeat(widths[i] - cell.length());
                row.append(' ').append(i == 0 ? cell + pad : pad + cell).append(' ');
            }
            text.append(row.toString().stripTrailing()).append('\n');
        }
    }
}
