package org.shutoffbench.validation;

import java.util.Map;

/**
 * One row of a reference file.
 *
 * @param cells cell texts by column name
 */
public record ReferenceRow(Map<String, String> cells) {

    public String text(String column) {
        String cell = cells.get(column);
        if (cell == null) {
            throw new IllegalArgumentException("no column " + column + " in " + cells.keySet());
        }
        return cell;
    }

    public double number(String column) {
        return Double.parseDouble(text(column));
    }

    boolean has(String column) {
        return !cells.getOrDefault(column, "").isEmpty();
    }
}
