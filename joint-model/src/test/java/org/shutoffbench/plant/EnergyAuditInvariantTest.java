package org.shutoffbench.plant;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shutoffbench.plant.Tightening.Reach;

/** Energy is neither made nor lost: the books close to 1e-6 of the work done. */
class EnergyAuditInvariantTest {

    private static final double CLOSED = 1e-6;

    @Test
    void booksOfTheFastPlantCloseOnRandomTightenings() {
        for (long seed = 0; seed < 100; seed++) {
            assertCloses(Tightening.draw(seed, Reach.FAMILIES).audited(new FastPlant()), seed);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {0, 1, 2, 3, 4, 5})
    void booksOfTheReferencePlantClose(long seed) {
        assertCloses(Tightening.draw(seed, Reach.FAMILIES).audited(new ReferencePlant()), seed);
    }

    @Test
    void plasticWorkIsBookedWhereTheBoltYields() {
        Tightening yields = new Tightening(
                ReferenceJoints.joint(312e6, 8, java.util.List.of(), 1, org.shutoffbench.joint.Yielding.at(50e3)),
                org.shutoffbench.tool.ReferenceTools.LIGHT,
                1,
                1,
                Drive.BRAKE);
        EnergyAudit.Balance balance = yields.audited(new FastPlant());
        assertCloses(balance, -1);
        assertThat(balance.plasticJ()).isGreaterThan(1);
    }

    private static void assertCloses(EnergyAudit.Balance balance, long seed) {
        assertThat(balance.relativeGap())
                .as("gap at seed %d: %s", seed, balance)
                .isLessThan(CLOSED);
        assertThat(Math.abs(balance.neglectedJ()))
                .as("ringing laid to rest at seed %d", seed)
                .isLessThan(CLOSED * (1 + balance.motorWorkJ()));
    }
}
