package org.shutoffbench.harness.scenario;

import java.util.EnumSet;
import java.util.List;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.harness.scenario.file.Section;
import org.shutoffbench.harness.scenario.file.Tree;

/** Reads the sensors: the name of a preset, or one with channels added or taken away. */
final class SensorReader {

    private static final List<String> PRESETS = List.of("ideal", "good", "cheap");

    private final Section root;

    SensorReader(Section root) {
        this.root = root;
    }

    SensorRecipe read() {
        if (!(root.take("sensors") instanceof Tree.Branch branch)) {
            String preset = root.choice("sensors", PRESETS, "good");
            return new SensorRecipe(preset, channels(preset));
        }
        Section sensors = new Section(branch, root.path("sensors"), root.problems());
        String basis = sensors.choice("based on", PRESETS, "good");
        if (!sensors.has("based on")) {
            sensors.missing("based on", "name a preset: " + String.join(", ", PRESETS));
        }
        EnumSet<Channel> channels = channels(basis);
        EnumSet<Channel> possible = possible(basis);
        for (Channel channel : Channel.values()) {
            boolean there = sensors.yesOrNo(channel.title(), channels.contains(channel));
            if (there && !possible.contains(channel)) {
                sensors.problem(
                        channel.title(), "the sensors \"" + basis + "\" cannot have this channel; allowed here: no");
            } else if (there) {
                channels.add(channel);
            } else {
                channels.remove(channel);
            }
        }
        sensors.finish();
        return new SensorRecipe(basis, channels);
    }

    private static EnumSet<Channel> channels(String preset) {
        EnumSet<Channel> all = possible(preset);
        if (!preset.equals("ideal")) {
            all.remove(Channel.TORQUE);
        }
        return all;
    }

    private static EnumSet<Channel> possible(String preset) {
        EnumSet<Channel> possible = EnumSet.noneOf(Channel.class);
        SensorRecipe.fullest(preset).quantities().forEach(quantity -> possible.add(Channel.valueOf(quantity.name())));
        return possible;
    }
}
