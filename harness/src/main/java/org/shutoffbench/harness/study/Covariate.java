package org.shutoffbench.harness.study;

import java.util.List;

/**
 * A drawn parameter of the joint against which rates are counted in fixed classes.
 *
 * @param name such as "prevailing torque"
 * @param unit such as "N*m"
 * @param edges of the classes, ascending; a class holds its lower edge, the last one both. Values outside go to the
 *     nearest class
 */
public record Covariate(String name, String unit, List<Double> edges) {

    public Covariate {
        edges = List.copyOf(edges);
        if (edges.size() < 2) {
            throw new IllegalArgumentException("a covariate needs at least two edges");
        }
        for (int i = 1; i < edges.size(); i++) {
            if (!(edges.get(i - 1) < edges.get(i))) {
                throw new IllegalArgumentException("edges must ascend: " + edges);
            }
        }
    }

    /** Number of classes. */
    public int classes() {
        return edges.size() - 1;
    }

    /** The class of a value. */
    public int classOf(double value) {
        int found = 0;
        for (int i = 1; i < classes(); i++) {
            if (value >= edges.get(i)) {
                found = i;
            }
        }
        return found;
    }
}
