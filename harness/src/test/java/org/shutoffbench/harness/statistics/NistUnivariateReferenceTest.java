package org.shutoffbench.harness.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * NIST Statistical Reference Datasets, univariate, all nine: certified mean, standard deviation and lag-1 autocorrelation.
 * Tolerance: half a unit of the last certified digit; for the autocorrelation, which works on doubles, what a double keeps of a
 * deviation.
 */
class NistUnivariateReferenceTest {

    @ParameterizedTest
    @CsvSource({
        "lottery,1,218,518.958715596330,5e-13,291.699727470969,5e-13,-0.120948622967393",
        "lew,1,200,-177.435000000000,5e-13,277.332168044316,5e-13,-0.307304800605679",
        "mavro,100000,50,2.00185600000000,5e-15,0.000429123454003053,5e-19,0.937989183438248",
        "michelso,100,100,299.852400000000,5e-13,0.0790105478190518,5e-17,0.535199668621283",
        "pidigits,1,5000,4.53480000000000,5e-15,2.86733906028871,5e-15,-0.00355099287237972"
    })
    void observedData(
            String set,
            double perUnit,
            long n,
            double mean,
            double meanTolerance,
            double deviation,
            double deviationTolerance,
            double lag1) {
        double[] series = values(set);
        ExactMoments moments = moments(series, perUnit);
        assertThat(moments.n()).isEqualTo(n);
        assertThat(moments.mean()).isCloseTo(mean, within(meanTolerance));
        assertThat(moments.standardDeviation()).isCloseTo(deviation, within(deviationTolerance));
        assertThat(Autocorrelation.lag1(series)).isCloseTo(lag1, within(asDoublesAllow(mean, deviation)));
    }

    /** NumAcc1 is three numbers; NumAcc2, 3 and 4 are one number and 500 pairs round it. */
    @ParameterizedTest
    @CsvSource({
        "1,1,10000002,10000001,10000003,1,-0.5",
        "10,500,1.2,1.1,1.3,0.1,-0.999",
        "10,500,1000000.2,1000000.1,1000000.3,0.1,-0.999",
        "10,500,10000000.2,10000000.1,10000000.3,0.1,-0.999"
    })
    void madeUpData(double perUnit, int pairs, double middle, double low, double high, double deviation, double lag1) {
        double[] series = DoubleStream.concat(
                        DoubleStream.of(middle),
                        DoubleStream.iterate(low, x -> x == low ? high : low).limit(2L * pairs))
                .toArray();
        if (pairs == 1) {
            series = new double[] {low, high, middle};
        }
        ExactMoments moments = moments(series, perUnit);
        assertThat(moments.mean()).isEqualTo(middle);
        assertThat(moments.standardDeviation()).isCloseTo(deviation, within(1e-15 * deviation));
        assertThat(Autocorrelation.lag1(series)).isCloseTo(lag1, within(asDoublesAllow(middle, deviation)));
    }

    private static double asDoublesAllow(double mean, double deviation) {
        return 1e-15 + 2 * Math.ulp(mean) / deviation;
    }

    private static double[] values(String set) {
        if (set.equals("pidigits")) {
            return ReferenceRows.of("pidigits.csv").stream()
                    .flatMapToInt(row -> row[0].chars())
                    .mapToDouble(digit -> digit - '0')
                    .toArray();
        }
        return ReferenceRows.of(set + ".csv").stream()
                .mapToDouble(row -> Double.parseDouble(row[0]))
                .toArray();
    }

    private static ExactMoments moments(double[] values, double perUnit) {
        FixedPoint point = new FixedPoint(perUnit);
        ExactMoments moments = new ExactMoments(point);
        for (double value : values) {
            moments.add(point.steps(value));
        }
        return moments;
    }
}
