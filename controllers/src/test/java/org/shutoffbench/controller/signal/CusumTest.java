package org.shutoffbench.controller.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CusumTest {

    @Test
    void addsWhatExceedsTheAllowance() {
        Cusum cusum = new Cusum(1, 4);
        assertThat(cusum.update(3)).isFalse();
        assertThat(cusum.sum()).isEqualTo(2);
        assertThat(cusum.update(3)).isFalse();
        assertThat(cusum.sum()).isEqualTo(4);
        assertThat(cusum.update(1.5f)).isTrue();
        assertThat(cusum.sum()).isCloseTo(4.5f, within(1e-6f));
    }

    @Test
    void neverOwes() {
        Cusum cusum = new Cusum(1, 4);
        cusum.update(-100);
        assertThat(cusum.sum()).isZero();
        cusum.update(3);
        cusum.reset();
        assertThat(cusum.sum()).isZero();
    }

    @Test
    void skipsWhatIsNotANumber() {
        Cusum cusum = new Cusum(1, 4);
        cusum.update(3);
        assertThat(cusum.update(Float.NaN)).isFalse();
        assertThat(cusum.sum()).isEqualTo(2);
    }

    @Test
    void refusesAThresholdOfZero() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Cusum(1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Cusum(-1, 1));
    }
}
