package org.shutoffbench.controller.conformance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Command;
import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.Target;
import org.shutoffbench.controller.strategy.Strategies;

/**
 * What every strategy of the catalogue does with made-up recordings, default settings, against the kept file: the sample at
 * which it stops, its verdict, its first and last change of drive level, its estimates to three digits. The numbers are our
 * own output and say nothing about right or wrong; they move only where a strategy was meant to change. The failure prints
 * the new lines.
 */
class CataloguePlaybackRegressionTest {

    private static final String KEPT = "catalogue-playbacks.txt";

    private static final List<MadeUpTightening> RECORDINGS = List.of(
            MadeUpTightening.plainJoint(),
            MadeUpTightening.lockNut(),
            new MadeUpTightening("hard", 2, 9, 350, 0.2f),
            new MadeUpTightening("soft", 4, 9, 60, 0.2f),
            new MadeUpTightening("stiff lock nut", 4, 15, 200, 14),
            new MadeUpTightening("barely locking", 3, 13, 90, 4));

    private static final List<Target> TARGETS = List.of(new Target(84, 0.15f), new Target(50, 0.1f));

    @Test
    void everyStrategyDoesWhatItDid() throws IOException {
        List<String> found = new ArrayList<>();
        for (StrategyFactory factory : Strategies.byName().values()) {
            Subject subject = new Subject(factory);
            for (Set<Channel> channels : subject.channelSets()) {
                for (MadeUpTightening recording : RECORDINGS) {
                    for (Target target : TARGETS) {
                        found.add(play(subject, channels, recording, target));
                    }
                }
            }
        }
        assertThat(String.join("\n", found)).isEqualTo(kept());
    }

    private static String play(Subject subject, Set<Channel> channels, MadeUpTightening recording, Target target) {
        ShutoffStrategy strategy = subject.create(channels);
        strategy.arm(target);
        MaskedRecording heard = new MaskedRecording(recording, channels);
        SensorFrame frame = new SensorFrame();
        StringBuilder levels = new StringBuilder();
        Command before = Command.FULL;
        int stop = -1;
        for (int tick = 0; tick < heard.ticks() && stop < 0; tick++) {
            heard.sample(tick, frame);
            Command command = strategy.onSample(frame);
            if (command.isShutoff()) {
                stop = tick;
            } else if (command != before) {
                levels.append(String.format(Locale.ROOT, " %d:%.2f", tick, command.level()));
            }
            before = command;
        }
        float[] estimates = new float[16];
        int count = strategy.estimates(estimates);
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            text.append(' ').append(threeDigits(estimates[i]));
        }
        String with = channels.stream().map(Channel::title).sorted().collect(Collectors.joining("+"));
        return subject.descriptor.name() + " | " + with + " | " + recording.title() + " | "
                + Math.round(target.clampingTorqueNm()) + " | " + stop + " | " + strategy.verdict() + " |" + levels
                + " |"
                + text;
    }

    /** Few enough that another processor's logarithm does not show. */
    private static String threeDigits(float value) {
        return Float.isFinite(value) ? String.format(Locale.ROOT, "%.3g", value) : "-";
    }

    private static String kept() throws IOException {
        try (InputStream in = CataloguePlaybackRegressionTest.class.getResourceAsStream(KEPT)) {
            return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
        }
    }
}
