package org.shutoffbench.harness.study;

import java.util.ArrayList;
import java.util.List;
import org.shutoffbench.harness.run.TighteningRecord;

/**
 * What makes joints of a family alike: a common lot or a common tool.
 *
 * @param kind lot or tool
 * @param groups number of groups kept apart; more clusters than that are pooled into groups, which are as independent of
 *     each other as the clusters are
 */
record Clustering(Kind kind, int groups) {

    private static final int MOST_GROUPS = 4096;

    /** How the joints of a family hang together; empty where each has its own lot and tool. */
    static List<Clustering> of(Family family) {
        List<Clustering> found = new ArrayList<>();
        if (family.lots() < family.joints()) {
            found.add(new Clustering(Kind.LOT, Math.min(family.lots(), MOST_GROUPS)));
        }
        if (family.tools() < family.joints()) {
            found.add(new Clustering(Kind.TOOL, Math.min(family.tools(), MOST_GROUPS)));
        }
        return found;
    }

    int groupOf(TighteningRecord tightening) {
        return Math.floorMod(kind.indexOf(tightening), groups);
    }

    /** What is common to a cluster. */
    enum Kind {
        LOT("by lot") {
            @Override
            int indexOf(TighteningRecord tightening) {
                return tightening.lot();
            }
        },
        TOOL("by tool") {
            @Override
            int indexOf(TighteningRecord tightening) {
                return tightening.tool();
            }
        };

        private final String title;

        Kind(String title) {
            this.title = title;
        }

        String title() {
            return title;
        }

        abstract int indexOf(TighteningRecord tightening);
    }
}
