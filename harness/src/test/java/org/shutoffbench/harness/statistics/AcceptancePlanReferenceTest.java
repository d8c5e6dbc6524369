package org.shutoffbench.harness.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Against SciPy (plans.csv states version, date and tolerance), and against published plans: zero-failure sample sizes; 132/3
 * for 1 % and 5 % at 5 % and 10 %, and 80/7 for 5 % and 15 % at 5 % and 7.5 % stand in textbooks and in the manual of an R
 * package for acceptance sampling (memory).
 */
class AcceptancePlanReferenceTest {

    /** Success run at 95 %: Wilks; the sizes are those of checks handbooks on reliability demonstration. */
    @ParameterizedTest
    @CsvSource({"0.01,299", "0.0027,1109", "0.001,2995", "0.05,59"})
    void theZeroFailurePlanIsTheSuccessRun(double failing, int n) {
        assertThat(AttributePlan.protecting(0, failing, 0.05).n()).isEqualTo(n);
    }

    @Test
    void plansByAttributes() {
        int rows = 0;
        for (String[] row : ReferenceRows.of("plans.csv")) {
            if (row[0].equals("attributes")) {
                AttributePlan plan = AttributePlan.holding(
                        new RiskPoint(number(row, 3), number(row, 4)), new RiskPoint(number(row, 1), number(row, 2)));
                assertThat(plan).isEqualTo(new AttributePlan((int) number(row, 5), (int) number(row, 6)));
                rows++;
            }
        }
        assertThat(rows).isEqualTo(5);
    }

    @Test
    void acceptanceConstantsForOneLimit() {
        for (String[] row : ReferenceRows.of("plans.csv")) {
            if (row[0].equals("onelimit")) {
                RiskPoint buyer = new RiskPoint(number(row, 2), number(row, 3));
                assertThat(VariablesPlan.protecting((int) number(row, 1), 1, buyer)
                                .k())
                        .isCloseTo(number(row, 4), within(1e-7 * number(row, 4)));
            }
        }
    }

    @Test
    void acceptanceBetweenTwoLimits() {
        for (String[] row : ReferenceRows.of("plans.csv")) {
            if (row[0].equals("twolimits")) {
                VariablesPlan plan = new VariablesPlan((int) number(row, 1), number(row, 2), 2);
                assertThat(plan.acceptance(number(row, 3), number(row, 4)))
                        .as(String.join(",", row))
                        .isCloseTo(number(row, 5), within(1e-9 * number(row, 5) + 1e-12));
            }
        }
    }

    /** Natrella, one-sided tolerance factor n 10, 95 % / 95 %: 2.911 (memory). */
    @Test
    void theConstantOfOneLimitIsTheOneSidedToleranceFactor() {
        assertThat(VariablesPlan.protecting(10, 1, new RiskPoint(0.05, 0.05)).k())
                .isCloseTo(2.911, within(5e-4));
    }

    @ParameterizedTest
    @CsvSource({"2,0.002,0.02", "1,0.001,0.01", "2,0.0005,0.0027"})
    void aPlanByVariablesHoldsBothRisksAndNoSmallerOneDoes(int limits, double good, double bad) {
        RiskPoint buyer = new RiskPoint(bad, 0.05);
        RiskPoint seller = new RiskPoint(good, 0.05);
        VariablesPlan plan = VariablesPlan.holding(limits, buyer, seller);
        assertThat(plan.easiest(bad)).isCloseTo(0.05, within(1e-6));
        assertThat(plan.hardest(good)).isGreaterThanOrEqualTo(0.95);
        VariablesPlan smaller = VariablesPlan.protecting(plan.n() - 1, limits, buyer);
        assertThat(smaller.hardest(good)).isLessThan(0.95);
    }

    @ParameterizedTest
    @CsvSource({"0,0.03,0.1", "3,0.05,0.1", "7,0.15,0.075"})
    void noSmallerSampleProtectsTheBuyer(int c, double failing, double risk) {
        AttributePlan plan = AttributePlan.protecting(c, failing, risk);
        assertThat(plan.acceptance(failing)).isLessThanOrEqualTo(risk);
        assertThat(new AttributePlan(plan.n() - 1, c).acceptance(failing)).isGreaterThan(risk);
    }

    @Test
    void sharesTooNearToEachOtherAreRefused() {
        assertThatThrownBy(() -> AttributePlan.holding(new RiskPoint(0.01, 0.05), new RiskPoint(0.01, 0.05)))
                .hasMessageContaining("must lie below");
        assertThatThrownBy(() -> VariablesPlan.holding(2, new RiskPoint(0.01, 0.05), new RiskPoint(0.00999, 0.05)))
                .hasMessageContaining("more than");
    }

    private static double number(String[] row, int i) {
        return Double.parseDouble(row[i]);
    }
}
