package org.shutoffbench.controller.strategy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.shutoffbench.controller.strategy.ScriptedJoint.MEASURED;
import static org.shutoffbench.controller.strategy.ScriptedJoint.contact;

import java.util.Collection;
import java.util.EnumSet;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Command;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.Target;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.controller.strategy.ScriptedJoint.Heard;

/** On joints without noise the tick of the stop and the estimates follow from the strategy's own page. */
class KnownStopsTest {

    private static final double WORK_J = 2.75;
    /** Six blows of 2.75 J on 8 N m end where the joint seats. */
    private static final double SNUG_RAD = 6 * WORK_J / 8;

    /**
     * The blow that shows it: by the page's equations the seventh rises by 2.6 standard errors, less than the alarm's 4 and
     * the allowance of 0.5, the eighth by more.
     */
    private static final int SEEN = 8;

    /** 8 N m of prevailing torque up to snug, 100 N m/rad past that. */
    private static ScriptedJoint lockNut() {
        return new ScriptedJoint(8, SNUG_RAD, 100, WORK_J);
    }

    private static Heard silence(StrategyFactory factory, Map<String, Double> settings, int... blowTicks) {
        ShutoffStrategy strategy = factory.create(
                Settings.of(factory.descriptor().settings(), settings),
                new Provision(ScriptedJoint.RATE_HZ, EnumSet.allOf(Channel.class)));
        strategy.arm(new Target(84, 0.15f));
        SensorFrame frame = new SensorFrame();
        for (int tick = 0; tick < 30_000; tick++) {
            frame.blows = 0;
            for (int blow : blowTicks) {
                frame.blows += blow == tick ? 1 : 0;
            }
            if (strategy.onSample(frame).isShutoff()) {
                return new Heard(strategy, tick);
            }
        }
        return new Heard(strategy, -1);
    }

    static Collection<StrategyFactory> all() {
        return Strategies.byName().values();
    }

    @ParameterizedTest
    @MethodSource("all")
    void aTargetOfNothingIsReachedAtTheFirstSample(StrategyFactory factory) {
        Heard heard = lockNut().struck(1).playTo(factory, Map.of(), 0, EnumSet.allOf(Channel.class));
        assertThat(heard.stopTick()).isZero();
        assertThat(heard.strategy().verdict()).isEqualTo(Verdict.REACHED);
    }

    @ParameterizedTest
    @MethodSource("all")
    void theStopIsABrakeThatStaysUntilArmedAgain(StrategyFactory factory) {
        ShutoffStrategy strategy = factory.create(
                Settings.of(factory.descriptor().settings(), Map.of()),
                new Provision(ScriptedJoint.RATE_HZ, EnumSet.allOf(Channel.class)));
        strategy.arm(new Target(0, 0.15f));
        SensorFrame quiet = new SensorFrame();
        for (int tick = 0; tick < 50; tick++) {
            assertThat(strategy.onSample(quiet)).isSameAs(Command.BRAKE);
        }
        strategy.arm(new Target(84, 0.15f));
        assertThat(strategy.onSample(quiet)).isSameAs(Command.FULL);
        assertThat(strategy.verdict()).isEqualTo(Verdict.NOT_REACHED);
    }

