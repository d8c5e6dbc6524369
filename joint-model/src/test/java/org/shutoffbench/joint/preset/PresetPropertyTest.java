package org.shutoffbench.joint.preset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.descriptive.moment.Mean;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.shutoffbench.joint.friction.FrictionScatter;
import org.shutoffbench.joint.friction.Scatter;
import org.shutoffbench.joint.prevailing.LockNutKind;

class PresetPropertyTest {

    private static final int JOINTS = 20_000;

    /** Five standard errors: of a mean, sd/sqrt(n); of a deviation, sd/sqrt(2n) with room for the skew of a lognormal. */
    @Property(tries = 40)
    void drawnFrictionHasTheStatedMoments(
            @ForAll("surfaces") SurfacePreset surface, @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        FrictionScatter friction = surface.friction();
        PreloadSample sample = new PreloadSample(seed, friction);
        double[] thread =
                IntStream.range(0, JOINTS).mapToDouble(sample::threadFriction).toArray();
        double[] bearing =
                IntStream.range(0, JOINTS).mapToDouble(sample::bearingFriction).toArray();
        requireMoments(thread, friction.thread().mean(), friction.thread().totalCv());
        double bearingSigma = Scatter.sigma(friction.bearingCv());
        requireMoments(
                bearing, friction.bearingMedian() * Math.exp(bearingSigma * bearingSigma / 2), friction.bearingCv());
        double correlation = new PearsonsCorrelation().correlation(logs(thread), logs(bearing));
        double expected = friction.logCorrelation();
        assertThat(correlation).isCloseTo(expected, within(5 * (1 - expected * expected) / Math.sqrt(JOINTS)));
    }

    private static void requireMoments(double[] values, double mean, double cv) {
        double deviation = cv * mean;
        assertThat(new Mean().evaluate(values)).isCloseTo(mean, within(5 * deviation / Math.sqrt(JOINTS)));
        double kurtosisRoom = 1 + 4 * cv;
        assertThat(new StandardDeviation().evaluate(values))
                .isCloseTo(deviation, within(5 * kurtosisRoom * deviation / Math.sqrt(2.0 * JOINTS)));
    }

    private static double[] logs(double[] values) {
        return java.util.Arrays.stream(values).map(Math::log).toArray();
    }

    @Example
    void everyPresetIsFoundByItsNameAndSaysItsBasis() {
        Set<String> names = new HashSet<>();
        for (SurfacePreset preset : SurfacePreset.all()) {
            assertThat(names.add(preset.name())).isTrue();
            assertThat(SurfacePreset.named(" " + preset.name() + " ")).isEqualTo(preset);
            assertThat(preset.basis()).isNotBlank();
            assertThat(preset.staticRatio().lowest()).isGreaterThanOrEqualTo(1);
        }
        for (JointPreset preset : JointPreset.all()) {
            assertThat(names.add(preset.name())).isTrue();
            assertThat(JointPreset.named(preset.name())).isEqualTo(preset);
            assertThat(preset.basis()).isNotBlank();
        }
        assertThatThrownBy(() -> SurfacePreset.named("butter")).hasMessageContaining("known are dry steel, dry zinc");
        assertThatThrownBy(() -> JointPreset.named("butter")).hasMessageContaining("known are new plain nut");
    }

    @Example
    void reuseLeavesLess() {
        assertThat(JointPreset.NEW_LOCK_NUT.reuseFactor()).isEqualTo(1);
        assertThat(JointPreset.REUSED_LOCK_NUT.reuseFactor()).isCloseTo(0.825 * 0.95, within(1e-12));
    }

    @Example
    void aChanceHasAMean() {
        assertThat(new Chance(0.5, 2, 4).mean()).isCloseTo(1.5, within(1e-12));
        assertThat(Chance.NEVER.mean()).isZero();
        assertThatThrownBy(() -> new Chance(1.1, 0, 1)).hasMessageContaining("probability");
        assertThatThrownBy(() -> new Chance(-0.1, 0, 1)).hasMessageContaining("probability");
        assertThatThrownBy(() -> new Chance(1, 2, 1)).hasMessageContaining("range");
        assertThatThrownBy(() -> new Chance(1, -1, 1)).hasMessageContaining("range");
    }

    @Example
    void aPlainNutHasNoPrevailingTorqueAndALockNutSome() {
        assertThatThrownBy(() -> preset(Optional.empty(), Chance.always(0.1, 0.2), 0))
                .hasMessageContaining("plain nut");
        assertThatThrownBy(() -> preset(Optional.of(LockNutKind.ALL_METAL), Chance.NEVER, 0))
                .hasMessageContaining("lock nut");
        assertThatThrownBy(() -> preset(Optional.empty(), Chance.NEVER, -1)).hasMessageContaining("seatings");
    }

    private static JointPreset preset(Optional<LockNutKind> nut, Chance prevailing, int seatings) {
        return new JointPreset(
                "x", SurfacePreset.DRY_ZINC, nut, prevailing, seatings, Chance.NEVER, Chance.NEVER, Chance.NEVER, "x");
    }

    @Provide
    Arbitrary<SurfacePreset> surfaces() {
        return Arbitraries.of(SurfacePreset.all());
    }
}
