package org.shutoffbench.harness.scenario;

import java.util.List;
import org.shutoffbench.draw.CutNormal;
import org.shutoffbench.draw.NormalQuantile;
import org.shutoffbench.harness.scenario.unit.Quantity;

/**
 * A number of a scenario: fixed, or drawn anew at one or more levels. Values are in SI.
 *
 * <p>A draw turns one uniform number per level into the value, by inverses: it grows with each of them, and is the median
 * where each is 1/2.
 */
public sealed interface Amount {

    /** The uniform number of each level, in the open interval (0, 1). */
    @FunctionalInterface
    interface Uniforms {
        double at(Level level);
    }

    /** The value in SI. */
    double value(Uniforms uniforms);

    /** Levels at which it is drawn; none for a fixed number. */
    List<Level> levels();

    /** As a scenario file writes it, every default filled in. */
    String written();

    /** The least value that it may draw; of a lognormal the one at -4 sigma of every level. */
    double lowest();

    /** The greatest value that it may draw; of a lognormal the one at 4 sigma of every level. */
    double highest();

    /** The value that one draw in two exceeds. */
    default double median() {
        return value(level -> 0.5);
    }

    /** Always the same. */
    record Fixed(Quantity quantity) implements Amount {
        @Override
        public double value(Uniforms uniforms) {
            return quantity.si();
        }

        @Override
        public List<Level> levels() {
            return List.of();
        }

        @Override
        public String written() {
            return quantity.text();
        }

        @Override
        public double lowest() {
            return quantity.si();
        }

        @Override
        public double highest() {
            return quantity.si();
        }
    }

    /** Normal round a mean, each level's part cut at 4 sigma. */
    record Normal(Quantity mean, Spread spread) implements Amount {

        private static final CutNormal STANDARD = new CutNormal(0, 1);

        @Override
        public double value(Uniforms uniforms) {
            double value = mean.si();
            for (Level level : spread.levels()) {
                value += spread.sd(level, mean.si()) * STANDARD.quantile(uniforms.at(level));
            }
            return value;
        }

        @Override
        public List<Level> levels() {
            return spread.levels();
        }

        @Override
        public String written() {
            return "{normal: " + mean + ", " + spread.written() + "}";
        }

        @Override
        public double lowest() {
            return atSigma(-CutNormal.CUT);
        }

        @Override
        public double highest() {
            return atSigma(CutNormal.CUT);
        }

        private double atSigma(double sigma) {
            return mean.si()
                    + sigma
                            * spread.levels().stream()
                                    .mapToDouble(level -> spread.sd(level, mean.si()))
                                    .sum();
        }
    }

    /** Lognormal with a median; the factors of the levels multiply. */
    record Lognormal(Quantity middle, Spread spread) implements Amount {
        @Override
        public double value(Uniforms uniforms) {
            double exponent = 0;
            for (Level level : spread.levels()) {
                exponent += spread.logSd(level) * NormalQuantile.at(uniforms.at(level));
            }
            return middle.si() * StrictMath.exp(exponent);
        }

        @Override
        public List<Level> levels() {
            return spread.levels();
        }

        @Override
        public String written() {
            return "{lognormal: " + middle + ", " + spread.written() + "}";
        }

        @Override
        public double lowest() {
            return atSigma(-4);
        }

        @Override
        public double highest() {
            return atSigma(4);
        }

        private double atSigma(double sigma) {
            return middle.si()
                    * StrictMath.exp(sigma
                            * spread.levels().stream()
                                    .mapToDouble(spread::logSd)
                                    .sum());
        }
    }

    /** Anywhere between two ends, all alike. */
    record Uniform(Quantity low, Quantity high, Level level) implements Amount {
        @Override
        public double value(Uniforms uniforms) {
            return low.si() + (high.si() - low.si()) * uniforms.at(level);
        }

        @Override
        public List<Level> levels() {
            return List.of(level);
        }

        @Override
        public String written() {
            return "{uniform: [" + low + ", " + high + "], per: " + level.title() + "}";
        }

        @Override
        public double lowest() {
            return low.si();
        }

        @Override
        public double highest() {
            return high.si();
        }
    }
}
