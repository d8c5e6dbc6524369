package org.shutoffbench.harness.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.SettingsTable;
import org.shutoffbench.harness.statistics.Interval;
import org.shutoffbench.harness.statistics.RateDifference;

/**
 * How much a strategy loses from the joints its settings were made on to validation joints and to the joints that are
 * judged, families of the settings pooled. Three populations of joints, no draw in common.
 *
 * @param strategy number of the strategy
 * @param made in window on the joints that the settings were made on
 * @param validated on validation joints
 * @param judged on the joints of the run, as if independent
 * @param loss made less judged, as shares
 */
public record TuningGap(int strategy, Rate made, Rate validated, Rate judged, Interval loss) {

    /** The gaps of all strategies whose settings table tells how it was made. */
    public static List<TuningGap> of(Scenario scenario, StudySummary summary) {
        List<TuningGap> gaps = new ArrayList<>();
        for (int s = 0; s < summary.strategies().size(); s++) {
            SettingsTable table =
                    scenario.tables().get(scenario.strategies().get(s).settings());
            TuningGap gap = table == null ? null : gap(s, table.provenance(), summary);
            if (gap != null) {
                gaps.add(gap);
            }
        }
        return gaps;
    }

    private static @Nullable TuningGap gap(int strategy, Map<String, String> texts, StudySummary summary) {
        TuningNote note =
                TuningNote.read(texts, summary.strategies().get(strategy).name());
        if (note == null) {
            return null;
        }
        Set<Integer> families = families(texts, summary);
        long inWindow = 0;
        long joints = 0;
        for (CellSummary cell : summary.cells()) {
            Rates rates = cell.rates();
            if (cell.strategy() == strategy && families.contains(cell.family()) && rates != null) {
                inWindow += rates.inWindow().count();
                joints += rates.inWindow().n();
            }
        }
        if (joints == 0) {
            return null;
        }
        TuningNote.Tally made = note.made();
        Methods methods = summary.methods();
        return new TuningGap(
                strategy,
                Rate.ofIndependent(made.inWindow(), made.joints(), methods),
                Rate.ofIndependent(note.validated().inWindow(), note.validated().joints(), methods),
                Rate.ofIndependent(inWindow, joints, methods),
                RateDifference.of(made.inWindow(), made.joints(), inWindow, joints, methods.confidence()));
    }

    /** The families that the settings were made on; all if the table does not say. */
    private static Set<Integer> families(Map<String, String> texts, StudySummary summary) {
        Set<String> named = Arrays.stream(texts.getOrDefault("families", "").split(", "))
                .filter(name -> !name.isEmpty())
                .collect(Collectors.toSet());
        List<Family> all = summary.families();
        return IntStream.range(0, all.size())
                .filter(f -> named.isEmpty() || named.contains(all.get(f).name()))
                .boxed()
                .collect(Collectors.toSet());
    }
}
