package org.shutoffbench.harness.scenario;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.harness.scenario.file.NearestKey;
import org.shutoffbench.harness.scenario.file.Overlay;
import org.shutoffbench.harness.scenario.file.Problems;
import org.shutoffbench.harness.scenario.file.Section;
import org.shutoffbench.harness.scenario.file.Tree;

/** Reads one line of the list of strategies; it stands for as many entries as it has settings. */
final class StrategyReader {

    private final StrategyDirectory directory;
    private final Map<String, SettingsTable> tables;
    private final @Nullable SettingsTable calibration;
    private final Set<Channel> channels;
    private final Problems problems;

    StrategyReader(
            StrategyDirectory directory,
            Map<String, SettingsTable> tables,
            @Nullable SettingsTable calibration,
            Set<Channel> channels,
            Problems problems) {
        this.directory = directory;
        this.tables = tables;
        this.calibration = calibration;
        this.channels = channels;
        this.problems = problems;
    }

    /** What a line names, and what the strategy declares. */
    record Found(List<StrategyEntry> entries, StrategyDescriptor descriptor) {}

    @Nullable
    Found read(Tree line, String path) {
        if (line instanceof Tree.Text text) {
            StrategyDescriptor descriptor = named(text.value(), text, path);
            return descriptor == null ? null : entries(descriptor, descriptor.name(), null, Set.of(), null, text, path);
        }
        if (line instanceof Tree.Branch branch) {
            return fromMap(new Section(branch, path, problems), branch);
        }
        problems.add(line.place(), path, "found " + line.shown(), "name a strategy, or give a map {name: ...}");
        return null;
    }

    private @Nullable Found fromMap(Section section, Tree.Branch branch) {
        StrategyEntry.External external = null;
        StrategyDescriptor descriptor;
        if (section.has("class") || section.has("jar")) {
            Outside outside = outside(section);
            external = outside == null ? null : outside.external();
            descriptor = outside == null ? null : outside.descriptor();
        } else {
            String name = section.text("name");
            if (name == null && !section.has("name")) {
                section.missing("name", "name a strategy, or give class and jar of one");
            }
            Tree at = section.take("name");
            descriptor = name == null || at == null ? null : named(name, at, section.path("name"));
        }
        String label = section.name("label");
        Set<Channel> withheld = withheld(section);
        Tree settings = section.take("settings");
        section.finish();
        return descriptor == null
                ? null
                : entries(
                        descriptor,
                        label == null ? descriptor.name() : label,
                        external,
                        withheld,
                        settings,
                        branch,
                        section.path());
    }

    private @Nullable StrategyDescriptor named(String name, Tree at, String path) {
        Optional<String> known = directory.names().stream()
                .filter(candidate -> Tree.plain(candidate).equals(Tree.plain(name)))
                .findFirst();
        if (known.isEmpty()) {
            problems.add(
                    at.place(),
                    path,
                    "no strategy is called " + at.shown(),
                    NearestKey.remedy(name, directory.names()));
            return null;
        }
        return directory.descriptor(known.get());
    }

    private @Nullable Outside outside(Section section) {
        String className = section.text("class");
        String jar = section.text("jar");
        String expected = section.text("sha256");
        if (section.has("name")) {
            section.problem("name", "give either a name or a class and its jar; label is what reports call it");
        }
        if (!section.has("class")) {
            section.missing("class", "name the factory's class");
        }
        if (!section.has("jar")) {
            section.missing("jar", "name the jar that holds the class");
        }
        if (className == null || jar == null || !(section.take("jar") instanceof Tree.Text text)) {
            return null;
        }
        try {
            Path file = Overlay.beside(text);
            if (!Files.isReadable(file)) {
                section.problem("jar", "there is no such file that can be read; build the jar or correct its path");
                return null;
            }
            StrategyDescriptor descriptor = directory.external(className, file);
            String sha256 = Sha256.of(Files.readAllBytes(file));
            if (expected != null && !expected.equals(sha256)) {
                section.problem("sha256", "the jar is another one: its SHA-256 is " + sha256);
            }
            return new Outside(new StrategyEntry.External(className, jar, file, sha256), descriptor);
        } catch (IllegalArgumentException | IOException e) {
            section.problem("class", String.valueOf(e.getMessage()));
            return null;
        }
    }

    /** A strategy from outside with what it declares. */
    private record Outside(StrategyEntry.External external, StrategyDescriptor descriptor) {}