    @ParameterizedTest
    @MethodSource("all")
    void aToolWithoutARequiredChannelIsRefusedByName(StrategyFactory factory) {
        for (Channel channel : factory.descriptor().requiredChannels()) {
            EnumSet<Channel> others = EnumSet.complementOf(EnumSet.of(channel));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> factory.create(
                            Settings.of(factory.descriptor().settings(), Map.of()), new Provision(10_000, others)))
                    .withMessageContaining(factory.descriptor().name())
                    .withMessageContaining(channel.title());
        }
    }

    @ParameterizedTest
    @CsvSource({"0.3, 3000", "0.05, 500", "1.2345, 12345"})
    void elapsedTimeStopsAtItsTick(double driveTimeS, int tick) {
        Heard heard = silence(new ElapsedTime.Factory(), Map.of("drive time", driveTimeS));
        assertThat(heard.stopTick()).isEqualTo(tick);
        assertThat(heard.strategy().verdict()).isEqualTo(Verdict.REACHED);
        assertThat(heard.strategy().estimates(new float[1])).isZero();
    }

    @ParameterizedTest
    @CsvSource({"1, 0.25, 4500", "2, 0.25, 6500", "1, 0.1, 3000", "0.5, 0.2, 3000"})
    void anOperatorLetsGoAfterJudgedHammeringAndReaction(double judgement, double reactionS, int ticks) {
        Heard heard = silence(
                new OperatorFeel.Factory(),
                Map.of("hammering time", 0.2, "judgement", judgement, "reaction time", reactionS),
                1000,
                1400);
        assertThat(heard.stopTick()).isEqualTo(1400 + ticks);
        assertThat(heard.estimate(0)).isCloseTo((ticks + 1) / 10_000f, within(1e-6f));
    }

    @Test
    void singleKnocksAreNotHammering() {
        assertThat(silence(new OperatorFeel.Factory(), Map.of(), 100, 701, 1302, 5000)
                        .stopTick())
                .isEqualTo(-1);
        // 60 ms are 600 samples: blows 599 apart have 598 quiet samples between them and are heard as one noise.
        assertThat(silence(new OperatorFeel.Factory(), Map.of(), 100, 699).stopTick())
                .isEqualTo(699 + 4500);
        assertThat(silence(new OperatorFeel.Factory(), Map.of(), 5).stopTick()).isEqualTo(-1);
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "8, 8", "7.4, 7", "7.6, 8"})
    void blowCountStopsAtTheContactOfItsBlow(double blows, int stop) {
        Heard heard = lockNut().struck(12).playTo(new BlowCount.Factory(), Map.of("blows", blows));
        assertThat(heard.stopTick()).isEqualTo(contact(stop));
        assertThat(heard.estimate(0)).isEqualTo(stop);
        assertThat(heard.strategy().verdict()).isEqualTo(Verdict.REACHED);
    }

    @Test
    void blowCountCountsDoublesAndBelievesNoMoreThanTwoAtOnce() {
        assertThat(silence(new BlowCount.Factory(), Map.of("blows", 4.0), 10, 10, 20, 20)
                        .stopTick())
                .isEqualTo(20);
        assertThat(silence(new BlowCount.Factory(), Map.of("blows", 4.0), 10, 10, 10, 10, 50)
                        .stopTick())
                .isEqualTo(-1);
    }

    @ParameterizedTest
    @CsvSource({"1", "5", "9"})
    void gatedBlowCountCountsFromTheBlowAfterSnugWasSeen(int blows) {
        ScriptedJoint joint = lockNut().struck(25);
        Heard heard = joint.playTo(new GatedBlowCount.Factory(), Map.of("blows past snug", (double) blows));
        assertThat(heard.stopTick()).isEqualTo(contact(SEEN + blows));
        assertThat(heard.estimate(0)).isCloseTo((float) SNUG_RAD, within(1e-4f));
        // Running torque as a blow's work over its advance.
        assertThat(heard.estimate(1)).isCloseTo(8, within(0.01f));
        assertThat(heard.estimate(2)).isEqualTo(blows);
    }

    @Test
    void gatedBlowCountOfNoneStopsWhereSnugIsSeen() {
        ScriptedJoint joint = lockNut().struck(12);
        Heard heard = joint.playTo(new GatedBlowCount.Factory(), Map.of("blows past snug", 0.0));
        assertThat(heard.stopTick()).isEqualTo(contact(SEEN) + MEASURED);
    }

    @ParameterizedTest
    @CsvSource({"15", "30", "46"})
    void angleFromSnugStopsAtTheBlowThatEndsNearestToTheAngle(double angleDeg) {
        ScriptedJoint joint = lockNut().struck(30);
        double snug = SNUG_RAD;
        int stop = SEEN;
        while (joint.restRad(stop) - snug + (joint.restRad(stop) - joint.restRad(stop - 1)) / 2
                < Math.toRadians(angleDeg)) {
            stop++;
        }
        Heard heard = joint.playTo(new AngleFromSnug.Factory(), Map.of("angle past snug", angleDeg));
        assertThat(heard.stopTick()).isEqualTo(contact(stop) + MEASURED);
        assertThat(heard.estimate(0)).isCloseTo((float) snug, within(1e-4f));
        assertThat(heard.estimate(1)).isCloseTo(8, within(0.01f));
        assertThat(heard.estimate(2)).isCloseTo((float) (joint.restRad(stop) - snug), within(1e-4f));
    }

    @Test
    void whereNothingRisesSnugStrategiesNeverStop() {
        ScriptedJoint joint = new ScriptedJoint(8, 1e6, 100, WORK_J).struck(30);
        assertThat(joint.playTo(new AngleFromSnug.Factory(), Map.of("angle past snug", 0.0))
                        .stopTick())
                .isEqualTo(-1);
        Heard heard = joint.playTo(new GatedBlowCount.Factory(), Map.of("blows past snug", 0.0));
        assertThat(heard.stopTick()).isEqualTo(-1);
        assertThat(heard.estimate(0)).isNaN();
        assertThat(heard.strategy().verdict()).isEqualTo(Verdict.NOT_REACHED);
    }

    @Test
    void aNutThatSpunFreelyHasNoRunningTorque() {
        ScriptedJoint joint =
                new ScriptedJoint(0.2, 6, 100, WORK_J).afterTurningFreely(6).struck(20);
        Heard heard = joint.playTo(new AngleFromSnug.Factory(), Map.of("angle past snug", 30.0));
        assertThat(heard.estimate(0)).isCloseTo(6, within(1e-4f));
        assertThat(heard.estimate(1)).isZero();
    }

    private static int endOfPulse(int blow) {
        // The pulse's last sample above half the floor, then 3 ms of quiet: seen where torque first stays low for 30
        // samples.
        return contact(blow) + ScriptedJoint.PULSE - 1 + ScriptedJoint.QUIET;
    }

    @Test
    void pulseTorqueStopsWhereTheFirstPulseHighEnoughHasEnded() {
        ScriptedJoint joint = lockNut().withPeaks(60, 80, 99.9f, 100.1f, 150);
        Heard heard = joint.playTo(new PulseTorqueThreshold.Factory(), Map.of("pulse torque", 100.0));
        assertThat(heard.stopTick()).isBetween(endOfPulse(4) - 1, endOfPulse(4) + 1);
        assertThat(heard.estimate(0)).isCloseTo(100.1f, within(1e-3f));
        assertThat(heard.strategy().verdict()).isEqualTo(Verdict.REACHED);
    }

    @Test
    void pulsesMustReachTheThresholdInARow() {
        ScriptedJoint joint = lockNut().withPeaks(120, 120, 60, 120, 120, 120, 120);
        Heard heard = joint.playTo(new PulseTorqueThreshold.Factory(), Map.of("pulse torque", 100.0, "pulses", 3.0));
        assertThat(heard.stopTick()).isBetween(endOfPulse(6) - 1, endOfPulse(6) + 1);
    }

    @Test
    void runningTorqueOfAtLeastAThirdOfTheTargetIsAdded() {
        // 30 N m of 84: added, so 100 N m becomes 130.
        ScriptedJoint joint =
                new ScriptedJoint(30, 8, 200, 11).withPeaks(new float[60]).struck(60);
        float[] peaks = new float[60];
        for (int i = 0; i < peaks.length; i++) {
            peaks[i] = i < 40 ? 50 : i == 45 ? 120 : i == 50 ? 135 : 60;
        }
        joint.withPeaks(peaks);
        Map<String, Double> settings = Map.of("pulse torque", 100.0, "blow work", 11.0);
        Heard heard = joint.playTo(new TorqueMinusPrevailing.Factory(), settings);
        assertThat(heard.estimate(2)).isCloseTo(30, within(0.5f));
        assertThat(heard.stopTick()).isBetween(endOfPulse(51) - 1, endOfPulse(51) + 1);
        // 30 N m of 100 are left out: the pulse of 120 N m stops the tool.
        Heard left = joint.playTo(new TorqueMinusPrevailing.Factory(), settings, 100, EnumSet.allOf(Channel.class));
        assertThat(left.estimate(2)).isCloseTo(30, within(0.5f));
        assertThat(left.stopTick()).isBetween(endOfPulse(46) - 1, endOfPulse(46) + 1);
    }

    @Test
    void theGradientStopsWherePulsesNoLongerGrowWithAngle() {
        ScriptedJoint joint = lockNut().struck(40);
        float[] peaks = new float[40];
        int yield = 20;
        for (int i = 0; i < peaks.length; i++) {
            peaks[i] = 25 + (float) joint.clampingNm(Math.min(i + 1, yield));
        }
        Heard straight = lockNut().struck(30).playTo(new TorqueGradient.Factory(), Map.of("least pulse torque", 1.0));
        assertThat(straight.stopTick()).isEqualTo(-1);
        // The slope of the fit is the joint's.
        assertThat(straight.estimate(2)).isCloseTo(100, within(1f));

        // Pulses that have ended before the step is measured belong to that step all the same.
        Heard brief = lockNut()
                .struck(30)
                .withPulses(6)
                .playTo(new TorqueGradient.Factory(), Map.of("least pulse torque", 1.0));
        assertThat(brief.estimate(2)).isCloseTo(100, within(1f));

        joint.withPeaks(peaks);
        Heard flat =
                joint.playTo(new TorqueGradient.Factory(), Map.of("least pulse torque", 1.0, "gradient fraction", 0.5));
        Heard flatter = joint.playTo(
                new TorqueGradient.Factory(), Map.of("least pulse torque", 1.0, "gradient fraction", 0.35));
        assertThat(flat.stopTick()).isGreaterThan(endOfPulse(yield) + 1);
        assertThat(flatter.stopTick()).isGreaterThan(flat.stopTick());
        assertThat(flat.estimate(2)).isLessThan(0.51f * 100);
        Heard waits = joint.playTo(
                new TorqueGradient.Factory(), Map.of("least pulse torque", 1000.0, "gradient fraction", 0.5));
        assertThat(waits.stopTick()).isEqualTo(-1);
    }

    private static Map<String, Double> exactWork() {
        return Map.of("blow energy at rest", WORK_J, "blow energy per speed", 0.0, "transmission", 1.0);
    }

    /** First blow after which clamping torque now and after one more blow lie evenly about the target, or above. */
    private static int blowBeforeTheTarget(ScriptedJoint joint, double targetNm) {
        int blow = 1;
        while (joint.clampingNm(blow) + joint.clampingNm(blow + 1) < 2 * targetNm) {
            blow++;
        }
        return blow;
    }

    @ParameterizedTest
    @CsvSource({"50, 1", "61, 1", "84, 1", "84, 0.8", "84, 1.1"})
    void energyPerBlowStopsOneBlowAheadOfTheAim(float targetNm, double aim) {
        ScriptedJoint joint = lockNut().struck(60);
        Map<String, Double> settings = new java.util.HashMap<>(exactWork());
        settings.put("aim", aim);
        Heard heard = joint.playTo(new EnergyPerBlow.Factory(), settings, targetNm, EnumSet.allOf(Channel.class));
        int stop = blowBeforeTheTarget(joint, aim * targetNm);
        assertThat(heard.stopTick()).isEqualTo(contact(stop) + MEASURED);
        // On a straight line of the expected rate only the running torque's own error is left.
        assertThat(heard.estimate(0)).isCloseTo((float) joint.clampingNm(stop), within(1f));
        assertThat(heard.estimate(2)).isCloseTo(8, within(0.01f));
        assertThat(heard.estimate(3)).isCloseTo(100, within(6f));
    }

    @Test
    void withoutABlowDetectorTheDipsOfTheCarrierTellBlows() {
        ScriptedJoint joint = lockNut().struck(60);
        EnumSet<Channel> deaf = EnumSet.of(Channel.CARRIER_SPEED, Channel.ANVIL_ANGLE);
        Heard heard = joint.playTo(new EnergyPerBlow.Factory(), exactWork(), 84, deaf);
        assertThat(heard.stopTick()).isEqualTo(contact(blowBeforeTheTarget(joint, 84)) + ScriptedJoint.DIP);
    }

    @Test
    void blowEnergyGrowsWithCarrierSpeedAndIsTransmittedInPart() {
        ScriptedJoint joint = lockNut().struck(60);
        // (1 J + 0.0142857 J s/rad * 140 rad/s) * 0.91667 = 2.75 J
        Map<String, Double> settings =
                Map.of("blow energy at rest", 1.0, "blow energy per speed", 2.0 / 140, "transmission", 2.75 / 3);
        Heard heard = joint.playTo(new EnergyPerBlow.Factory(), settings);
        assertThat(heard.stopTick()).isEqualTo(contact(blowBeforeTheTarget(joint, 84)) + MEASURED);
    }

    @Test
    void untrainedRegressionIsTheBareBalance() {
        ScriptedJoint joint = lockNut().struck(60);
        Heard heard = joint.playTo(new LearnedRegression.Factory(), exactWork());
        assertThat(heard.stopTick()).isEqualTo(contact(blowBeforeTheTarget(joint, 84)) + MEASURED);
        assertThat(heard.strategy().verdict()).isEqualTo(Verdict.REACHED);
        int stop = blowBeforeTheTarget(joint, 84);
        assertThat(heard.estimate(0))
                .isCloseTo((float) (joint.clampingNm(stop) + joint.clampingNm(stop + 1)) / 2, within(1f));
        assertThat(heard.estimate(1)).isCloseTo((float) SNUG_RAD, within(1e-4f));
        assertThat(heard.estimate(2)).isBetween(0f, 0.01f);
    }

    @Test
    void aLearnedCorrectionMovesTheStop() {
        ScriptedJoint joint = lockNut().struck(60);
        Map<String, Double> settings = new java.util.HashMap<>(exactWork());
        settings.put(QuadraticModel.coefficient(0), 20.0);
        Heard heard = joint.playTo(new LearnedRegression.Factory(), settings);
        assertThat(heard.stopTick()).isEqualTo(contact(blowBeforeTheTarget(joint, 64)) + MEASURED);
    }

    @Test
    void aJointUnlikeThoseOfTrainingLeavesItUnsure() {
        ScriptedJoint joint = lockNut().struck(60);
        Map<String, Double> settings = new java.util.HashMap<>(exactWork());
        // Carrier speed, 140 rad/s here, was 100 +- 2 in training: 20 standard deviations.
        settings.put(QuadraticModel.mean(4), 100.0);
        settings.put(QuadraticModel.scale(4), 2.0);
        Heard heard = joint.playTo(new LearnedRegression.Factory(), settings);
        assertThat(heard.strategy().verdict()).isEqualTo(Verdict.UNSURE);
        assertThat(heard.estimate(2)).isCloseTo(20, within(0.01f));
        settings.put("familiar", 21.0);
        assertThat(joint.playTo(new LearnedRegression.Factory(), settings)
                        .strategy()
                        .verdict())
                .isEqualTo(Verdict.REACHED);
    }
}
