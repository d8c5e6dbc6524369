package org.shutoffbench.controller.conformance;

import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.StrategyDescriptor;

/** Is what the strategy declares of itself complete and consistent? */
final class DescriptorCheck implements Check {

    private static final Pattern WORDS = Pattern.compile("[a-z0-9]+([ -][a-z0-9]+)*");

    @Override
    public String name() {
        return "descriptor";
    }

    @Override
    public Finding examine(Subject subject) {
        List<String> faults = new ArrayList<>();
        nameable(subject.factory.getClass(), faults);
        described(subject.descriptor, faults);
        Set<String> names = new HashSet<>();
        for (Setting setting : subject.descriptor.settings()) {
            sane(setting, names, faults);
        }
        if (faults.isEmpty()) {
            return Finding.passed(
                    name(),
                    "\"" + subject.descriptor.name() + "\" with " + names.size() + " settings and "
                            + subject.descriptor.estimates().size() + " estimates");
        }
        return Finding.failed(
                name(), String.join("; ", faults), "Correct what descriptor() returns, or the factory class.");
    }

    private static void nameable(Class<?> factory, List<String> faults) {
        if (!Modifier.isPublic(factory.getModifiers())) {
            faults.add("the factory class is not public, so no file can name it");
        }
        if (Arrays.stream(factory.getConstructors()).noneMatch(constructor -> constructor.getParameterCount() == 0)) {
            faults.add("the factory has no public constructor without arguments");
        }
    }

    private static void described(StrategyDescriptor descriptor, List<String> faults) {
        if (!WORDS.matcher(descriptor.name()).matches()) {
            faults.add("the name \"" + descriptor.name() + "\" is not lower case words");
        }
        if (descriptor.idea().isBlank()) {
            faults.add("no idea is given");
        }
        Set<Channel> twice = EnumSet.allOf(Channel.class);
        twice.retainAll(descriptor.requiredChannels());
        twice.retainAll(descriptor.optionalChannels());
        for (Channel channel : twice) {
            faults.add(channel.title() + " is both required and optional");
        }
        if (descriptor.estimates().stream().anyMatch(String::isBlank)) {
            faults.add("an estimate has no name");
        }
        if (descriptor.estimates().size() > Playback.ESTIMATE_ROOM) {
            faults.add("more than " + Playback.ESTIMATE_ROOM + " estimates");
        }
    }

    private static void sane(Setting setting, Set<String> names, List<String> faults) {
        if (!WORDS.matcher(setting.name()).matches()) {
            faults.add("setting \"" + setting.name() + "\" is not lower case words");
        }
        if (!names.add(setting.name())) {
            faults.add("two settings are called \"" + setting.name() + "\"");
        }
        if (setting.unit().isBlank() || setting.meaning().isBlank()) {
            faults.add(setting.name() + " lacks a unit or a meaning");
        }
        if (!Double.isFinite(setting.minimum()) || !Double.isFinite(setting.maximum())) {
            faults.add(setting.name() + " has no finite range");
        }
        if (setting.minimum() == setting.maximum() && setting.role() == Setting.Role.TUNED) {
            faults.add(setting.name() + " is to be tuned but has one value only");
        }
    }
}
