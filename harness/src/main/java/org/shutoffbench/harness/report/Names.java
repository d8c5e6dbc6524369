package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.study.Strategy;
import org.shutoffbench.harness.study.Strategy.SettingsKind;
import org.shutoffbench.harness.study.StudySummary;

/**
 * What strategies and families are called in sentences and labels, and the mark of each strategy. The settings table
 * joins the name where a strategy appears under more than one.
 */
final class Names {

    private static final List<SettingsKind> VARIANTS = List.of(SettingsKind.ALL, SettingsKind.HOME, SettingsKind.GIVEN);

    private final List<String> labels = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private final List<String> families;
    private final List<Strategy> strategies;
    private final boolean severalSettings;

    Names(StudySummary summary) {
        Map<String, List<Strategy>> byName = new LinkedHashMap<>();
        for (Strategy strategy : summary.strategies()) {
            byName.computeIfAbsent(strategy.name(), name -> new ArrayList<>()).add(strategy);
        }
        List<String> order = List.copyOf(byName.keySet());
        for (Strategy strategy : summary.strategies()) {
            boolean alone = byName.getOrDefault(strategy.name(), List.of()).size() == 1;
            int variant = alone ? 0 : VARIANTS.indexOf(strategy.settings());
            labels.add(
                    alone
                            ? strategy.name()
                            : strategy.name() + " (" + strategy.settings().title() + ")");
            marks.add(Mark.of(order.indexOf(strategy.name()), variant));
        }
        severalSettings = byName.values().stream().anyMatch(all -> all.size() > 1);
        strategies = summary.strategies();
        families = summary.families().stream().map(f -> f.name()).toList();
    }

    /** A strategy's name, with its settings table where needed. */
    String strategy(int index) {
        return labels.get(index);
    }

    /**
     * Several strategies as a list to read aloud; one of them with several settings tables is named once: "energy per blow
     * (home and all)".
     */
    List<String> together(List<Integer> chosen) {
        Map<String, List<Integer>> byName = new LinkedHashMap<>();
        for (int s : chosen) {
            byName.computeIfAbsent(strategies.get(s).name(), name -> new ArrayList<>())
                    .add(s);
        }
        List<String> said = new ArrayList<>();
        byName.forEach((name, own) -> said.add(
                own.size() == 1
                        ? strategy(own.get(0))
                        : name + " ("
                                + String.join(
                                        " and ",
                                        own.stream()
                                                .map(s -> strategies
                                                        .get(s)
                                                        .settings()
                                                        .title())
                                                .toList())
                                + ")"));
        return said;
    }

    Mark mark(int strategy) {
        return marks.get(strategy);
    }

    String family(int index) {
        return families.get(index);
    }

    /** "lock nut joints"; a family of a single letter is "joints of family A". */
    String joints(int family) {
        String name = families.get(family);
        return name.length() == 1 ? "joints of family " + name : name + " joints";
    }

    /**
     * Titles of the settings tables with which a strategy is shown: its own, and those that the strategy does not have.
     * Null where no strategy has more than one.
     */
    @Nullable
    List<String> shownWith(int strategy) {
        if (!severalSettings) {
            return null;
        }
        Strategy shown = strategies.get(strategy);
        List<String> titles = new ArrayList<>();
        for (String title : settings()) {
            boolean hasIt = strategies.stream()
                    .anyMatch(s -> s.name().equals(shown.name())
                            && s.settings().title().equals(title));
            if (!hasIt || shown.settings().title().equals(title)) {
                titles.add(title);
            }
        }
        return titles;
    }

    /** Titles of the settings tables that the page switches between; empty where there is nothing to switch. */
    List<String> settings() {
        return severalSettings
                ? strategies.stream()
                        .map(s -> s.settings().title())
                        .distinct()
                        .sorted()
                        .toList()
                : List.of();
    }

    /** Whether a strategy appears under more than one settings table. */
    boolean severalSettings() {
        return severalSettings;
    }
}
