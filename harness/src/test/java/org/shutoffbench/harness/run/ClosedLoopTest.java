package org.shutoffbench.harness.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Command;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.Target;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.population.DrawnCase;

class ClosedLoopTest {

    private static final int JOINTS = 12;

    /** Brakes after a time; on the way it drives slower for a while, or answers nonsense. */
    private record Script(
            String name, int slowFrom, int slowTo, int stopAt, boolean throwsAtStop, Set<Channel> channels)
            implements StrategyFactory {

        @Override
        public StrategyDescriptor descriptor() {
            return new StrategyDescriptor(name, "scripted", channels, Set.of(), List.of(), List.of(), 8);
        }

        @Override
        public ShutoffStrategy create(Settings settings, Provision provision) {
            return new ShutoffStrategy() {
                private int tick;
                private double heard;

                @Override
                public void arm(Target target) {
                    tick = 0;
                    heard = 0;
                }

                @Override
                public Command onSample(SensorFrame frame) {
                    // what is heard decides, so that another sample would give another stop
                    heard += Float.isNaN(frame.carrierSpeedRadPerS) ? 0 : frame.carrierSpeedRadPerS;
                    int now = tick++;
                    if (now >= stopAt + (int) (heard % 7)) {
                        if (throwsAtStop) {
                            throw new IllegalStateException("scripted");
                        }
                        return Command.BRAKE;
                    }
                    return now >= slowFrom && now < slowTo ? Command.keep(0.6f) : Command.FULL;
                }

                @Override
                public Verdict verdict() {
                    return Verdict.REACHED;
                }

                @Override
                public int estimates(float[] into) {
                    return 0;
                }
            };
        }
    }

    private static Script stopsAt(int tick) {
        return new Script("stops at " + tick, 0, 0, tick, false, Set.of(Channel.CARRIER_SPEED));
    }

    private static List<TighteningRecord> tighten(Bench bench, List<? extends StrategyFactory> factories) {
        List<Contestant> contestants = new ArrayList<>();
        for (StrategyFactory factory : factories) {
            contestants.add(new Contestant(factory, Map.of(), Bench.provision(bench.scenario(), Set.of())));
        }
        Bench own = bench.with(contestants);
        ClosedLoop loop = own.newLoop();
        List<TighteningRecord> records = new ArrayList<>();
        for (int family = 0; family < bench.scenario().families().size(); family++) {
            for (int joint = 0; joint < JOINTS; joint++) {
                records.addAll(List.of(own.tighten(loop, family, joint)));
            }
        }
        return records;
    }

    @Test
    void aSharedRunEqualsSeparateRunsBitForBit() {
        Bench bench = Benches.scattered();
        List<Script> scripts = List.of(
                stopsAt(1500),
                new Script("slows early", 300, 900, 2500, false, Set.of(Channel.CARRIER_SPEED, Channel.ANVIL_ANGLE)),
                stopsAt(3000),
                new Script("slows late", 1800, 2200, 2600, false, Set.of(Channel.CARRIER_SPEED, Channel.BLOWS)),
                stopsAt(200));
        List<TighteningRecord> shared = tighten(bench, scripts);
        for (int s = 0; s < scripts.size(); s++) {
            List<TighteningRecord> separate = tighten(bench, List.of(scripts.get(s)));
            for (int i = 0; i < separate.size(); i++) {
                assertThat(Records.asStrategy(shared.get(i * scripts.size() + s), 0))
                        .isEqualTo(separate.get(i));
            }
        }
    }

    @Test
    void aStrategyThatDrivesSlowerForAWhileEndsElsewhere() {
        List<TighteningRecord> records = tighten(
                Benches.plain(),
                List.of(
                        new Script("slow", 300, 900, 2500, false, Set.of()),
                        new Script("full", 0, 0, 2500, false, Set.of())));
        assertThat(records.get(0).clampForceN()).isLessThan(records.get(1).clampForceN());
    }

    @Test
    void aStrategyThatBreaksItsContractEndsWithAFaultAndDisturbsNobody() {
        Bench bench = Benches.plain();
        List<TighteningRecord> records = tighten(
                bench, List.of(stopsAt(2000), new Script("throws", 0, 0, 1000, true, Set.of(Channel.CARRIER_SPEED))));
        assertThat(records.get(1).endReason()).isEqualTo(EndReason.FAULT);
        assertThat(records.get(1).verdict()).isEqualTo(Verdict.NOT_REACHED);
        assertThat(records.get(0))
                .isEqualTo(tighten(bench, List.of(stopsAt(2000))).get(0));
    }

    @Test
    void whoNeverStopsEndsAtTheTimeLimitAsNotReached() {
        TighteningRecord record = tighten(Benches.plain(), List.of(stopsAt(Integer.MAX_VALUE - 10)))
                .get(0);
        assertThat(record.endReason()).isEqualTo(EndReason.TIME_LIMIT);
        assertThat(record.verdict()).isEqualTo(Verdict.NOT_REACHED);
        assertThat(record.timeS()).isEqualTo(1.0);
    }

    @Test
    void aFlatBatteryEndsATighteningBeforeItBegins() {
        TighteningRecord record =
                tighten(Benches.plain("supply: 0.7"), List.of(stopsAt(2000))).get(0);
        assertThat(record.endReason()).isEqualTo(EndReason.BATTERY);
        assertThat(record.outcome()).isEqualTo(Outcome.UNSEATED);
        assertThat(record.blows()).isZero();
    }

    @Test
    void aBoltThatBreaksEndsTheTightening() {
        TighteningRecord record = tighten(
                        Benches.plain("yield: {force: 20 kN, fracture_angle: 10 deg}"), List.of(stopsAt(9000)))
                .get(0);
        assertThat(record.endReason()).isEqualTo(EndReason.FRACTURE);
        assertThat(record.outcome()).isEqualTo(Outcome.FRACTURED);
        assertThat(record.verdict()).isEqualTo(Verdict.NOT_REACHED);
    }

    @Test
    void theRunOnCountsFromTheStopCommand() {
        TighteningRecord early =
                tighten(Benches.plain(), List.of(stopsAt(1200))).get(0);
        assertThat(early.runOnAngleDeg()).isPositive();
        assertThat(early.runOnAngleDeg()).isLessThan(10);
    }

    @Test
    void aFlatBatteryShowsNothingOfTheJointBefore() {
        Bench bench = Benches.plain();
        Bench own = bench.with(
                List.of(new Contestant(stopsAt(2000), Map.of(), Bench.provision(bench.scenario(), Set.of()))));
        ClosedLoop loop = own.newLoop();
        assertThat(own.tighten(loop, 0, 0)[0].clampForceN()).isPositive();
        DrawnCase flat = Benches.plain("supply: 0.7").population().draw(0, 1);
        TighteningRecord record = own.tighten(loop, flat)[0];
        assertThat(record.endReason()).isEqualTo(EndReason.BATTERY);
        assertThat(record.outcome()).isEqualTo(Outcome.UNSEATED);
        assertThat(record.clampForceN()).isZero();
        assertThat(record.blows()).isZero();
    }
}
