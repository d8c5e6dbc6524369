package org.shutoffbench.harness.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class DecimalsPropertyTest {

    @Property
    void whatIsWrittenReadsBackAsTheRoundedValue(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double value, @ForAll @IntRange(max = 6) int digits) {
        StringBuilder text = new StringBuilder();
        Decimals.append(text, value, digits);
        assertThat(Double.parseDouble(text.toString())).isEqualTo(Decimals.round(value, digits));
    }

    @Property
    void roundingMovesAValueByHalfAUnitAtMost(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double value, @ForAll @IntRange(max = 6) int digits) {
        assertThat(Math.abs(Decimals.round(value, digits) - value))
                .isLessThanOrEqualTo(0.5000001 * Math.pow(10, -digits));
    }

    @Example
    void minusZeroIsWrittenWithoutASign() {
        StringBuilder text = new StringBuilder();
        Decimals.append(text, -0.00001, 4);
        assertThat(text).hasToString("0.0000");
    }

    @Example
    void nothingIsWrittenForNotANumber() {
        StringBuilder text = new StringBuilder();
        Decimals.append(text, Double.NaN, 2);
        assertThat(text).isEmpty();
        assertThat(Decimals.round(Double.NaN, 2)).isNaN();
    }

    @Example
    void aValueTooLargeForItsDecimalsIsRefused() {
        assertThatThrownBy(() -> Decimals.round(1e12, 6)).isInstanceOf(ArithmeticException.class);
    }
}
