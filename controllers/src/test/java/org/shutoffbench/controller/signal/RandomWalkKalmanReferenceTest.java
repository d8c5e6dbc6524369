package org.shutoffbench.controller.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * The scalar random walk is the textbook example of a Riccati equation with a closed form: P-^2 - Q P- - Q R = 0 (for
 * instance Anderson and Moore, Optimal Filtering, 1979; memory). With Q = R = 1 it is the golden ratio.
 */
class RandomWalkKalmanReferenceTest {

    @Test
    void theVarianceBeforeAMeasurementSettlesAtTheGoldenRatio() {
        RandomWalkKalman filter = settled(1, 1);
        filter.predict(0, 1);
        assertThat(filter.variance()).isCloseTo(1.618034f, within(5e-7f));
    }

    @Test
    void theVarianceSettlesAtTheRootOfItsRiccatiEquation() {
        float q = 0.3f;
        float r = 2.5f;
        RandomWalkKalman filter = settled(q, r);
        filter.predict(0, q);
        double exact = (q + Math.sqrt(q * q + 4 * q * r)) / 2;
        assertThat(filter.variance()).isCloseTo((float) exact, within(1e-6f));
    }

    @Test
    void anUnknownLevelIsTheFirstMeasurement() {
        RandomWalkKalman filter = new RandomWalkKalman();
        filter.reset(0, Float.POSITIVE_INFINITY);
        filter.update(Float.NaN, 1);
        assertThat(filter.variance()).isInfinite();
        filter.update(7, 2);
        assertThat(filter.level()).isEqualTo(7);
        assertThat(filter.variance()).isEqualTo(2);
    }

    @Test
    void aKnownMoveShiftsTheLevelAndAMeasurementIsWeighed() {
        RandomWalkKalman filter = new RandomWalkKalman();
        filter.reset(10, 1);
        filter.predict(5, 2);
        assertThat(filter.level()).isEqualTo(15);
        assertThat(filter.variance()).isEqualTo(3);
        filter.update(19, 1);
        assertThat(filter.level()).isEqualTo(18);
        assertThat(filter.variance()).isEqualTo(0.75f);
    }

    private static RandomWalkKalman settled(float q, float r) {
        RandomWalkKalman filter = new RandomWalkKalman();
        filter.reset(0, 100);
        for (int i = 0; i < 60; i++) {
            filter.predict(0, q);
            filter.update(0, r);
        }
        return filter;
    }
}
