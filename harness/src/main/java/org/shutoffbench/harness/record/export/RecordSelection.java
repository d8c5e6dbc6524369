package org.shutoffbench.harness.record.export;

import java.util.EnumSet;
import java.util.List;
import org.shutoffbench.harness.record.OutcomeColumn;
import org.shutoffbench.harness.record.OutcomesFormat;
import org.shutoffbench.harness.run.TighteningRecord;

/**
 * Which records, and what of each.
 *
 * @param columns in the order in which they are written; none twice
 * @param where what every record meets
 */
public record RecordSelection(List<OutcomeColumn> columns, List<Condition> where) {

    /** Everything. */
    public static final RecordSelection ALL = new RecordSelection(List.of(OutcomeColumn.values()), List.of());

    public RecordSelection {
        columns = List.copyOf(columns);
        where = List.copyOf(where);
        if (columns.isEmpty()) {
            throw new IllegalArgumentException("at least one column belongs in a record");
        }
        if (EnumSet.copyOf(columns).size() < columns.size()) {
            throw new IllegalArgumentException("a column is named twice");
        }
    }

    boolean takes(OutcomesFormat format, TighteningRecord row) {
        for (Condition condition : where) {
            if (!condition.holds(format, row)) {
                return false;
            }
        }
        return true;
    }
}
