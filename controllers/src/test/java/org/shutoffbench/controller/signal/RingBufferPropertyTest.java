package org.shutoffbench.controller.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.FloatRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class RingBufferPropertyTest {

    @Property
    void holdsTheNewestNumbersInOrder(
            @ForAll @IntRange(min = 1, max = 9) int capacity,
            @ForAll List<@FloatRange(min = -1e3f, max = 1e3f) Float> numbers) {
        RingBuffer ring = new RingBuffer(capacity);
        numbers.forEach(ring::add);
        assertThat(ring.size()).isEqualTo(Math.min(capacity, numbers.size()));
        for (int age = 0; age < ring.size(); age++) {
            assertThat(ring.get(age)).isEqualTo(numbers.get(numbers.size() - 1 - age));
        }
        assertThat(ring.get(ring.size())).isNaN();
        assertThat(ring.get(-1)).isNaN();
    }

    @Test
    void isEmptyAfterClearing() {
        RingBuffer ring = new RingBuffer(2);
        ring.add(1);
        ring.clear();
        assertThat(ring.size()).isZero();
        assertThat(ring.get(0)).isNaN();
        assertThatIllegalArgumentException().isThrownBy(() -> new RingBuffer(0));
    }
}