    private Set<Channel> withheld(Section section) {
        Tree value = section.take("without");
        EnumSet<Channel> withheld = EnumSet.noneOf(Channel.class);
        if (value == null) {
            return withheld;
        }
        List<Tree> items = value instanceof Tree.Sequence sequence ? sequence.items() : List.of(value);
        List<String> titles =
                Arrays.stream(Channel.values()).map(Channel::title).toList();
        for (Tree item : items) {
            String found = item instanceof Tree.Text text ? Tree.plain(text.value()) : "";
            if (!titles.contains(found)) {
                section.problem("without", item, NearestKey.remedy(found, titles));
            }
            Arrays.stream(Channel.values())
                    .filter(channel -> channel.title().equals(found))
                    .forEach(withheld::add);
        }
        return withheld;
    }

    private Found entries(
            StrategyDescriptor descriptor,
            String label,
            StrategyEntry.@Nullable External external,
            Set<Channel> withheld,
            @Nullable Tree settings,
            Tree at,
            String path) {
        requireChannels(descriptor, withheld, at, path);
        List<StrategyEntry> entries = new ArrayList<>();
        Map<String, StrategyEntry.Value> learned = learned(descriptor, at);
        chosen(descriptor, label, settings, at, path).forEach((name, values) -> {
            Map<String, StrategyEntry.Value> all = new LinkedHashMap<>(learned);
            all.putAll(values);
            entries.add(new StrategyEntry(label, descriptor.name(), external, name, all, withheld));
        });
        return new Found(entries, descriptor);
    }

    private void requireChannels(StrategyDescriptor descriptor, Set<Channel> withheld, Tree at, String path) {
        TreeSet<Channel> missing = new TreeSet<>(descriptor.requiredChannels());
        missing.removeIf(channel -> channels.contains(channel) && !withheld.contains(channel));
        if (!missing.isEmpty()) {
            String names =
                    String.join(", ", missing.stream().map(Channel::title).toList());
            problems.add(
                    at.place(),
                    path,
                    "\"" + descriptor.name() + "\" needs the channel " + names + ", which it does not get here",
                    "give the sensors that channel, for example sensors: {based on: good, "
                            + missing.first().title() + ": yes}, or leave the strategy out");
        }
    }

    private Map<String, StrategyEntry.Value> learned(StrategyDescriptor descriptor, Tree at) {
        Map<String, String> written =
                calibration == null ? null : calibration.values().get(descriptor.name());
        if (written == null) {
            return Map.of();
        }
        String path = "calibration." + descriptor.name();
        for (Setting setting : descriptor.settings()) {
            if (setting.role() != Setting.Role.LEARNED && written.containsKey(setting.name())) {
                problems.add(
                        at.place(),
                        path + "." + setting.name(),
                        "is not learned of a tool",
                        "give it in a settings table or on the strategy's own line");
            }
        }
        return new SettingsReader(descriptor, problems).read(written, at.place(), path);
    }

    /** Values by the name of the settings: of every table, of one, or given right here. */
    private Map<String, Map<String, StrategyEntry.Value>> chosen(
            StrategyDescriptor descriptor, String label, @Nullable Tree settings, Tree at, String path) {
        Map<String, Map<String, StrategyEntry.Value>> chosen = new LinkedHashMap<>();
        if (settings instanceof Tree.Branch given) {
            chosen.put(StrategyEntry.GIVEN, new SettingsReader(descriptor, problems).read(given, path + ".settings"));
        } else if (settings instanceof Tree.Text text && tables.containsKey(text.value())) {
            chosen.put(text.value(), fromTable(descriptor, label, text.value(), at, path));
        } else if (settings != null
                && !(settings instanceof Tree.Text text && text.value().equals(StrategyEntry.GIVEN))) {
            problems.add(
                    settings.place(),
                    path + ".settings",
                    "found " + settings.shown(),
                    "name a settings table of this scenario" + tableNames() + ", or give a map of settings");
        } else if (settings != null || tables.isEmpty()) {
            chosen.put(StrategyEntry.GIVEN, Map.of());
        } else {
            tables.keySet().forEach(name -> chosen.put(name, fromTable(descriptor, label, name, at, path)));
        }
        return chosen;
    }

    private String tableNames() {
        return tables.isEmpty() ? "" : " (" + String.join(", ", tables.keySet()) + ")";
    }

    private Map<String, StrategyEntry.Value> fromTable(
            StrategyDescriptor descriptor, String label, String name, Tree at, String path) {
        SettingsTable table = tables.get(name);
        Map<String, String> written = table == null ? null : table.values().get(label);
        if (written == null && table != null) {
            written = table.values().get(descriptor.name());
        }
        if (written == null) {
            if (descriptor.settings().stream().anyMatch(setting -> setting.role() == Setting.Role.TUNED)) {
                problems.add(
                        at.place(),
                        path,
                        "the settings table \"" + name + "\" has nothing for \"" + label + "\"",
                        "tune it, or give its settings here: settings: {...}");
            }
            return Map.of();
        }
        return new SettingsReader(descriptor, problems).read(written, at.place(), "settings." + name + "." + label);
    }
}
