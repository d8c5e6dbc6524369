package org.shutoffbench.harness.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

class DesignPointSearchAnalyticTest {

    @Test
    void ofAHyperplaneItIsTheFootOfThePerpendicular() {
        double[] normal = {0.6, 0, -0.8, 0, 0};
        DesignPointSearch.Result found = search(5, point -> {
            double along = 0;
            for (int i = 0; i < normal.length; i++) {
                along += normal[i] * point.coordinate(i);
            }
            return 3.1 - along;
        });
        assertThat(found.beta()).isCloseTo(3.1, within(1e-3));
        assertThat(found.probability()).isCloseTo(StandardNormal.survival(3.1), within(1e-5));
        for (int i = 0; i < normal.length; i++) {
            assertThat(found.point().coordinate(i)).isCloseTo(3.1 * normal[i], within(0.05));
        }
    }

    /** Margin that jumps: fails where x0 > 1.2816 and nothing else is needed, as a lock nut present in 10 % of the joints. */
    @Test
    void aJumpIsFoundAndOnlyOneCoordinateChanges() {
        DesignPointSearch.Result found =
                search(8, point -> point.coordinate(0) > 1.2816 && point.coordinate(1) > -1 ? -1 : 1);
        assertThat(found.beta()).isCloseTo(1.2816, within(1e-3));
        for (int i = 1; i < 8; i++) {
            assertThat(found.point().coordinate(i)).isZero();
        }
    }

    /** Parabola x0 = 3 - 0.3 x1^2: nearest to the origin at x1^2 = (2 0.3 3 - 1)/(2 0.09), closed form. */
    @Test
    void ofACurvedBoundaryItIsNotOnTheAxis() {
        double x1 = Math.sqrt((1.8 - 1) / 0.18);
        double beta = Math.hypot(3 - 0.3 * x1 * x1, x1);
        DesignPointSearch.Result found =
                search(4, point -> 3 - 0.3 * point.coordinate(1) * point.coordinate(1) - point.coordinate(0));
        assertThat(found.beta()).isCloseTo(beta, within(2e-3));
    }

    /** Two regions: an obvious one at 4 and a narrow one at 2.5 off all axes; probes inside the radius find the second. */
    @Test
    void theNearerOfTwoRegionsIsFound() {
        DesignPointSearch.Result found = search(3, point -> {
            double diagonal = (point.coordinate(0) + point.coordinate(1) + point.coordinate(2)) / Math.sqrt(3);
            double across = Math.sqrt(Math.max(0, point.norm() * point.norm() - diagonal * diagonal));
            return diagonal > 2.5 && across < 0.6 ? -1 : 4 - point.coordinate(0);
        });
        assertThat(found.beta()).isCloseTo(2.5, within(5e-3));
    }

    @Test
    void failingAtTheOriginIsDistanceZero() {
        assertThat(search(3, point -> -1).beta()).isZero();
    }

    @Test
    void whatNeverFailsHasNoDesignPoint() {
        DesignPointSearch search = new DesignPointSearch(
                points -> points.stream().mapToDouble(point -> 1).toArray(), 3, 0, new SplittableRandom(1));
        assertThat(search.search(List.of(), 1000)).isNull();
    }

    /** Handed-in points lead to a region that no axis and no random direction meets. */
    @Test
    void handedInFailuresAreStarts() {
        NormalPoint far = NormalPoint.of(new double[] {2, 2, -2, 2, -2, 2}, 0);
        LimitState pocket = points -> points.stream()
                .mapToDouble(point -> {
                    double squares = 0;
                    for (int i = 0; i < 6; i++) {
                        squares += Math.pow(point.coordinate(i) - far.coordinate(i), 2);
                    }
                    return Math.sqrt(squares) - 0.4;
                })
                .toArray();
        DesignPointSearch.Result found =
                new DesignPointSearch(pocket, 6, 0, new SplittableRandom(1)).search(List.of(far), 1000);
        assertThat(found).isNotNull();
        assertThat(found.beta()).isCloseTo(far.norm() - 0.4, within(5e-3));
    }

    private static DesignPointSearch.Result search(int dimension, ToDoubleFunction<NormalPoint> margin) {
        LimitState limitState = points -> points.stream().mapToDouble(margin).toArray();
        DesignPointSearch.Result found =
                new DesignPointSearch(limitState, dimension, 0, new SplittableRandom(7)).search(List.of(), 100_000);
        assertThat(found).isNotNull();
        assertThat(margin.applyAsDouble(found.point())).isLessThanOrEqualTo(0);
        return found;
    }
}
