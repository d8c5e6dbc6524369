package org.shutoffbench.harness.visits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.shutoffbench.harness.scenario.Costs;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.harness.scenario.unit.Quantity;

/** The formulas of the three ways against lots that are gone through joint by joint. All numbers are invented. */
class WaysTest {

    private static final double CALLED = 0.97;
    private static final double MISSED = 0.01;
    private static final double DETECTED = 0.6;
    private static final double FALSELY_REJECTED = 0.003;
    private static final double REJECTED = MISSED * DETECTED + (1 - MISSED) * FALSELY_REJECTED;
    private static final Costs COSTS = new Costs(
            "invented crowns",
            60,
            Quantity.parse("12 s", Dimension.TIME),
            Quantity.parse("30 s", Dimension.TIME),
            Quantity.parse("3 min", Dimension.TIME),
            1,
            600,
            Quantity.parse("10 %", Dimension.PURE),
            100);
    private static final List<Way> WAYS = new Ways(
                    COSTS,
                    1.5,
                    Bounded.exactly(CALLED),
                    Bounded.exactly(MISSED),
                    Bounded.exactly(REJECTED),
                    Bounded.exactly(MISSED * (1 - DETECTED)))
            .all();

    @Test
    void onePassCostsItsLabourItsReworkAndItsEscapes() {
        Way onePass = WAYS.get(0);
        assertThat(onePass.seconds().estimate()).isCloseTo(13.5 + 0.03 * 180, within(1e-12));
        assertThat(onePass.cost().estimate()).isCloseTo(13.5 / 60 + 0.03 * 4 + 0.97 * 0.01 * 600, within(1e-12));
        assertThat(onePass.leftLow().estimate()).isCloseTo(0.0097, within(1e-12));
    }

    @Test
    void auditingAllIsSamplingAll() {
        Costs all = new Costs(
                COSTS.currency(),
                60,
                COSTS.tightening(),
                COSTS.audit(),
                COSTS.rework(),
                1,
                600,
                Quantity.parse("100 %", Dimension.PURE),
                100);
        List<Way> ways = new Ways(
                        all,
                        1.5,
                        Bounded.exactly(CALLED),
                        Bounded.exactly(MISSED),
                        Bounded.exactly(REJECTED),
                        Bounded.exactly(MISSED * (1 - DETECTED)))
                .all();
        assertThat(ways.get(2).cost().estimate()).isCloseTo(ways.get(1).cost().estimate(), within(1e-12));
        assertThat(ways.get(2).leftLow().estimate())
                .isCloseTo(ways.get(1).leftLow().estimate(), within(1e-12));
    }

    /** 40,000 lots of 100 joints called done; the bars are five standard errors of the shares counted by lot. */
    @Test
    void aSampledAuditIsWhatGoingThroughLotsGives() {
        SplittableRandom random = new SplittableRandom(20_250_101);
        int lots = 40_000;
        double audits = 0;
        double auditsSquared = 0;
        double left = 0;
        double leftSquared = 0;
        for (int lot = 0; lot < lots; lot++) {
            boolean[] low = new boolean[100];
            boolean[] wouldReject = new boolean[100];
            boolean screened = false;
            for (int joint = 0; joint < 100; joint++) {
                low[joint] = random.nextDouble() < MISSED;
                wouldReject[joint] = random.nextDouble() < (low[joint] ? DETECTED : FALSELY_REJECTED);
                screened |= joint < 10 && wouldReject[joint];
            }
            int audited = screened ? 100 : 10;
            int stays = 0;
            for (int joint = 0; joint < 100; joint++) {
                stays += low[joint] && !(joint < audited && wouldReject[joint]) ? 1 : 0;
            }
            audits += audited / 100.0;
            auditsSquared += audited * audited / 1e4;
            left += stays / 100.0;
            leftSquared += stays * stays / 1e4;
        }
        double auditShare = (WAYS.get(2).seconds().estimate()
                        - WAYS.get(0).seconds().estimate()
                        - (WAYS.get(2).rework().estimate()
                                        - WAYS.get(0).rework().estimate())
                                * 180)
                / 30
                / CALLED;
        assertThat(auditShare).isCloseTo(audits / lots, within(bar(audits, auditsSquared, lots)));
        assertThat(WAYS.get(2).leftLow().estimate() / CALLED)
                .isCloseTo(left / lots, within(bar(left, leftSquared, lots)));
    }

    private static double bar(double sum, double squares, int n) {
        double mean = sum / n;
        return 5 * Math.sqrt((squares / n - mean * mean) / n);
    }

    @Test
    void boundsEncloseWhatTheirCornersGive() {
        Bounded called = new Bounded(0.97, 0.9, 0.99);
        Bounded missed = new Bounded(0.01, 0.005, 0.02);
        Bounded rejected = new Bounded(REJECTED, 0.004, 0.02);
        Bounded escaped = new Bounded(0.004, 0.001, 0.009);
        List<Way> bounded = new Ways(COSTS, 1.5, called, missed, rejected, escaped).all();
        for (double c : new double[] {called.low(), called.high()}) {
            for (double m : new double[] {missed.low(), missed.high()}) {
                for (double q : new double[] {rejected.low(), rejected.high()}) {
                    List<Way> corner = new Ways(
                                    COSTS,
                                    1.5,
                                    Bounded.exactly(c),
                                    Bounded.exactly(m),
                                    Bounded.exactly(q),
                                    Bounded.exactly(0.004))
                            .all();
                    for (int w = 0; w < 3; w++) {
                        assertHolds(bounded.get(w).cost(), corner.get(w).cost().estimate());
                        assertHolds(
                                bounded.get(w).seconds(),
                                corner.get(w).seconds().estimate());
                        assertHolds(
                                bounded.get(w).leftLow(),
                                corner.get(w).leftLow().estimate());
                    }
                }
            }
        }
    }

    private static void assertHolds(Bounded bounds, double value) {
        assertThat(value).isBetween(bounds.low() - 1e-12, bounds.high() + 1e-12);
    }
}
