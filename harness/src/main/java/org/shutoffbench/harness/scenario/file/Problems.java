package org.shutoffbench.harness.scenario.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Collects what is wrong, so that a user hears of everything at once. */
public final class Problems {

    private final Set<Problem> found = new LinkedHashSet<>();

    public void add(Place place, String key, String what, String remedy) {
        found.add(new Problem(place, key, what, remedy));
    }

    /** How many were told so far. */
    public int count() {
        return found.size();
    }

    /**
     * Ends the reading where anything was wrong.
     *
     * @throws ScenarioException with all problems in the order of file and line
     */
    public void throwIfAny() {
        if (!found.isEmpty()) {
            List<Problem> ordered = new ArrayList<>(found);
            ordered.sort(Comparator.comparing((Problem p) -> p.place().file())
                    .thenComparingInt(p -> p.place().line()));
            throw new ScenarioException(ordered);
        }
    }
}
