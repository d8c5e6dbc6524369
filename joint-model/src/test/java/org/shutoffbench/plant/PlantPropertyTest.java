package org.shutoffbench.plant;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.LongRange;
import org.shutoffbench.plant.Tightening.Reach;

/** Parameters well outside the demo: 10 to 1,000 kN/mm, prevailing 0 to 60 N m, s 1 to 1.4, tool +-30 %. */
class PlantPropertyTest {

    /** No run needs more steps: 3.5 s at a microsecond each would be this many. */
    private static final int MOST_STEPS = 3_500_000;

    @Property(tries = 300, shrinking = ShrinkingMode.OFF)
    void farOutTighteningsEndSoundly(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Tightening tightening = Tightening.draw(seed, Reach.FAR_OUT);
        FastPlant plant = new FastPlant();
        tightening.start(plant);
        EnergyAudit audit = new EnergyAudit(plant, tightening.joint(), tightening.tool());
        int steps = 0;
        while (plant.state().blows < 25 && !plant.state().fractured && plant.plan() < 2) {
            double before = plant.state().timeS;
            audit.commit();
            assertThat(plant.state().timeS).isGreaterThan(before);
            assertThat(++steps).isLessThan(MOST_STEPS);
        }
        PlantState end = plant.state();
        assertThat(end.guardSteps).isZero();
        assertThat(Double.isFinite(end.clampForceN)).isTrue();
        assertThat(Double.isFinite(end.carrierSpeedRadPerS)).isTrue();
        assertThat(end.clampForceN).isNotNegative();
        assertThat(audit.balance().relativeGap()).isLessThan(1e-6);
    }
}
