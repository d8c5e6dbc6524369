package org.shutoffbench.joint.prevailing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.shutoffbench.joint.thread.MetricSize;
import org.shutoffbench.joint.thread.ScrewThread;
import org.shutoffbench.joint.thread.UnifiedSize;

class LockNutTest {

    private static final ScrewThread M12 = MetricSize.M12.coarse();

    /** M12 insert nut: element 10.2 mm deep, so a bolt 17.2 mm past the face meets it 7 mm or 4 turns before it seats. */
    @Test
    void turnsBetweenElementAndSeatingFollowFromTheProtrusion() {
        double turns = LockNutKind.NON_METALLIC_INSERT.turnsBeforeSnug(M12, 17.2e-3);
        assertThat(turns).isCloseTo(4, within(1e-9));
        assertThat(LockNutKind.ALL_METAL.turnsBeforeSnug(M12, 17.2e-3)).isCloseTo((17.2 - 8.4) / 1.75, within(1e-9));
        assertThat(LockNutKind.NON_METALLIC_INSERT.turnsBeforeSnug(M12, 14.5e-3))
                .isGreaterThan(0);
        assertThatThrownBy(() -> LockNutKind.NON_METALLIC_INSERT.turnsBeforeSnug(M12, 14e-3))
                .hasMessage("bolt stands 14.00 mm past the nut's bearing face, short of the 14.40 mm that its locking"
                        + " element needs");
        assertThat(LockNutKind.ALL_METAL.heightM(M12)).isCloseTo(12e-3, within(1e-12));
    }

    /** ISO 2320, from memory: insert to 120 C, all-metal to 300 C, both from -50 C. */
    @Test
    void heatEndsTheScopeOfAnInsertFirst() {
        assertThat(LockNutKind.NON_METALLIC_INSERT.covers(120)).isTrue();
        assertThat(LockNutKind.NON_METALLIC_INSERT.covers(121)).isFalse();
        assertThat(LockNutKind.ALL_METAL.covers(300)).isTrue();
        assertThat(LockNutKind.ALL_METAL.covers(301)).isFalse();
        assertThat(LockNutKind.ALL_METAL.covers(-50)).isTrue();
        assertThat(LockNutKind.ALL_METAL.covers(-51)).isFalse();
        assertThat(LockNutKind.NON_METALLIC_INSERT.hottestC()).isEqualTo(120);
        assertThat(LockNutKind.NON_METALLIC_INSERT.coldestC()).isEqualTo(-50);
        assertThat(LockNutKind.ALL_METAL.title()).isEqualTo("all-metal");
    }

    @ParameterizedTest
    @EnumSource(MetricSize.class)
    void metricLimitsExistForEverySizeAndFallWithReuse(MetricSize size) {
        MetricPrevailing nut = MetricPrevailing.of(size);
        PrevailingRange range = nut.firstUse();
        assertThat(nut.fifthOffLowestNm()).isBetween(0.1, range.lowestNm());
        assertThat(range.middleNm()).isCloseTo((range.lowestNm() + range.highestNm()) / 2, within(1e-12));
        assertThat(range.sourceKey()).isEqualTo("ISO-2320");
        double diameterMm = size.diameterM() * 1e3;
        assertThat(range.highestNm() / (diameterMm * diameterMm)).isBetween(0.05, 0.15);
    }

    @ParameterizedTest
    @EnumSource(UnifiedSize.class)
    void inchLimitsExistForEverySize(UnifiedSize size) {
        UnifiedPrevailing nut = UnifiedPrevailing.of(size);
        assertThat(nut.used(true).lowestNm()).isLessThan(nut.used(false).lowestNm());
        assertThat(nut.reusedLowestNm(true)).isLessThan(nut.used(true).lowestNm());
        assertThat(nut.reusedLowestNm(false)).isLessThan(nut.used(false).lowestNm());
        assertThat(nut.used(true).sourceKey()).isEqualTo("TM-1-1500-204");
    }

    /** Zimandy and Hess 2013: the first seating takes 10 to 25 %. */
    @Test
    void reuseTakesMostAtTheFirstSeating() {
        ReuseDecay decay = new ReuseDecay(0.2, 0.05);
        assertThat(decay.factor(0)).isEqualTo(1);
        assertThat(decay.factor(1)).isCloseTo(0.8, within(1e-12));
        assertThat(decay.factor(3)).isCloseTo(0.8 * 0.95 * 0.95, within(1e-12));
        assertThat(1 - ReuseDecay.TYPICAL.factor(1)).isBetween(0.10, 0.25);
        assertThat(ReuseDecay.TYPICAL.firstLoss()).isCloseTo(0.175, within(1e-12));
        assertThatThrownBy(() -> decay.factor(-1)).hasMessageContaining("repeat");
        assertThatThrownBy(() -> new ReuseDecay(1, 0)).hasMessageContaining("losses");
        assertThatThrownBy(() -> new ReuseDecay(0, -0.1)).hasMessageContaining("losses");
    }

    @Test
    void aRangeRises() {
        assertThatThrownBy(() -> new PrevailingRange(1, 1, "none")).hasMessageContaining("range");
        assertThatThrownBy(() -> new PrevailingRange(1, 0, "none")).hasMessageContaining("range");
    }
}
