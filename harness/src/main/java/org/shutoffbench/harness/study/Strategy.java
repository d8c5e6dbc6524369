package org.shutoffbench.harness.study;

import java.util.List;

/**
 * One strategy under one settings table.
 *
 * @param name as in the scenario
 * @param settings where its settings come from
 * @param channels titles of the channels it listens to
 */
public record Strategy(String name, SettingsKind settings, List<String> channels) {

    public Strategy {
        channels = List.copyOf(channels);
    }

    /** Where the settings of a strategy come from. */
    public enum SettingsKind {
        /** Tuned on one family, as a user sets a tool up on one joint. */
        HOME("home"),
        /** Tuned on all families pooled. */
        ALL("all"),
        /** Written in the scenario. */
        GIVEN("given");

        private final String title;

        SettingsKind(String title) {
            this.title = title;
        }

        /** As written in records and reports. */
        public String title() {
            return title;
        }
    }
}
