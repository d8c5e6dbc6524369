package org.shutoffbench.harness.scenario.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a file says: texts, lists and maps, each with the place where it was written. Immutable. */
public sealed interface Tree {

    Place place();

    /** How a message calls it. */
    String shown();

    /** A single value as written; plain and quoted are the same. */
    record Text(Place place, String value) implements Tree {
        @Override
        public String shown() {
            return value.isEmpty()
                    ? "nothing"
                    : "\"" + (value.length() > 80 ? value.substring(0, 77) + "..." : value) + "\"";
        }
    }

    /** A list. */
    record Sequence(Place place, List<Tree> items) implements Tree {
        public Sequence {
            items = List.copyOf(items);
        }

        @Override
        public String shown() {
            return "a list";
        }
    }

    /** A map; keys as written and in the order written. */
    record Branch(Place place, Map<String, Entry> entries) implements Tree {
        public Branch {
            entries = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }

        /** The value of a key, or null; underscores and spaces in keys count as the same. */
        public @Nullable Tree get(String key) {
            Entry entry = entries.get(plain(key));
            return entry == null ? null : entry.value();
        }

        public boolean has(String key) {
            return entries.containsKey(plain(key));
        }

        @Override
        public String shown() {
            return "a map";
        }
    }

    /**
     * One line of a map.
     *
     * @param place where the key was written
     * @param key as written
     */
    record Entry(Place place, String key, Tree value) {}

    /** A key with underscores and runs of spaces evened out, by which it is looked up. */
    static String plain(String key) {
        return key.strip().replaceAll("[_\\s]+", " ");
    }
}
