package org.shutoffbench.harness.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class OctaveHistogramPropertyTest {

    @Property
    void everyNumberLiesInItsClass(@ForAll @LongRange(min = 0, max = 1L << 52) long value) {
        OctaveHistogram histogram = new OctaveHistogram();
        histogram.add(value);
        OctaveHistogram.Bin bin = histogram.binOfRank(1);
        assertThat(value).isBetween(bin.least(), bin.greatest());
        assertThat(bin.greatest() - bin.least()).isLessThanOrEqualTo(value / 2048);
    }

    @Property
    void classesDoNotOverlap(
            @ForAll @LongRange(min = 0, max = 1L << 52) long one,
            @ForAll @LongRange(min = 0, max = 1L << 52) long other) {
        OctaveHistogram histogram = new OctaveHistogram();
        histogram.add(one);
        histogram.add(other);
        OctaveHistogram.Bin low = histogram.binOfRank(1);
        OctaveHistogram.Bin high = histogram.binOfRank(2);
        assertThat(low.equals(high) || low.greatest() < high.least()).isTrue();
        assertThat(low.equals(high)).isEqualTo(low.count() == 2);
    }

    @Test
    void powersOfTwoBeginTheirClass() {
        for (int power = 0; power <= 52; power++) {
            OctaveHistogram histogram = new OctaveHistogram();
            histogram.add(1L << power);
            assertThat(histogram.binOfRank(1).least()).isEqualTo(1L << power);
        }
    }

    @Test
    void classesAreVisitedAscendingWithTheirCumulativeCount() {
        OctaveHistogram histogram = new OctaveHistogram();
        for (long value : new long[] {70_000, 3, 3, 5000, -4}) {
            histogram.add(value);
        }
        StringBuilder visited = new StringBuilder();
        histogram.forEach((bin, cumulative) ->
                visited.append(bin.least()).append(':').append(cumulative).append(' '));
        assertThat(visited.toString()).isEqualTo("0:1 3:3 5000:4 69984:5 ");
        assertThat(histogram.n()).isEqualTo(5);
    }

    @Test
    void ranksOutsideAreRefused() {
        OctaveHistogram histogram = new OctaveHistogram();
        histogram.add(1);
        assertThatThrownBy(() -> histogram.binOfRank(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> histogram.binOfRank(2)).isInstanceOf(IllegalArgumentException.class);
    }
}
