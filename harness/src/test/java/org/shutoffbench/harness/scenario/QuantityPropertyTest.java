package org.shutoffbench.harness.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.harness.scenario.unit.Quantity;

class QuantityPropertyTest {

    /**
     * Exact by definition of inch, pound and standard free fall: NIST SP 811 (2008), appendix B.8, prints foot pound-force
     * 1.355818, inch pound-force 1.129848e-1, pound-force 4.448222, kip 4.448222e3, psi 6.894757e3, pound-force per inch
     * 1.751268e2; checked to the seven digits printed there.
     */
    @ParameterizedTest
    @CsvSource({
        "TORQUE,1 ft*lbf,1.355818",
        "TORQUE,1 in*lbf,0.1129848",
        "FORCE,1 lbf,4.448222",
        "FORCE,1 kip,4448.222",
        "PRESSURE,1 psi,6894.757",
        "PRESSURE,1 ksi,6894757",
        "STIFFNESS,1 lbf/in,175.1268",
        "LENGTH,1 in,0.0254"
    })
    void customaryUnitsAreThoseOfNist(Dimension dimension, String text, double si) {
        assertThat(Quantity.parse(text, dimension).si()).isEqualTo(si, within(si * 4e-7));
    }

    @ParameterizedTest
    @CsvSource({
        "TORQUE,84 N*m,84",
        "TORQUE,84 Nm,84",
        "TORQUE,84 N m,84",
        "TORQUE,84 N·m,84",
        "TORQUE,84N*m,84",
        "STIFFNESS,312 kN/mm,3.12e8",
        "STIFFNESS,312 kN / mm,3.12e8",
        "LENGTH,1.75 mm,0.00175",
        "LENGTH,15.07 mm,0.01507",
        "PURE,8 %,0.08",
        "PURE,8%,0.08",
        "PURE,.5,0.5",
        "INERTIA,3.9e-4 kg*m^2,3.9e-4",
        "INERTIA,3.9e-4 kg*m²,3.9e-4",
        "TIME,1 ms,0.001",
        "ANGLE,0.5 turns,3.141592653589793",
        "ANGLE,180°,3.141592653589793",
        "ANGULAR_STIFFNESS,2 N*m/turn,0.3183098861837907"
    })
    void decimalUnitsConvertToTheNearestDouble(Dimension dimension, String text, double si) {
        assertThat(Quantity.parse(text, dimension).si()).isEqualTo(si);
    }

    @ParameterizedTest
    @CsvSource({
        "TORQUE,84",
        "TORQUE,84 N",
        "TORQUE,84 kN/mm",
        "TORQUE,N*m",
        "TORQUE,NaN N*m",
        "TORQUE,Infinity N*m",
        "TORQUE,1e999 N*m",
        "TORQUE,1e9999 N*m",
        "TORQUE,0x10 N*m",
        "TORQUE,8_4 N*m",
        "TORQUE,'84,5 N*m'",
        "TORQUE,84 n*m",
        "PURE,8 deg",
        "PURE,--8",
        "ANGLE,8"
    })
    void anythingElseIsRefused(Dimension dimension, String text) {
        assertThatThrownBy(() -> Quantity.parse(text, dimension)).isInstanceOf(IllegalArgumentException.class);
    }

    @Property
    void whatIsWrittenInSiReadsBackToTheSameBits(@ForAll double si, @ForAll Dimension dimension) {
        if (Double.isFinite(si)) {
            Quantity written = Quantity.ofSi(si, dimension);
            assertThat(Quantity.parse(written.text(), dimension).si()).isEqualTo(si + 0.0);
        }
    }

    @Property
    void everyUnitOfADimensionIsAMultipleOfTheFirst(
            @ForAll Dimension dimension, @ForAll @DoubleRange(min = -1e6, max = 1e6) double number) {
        for (String unit : dimension.units()) {
            double one = Quantity.parse("1 " + unit, dimension).si();
            double many = Quantity.parse(Quantity.ofSi(number, Dimension.PURE).text() + " " + unit, dimension)
                    .si();
            assertThat(many).isEqualTo(one * number, within(Math.abs(one * number) * 1e-15));
        }
    }

    @Test
    void eachDimensionCountsInItsFirstUnit() {
        for (Dimension dimension : Dimension.values()) {
            assertThat(Quantity.parse("1 " + dimension.siUnit(), dimension).si())
                    .isEqualTo(1);
        }
    }
}
