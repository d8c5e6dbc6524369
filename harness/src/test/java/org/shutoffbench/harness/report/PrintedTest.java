package org.shutoffbench.harness.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class PrintedTest {

    @Test
    void aRateHasOneDecimal() {
        assertThat(Printed.percent(0.4316)).isEqualTo("43.2");
    }

    @Test
    void onlyNoneAndAllReadZeroAndAHundred() {
        assertThat(Printed.percent(0.0)).isEqualTo("0");
        assertThat(Printed.percent(1.0)).isEqualTo("100");
        assertThat(Printed.percent(2e-5)).isEqualTo("0.002");
        assertThat(Printed.percent(1 - 4e-6)).isEqualTo("99.9996");
        assertThat(Printed.percent(1e-12)).isEqualTo("<0.00001");
        assertThat(Printed.percent(1 - 1e-12)).isEqualTo(">99.99999");
    }

    @Test
    void differencesCarryTheirSign() {
        assertThat(Printed.points(0.052)).isEqualTo("+5.2");
        assertThat(Printed.points(-0.008)).isEqualTo("\u22120.8");
        assertThat(Printed.points(0.0)).isEqualTo("0.0");
        assertThat(Printed.points(-0.0001)).isEqualTo("0.0");
    }

    @Test
    void countsReadAsWords() {
        assertThat(Printed.countOf(0, 500)).isEqualTo("none of 500");
        assertThat(Printed.countOf(500, 500)).isEqualTo("all 500");
        assertThat(Printed.countOf(12, 500)).isEqualTo("12 of 500");
    }

    @Test
    void anOpenEndSaysSo() {
        assertThat(Printed.fixed((Double) null, 1)).isEqualTo("open");
        assertThat(Printed.fixed(-0.04, 1)).isEqualTo("0.0");
        assertThat(Printed.fixed(-1.25, 2)).isEqualTo("\u22121.25");
    }

    @Test
    void namesReadAsAList() {
        assertThat(Printed.list(List.of("A"))).isEqualTo("A");
        assertThat(Printed.list(List.of("A", "B"))).isEqualTo("A and B");
        assertThat(Printed.list(List.of("A", "B", "C"))).isEqualTo("A, B and C");
    }

    @Test
    void levelsHaveNoIdleDecimals() {
        assertThat(Printed.level(0.95)).isEqualTo("95");
        assertThat(Printed.level(0.9973)).isEqualTo("99.73");
        assertThat(Printed.level(0.9)).isEqualTo("90");
    }
}
