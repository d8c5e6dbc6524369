package org.shutoffbench.controller.conformance;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.shutoffbench.controller.strategy.ElapsedTime;
import org.shutoffbench.controller.strategy.PulseTorqueThreshold;

class OperationCountTest {

    @Test
    void aTimerThatOnlyCountsTicksDoesOneAdditionPerTick() throws ReflectiveOperationException {
        assertThat(OperationCount.of(ElapsedTime.Factory.class).worstTick()).isEqualTo(1);
    }

    @Test
    void countingIsRepeatable() throws ReflectiveOperationException {
        assertThat(OperationCount.of(PulseTorqueThreshold.Factory.class))
                .isEqualTo(OperationCount.of(PulseTorqueThreshold.Factory.class));
    }
}
