package org.shutoffbench.harness.report;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shutoffbench.harness.record.OutcomesFormat;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.study.Family;
import org.shutoffbench.harness.study.StudySummary;

/** How every strategy left a few joints, looked up in the outcomes file in one pass. */
final class JointStops {

    private JointStops() {}

    /**
     * Finds the rows of some joints.
     *
     * @throws IOException if the file cannot be read
     * @throws IllegalArgumentException if it holds rows of another study
     */
    static Map<WorstJointsSection.Place, List<TighteningRecord>> read(
            Path outcomes, StudySummary summary, Set<WorstJointsSection.Place> wanted) throws IOException {
        List<String> families = summary.families().stream().map(Family::name).toList();
        OutcomesFormat format = summary.outcomesFormat();
        Map<WorstJointsSection.Place, List<TighteningRecord>> found = new HashMap<>();
        try (CsvReader<CsvRecord> csv = CsvReader.builder().ofCsvRecord(outcomes)) {
            for (CsvRecord row : csv) {
                if (row.getStartingLineNumber() > 1 && isWanted(row, families, wanted)) {
                    TighteningRecord stop = format.parse(row);
                    found.computeIfAbsent(
                                    new WorstJointsSection.Place(stop.family(), stop.joint()),
                                    place -> new ArrayList<>())
                            .add(stop);
                }
            }
        }
        return found;
    }

    private static boolean isWanted(CsvRecord row, List<String> families, Set<WorstJointsSection.Place> wanted) {
        int family = families.indexOf(row.getField(0));
        return wanted.stream()
                .anyMatch(place -> place.family() == family
                        && Integer.toString(place.joint()).equals(row.getField(1)));
    }
}
