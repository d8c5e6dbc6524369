package org.shutoffbench.harness.statistics;

import java.util.List;

/**
 * How far each of many points is from failure: at or below 0 it fails, above it does not; {@link
 * Double#POSITIVE_INFINITY} where the point cannot fail whatever its margin. Points are independent of each other, so an
 * implementation may work on them in parallel.
 */
@FunctionalInterface
public interface LimitState {

    /** Margins of the points, in the order given. */
    double[] margins(List<NormalPoint> points);
}
