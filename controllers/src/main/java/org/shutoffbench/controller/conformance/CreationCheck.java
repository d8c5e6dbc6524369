package org.shutoffbench.controller.conformance;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.Settings;

/**
 * Can the strategy be made from every channel set it declares, at every setting's limits and at slow and fast sample
 * rates, and does it refuse a tool that lacks a required channel?
 */
final class CreationCheck implements Check {

    private static final int[] RATES_HZ = {1_000, 2_000, 10_000, 40_000};

    @Override
    public String name() {
        return "creation";
    }

    @Override
    public Finding examine(Subject subject) {
        List<String> faults = new ArrayList<>();
        for (Set<Channel> channels : subject.channelSets()) {
            for (int rate : RATES_HZ) {
                make(subject, Map.of(), new Provision(rate, channels), rate + " Hz", faults);
            }
        }
        for (Setting setting : subject.descriptor.settings()) {
            atLimit(subject, setting, setting.minimum(), faults);
            atLimit(subject, setting, setting.maximum(), faults);
        }
        for (Channel required : subject.descriptor.requiredChannels()) {
            refusesWithout(subject, required, faults);
        }
        return faults.isEmpty()
                ? Finding.passed(name(), "made at all limits, refused without each required channel")
                : Finding.failed(
                        name(),
                        String.join("; ", faults),
                        "create() returns a strategy for declared settings and channels and throws IllegalArgumentException,"
                                + " naming the channel, where a required one is missing.");
    }

    private static void atLimit(Subject subject, Setting setting, double value, List<String> faults) {
        make(
                subject,
                Map.of(setting.name(), value),
                new Provision(Subject.RATE_HZ, subject.declaredChannels()),
                setting.name() + " = " + value + " " + setting.unit(),
                faults);
    }

    private static void make(
            Subject subject, Map<String, Double> given, Provision provision, String what, List<String> faults) {
        try {
            if (!isMade(subject, given, provision)) {
                faults.add("at " + what + " returned nothing");
            }
        } catch (RuntimeException | AssertionError | LinkageError | StackOverflowError e) {
            faults.add("at " + what + " threw " + Thrown.inWords(e));
        }
    }

    private static void refusesWithout(Subject subject, Channel required, List<String> faults) {
        Set<Channel> channels = EnumSet.allOf(Channel.class);
        channels.remove(required);
        try {
            if (isMade(subject, Map.of(), new Provision(Subject.RATE_HZ, channels))) {
                faults.add("accepts a tool without the required channel " + required.title());
            }
        } catch (IllegalArgumentException refused) {
            // as the contract asks
        } catch (RuntimeException | AssertionError | LinkageError | StackOverflowError e) {
            faults.add("without " + required.title() + " threw " + Thrown.inWords(e));
        }
    }

    private static boolean isMade(Subject subject, Map<String, Double> given, Provision provision) {
        return subject.factory.create(Settings.of(subject.descriptor.settings(), given), provision) != null;
    }
}
