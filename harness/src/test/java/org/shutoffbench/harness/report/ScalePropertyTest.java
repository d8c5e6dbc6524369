package org.shutoffbench.harness.report;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class ScalePropertyTest {

    @Property
    void reachesWhatItMustWithFewTicksFromZero(@ForAll @DoubleRange(min = 0.01, max = 1e6) double atLeast) {
        Scale scale = Scale.reaching(atLeast, null);
        assertThat(scale.max()).isGreaterThanOrEqualTo(atLeast * (1 - 1e-9)).isLessThanOrEqualTo(2 * atLeast);
        assertThat(scale.ticks()).hasSizeBetween(3, 4).startsWith(0.0).isSorted();
    }

    @Property
    void aMarkedValueHasItsOwnTickAndNoNeighbourTooClose(@ForAll @DoubleRange(min = 1, max = 1e6) double marked) {
        Scale scale = Scale.reaching(1.42 * marked, marked);
        assertThat(scale.ticks()).contains(marked).isSorted();
        for (double tick : scale.ticks()) {
            assertThat(tick == marked || Math.abs(tick - marked) > 0.1 * scale.max())
                    .isTrue();
        }
    }
}
