package org.shutoffbench.harness.scenario.file;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One map of a scenario while it is read. Every key that a reader asks for becomes an allowed key; {@link #finish} tells
 * of all others.
 */
public final class Section {

    /** What a name must be, for messages. */
    public static final String NAME_RULE = "a name of 1 to 80 characters in one line belongs here";

    private static final int LONGEST_NAME = 80;

    private final Tree.Branch branch;
    private final String path;
    private final Problems problems;
    private final List<String> allowed = new ArrayList<>();
    private final Map<String, String> missing = new LinkedHashMap<>();
    private boolean finished;

    public Section(Tree.Branch branch, String path, Problems problems) {
        this.branch = branch;
        this.path = path;
        this.problems = problems;
    }

    public Place place() {
        return branch.place();
    }

    public Problems problems() {
        return problems;
    }

    /** The full key, as messages name it. */
    public String path(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    /** The full key of this map itself. */
    public String path() {
        return path;
    }

    /** Every line of the map, for maps whose keys are names that the user chose. */
    public Collection<Tree.Entry> entries() {
        return branch.entries().values();
    }

    /** The value of a key, which becomes an allowed key; null where it is not given. */
    public @Nullable Tree take(String key) {
        if (!allowed.contains(key)) {
            allowed.add(key);
        }
        return branch.get(key);
    }

    public boolean has(String key) {
        return take(key) != null;
    }

    /** A value as a word or a few; null where it is not given or is no text (which is told). */
    public @Nullable String text(String key) {
        Tree value = take(key);
        if (value == null) {
            return null;
        }
        if (value instanceof Tree.Text text && !text.value().isEmpty()) {
            return text.value();
        }
        problem(key, value, "a name or a few words belong here");
        return null;
    }

    /** A name: a text of at most 80 characters in one line. */
    public @Nullable String name(String key) {
        String found = text(key);
        if (found != null && !isName(found)) {
            problem(key, NAME_RULE);
            return null;
        }
        return found;
    }

    /** Whether a text can serve as a name in files, tables and reports. */
    public static boolean isName(String text) {
        return !text.isBlank()
                && text.length() <= LONGEST_NAME
                && text.codePoints().noneMatch(c -> Character.isISOControl(c) || c == 0x2028 || c == 0x2029)
                && text.codePoints().noneMatch(c -> c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE);
    }

    /** One of a few words; the default where it is not given or not allowed (which is told). */
    public String choice(String key, Collection<String> words, String byDefault) {
        String found = text(key);
        if (found == null) {
            return byDefault;
        }
        for (String word : words) {
            if (Tree.plain(word).equals(Tree.plain(found))) {
                return word;
            }
        }
        problem(key, NearestKey.remedy(found, words));
        return byDefault;
    }

    /** {@code yes} or {@code no}. */
    public boolean yesOrNo(String key, boolean byDefault) {
        String found = choice(key, List.of("yes", "no", "true", "false"), byDefault ? "yes" : "no");
        return found.equals("yes") || found.equals("true");
    }

    /** A whole number within limits; the default where it is not given or not allowed (which is told). */
    public long wholeNumber(String key, long least, long most, long byDefault) {
        Tree value = take(key);
        if (value == null) {
            return byDefault;
        }
        if (value instanceof Tree.Text text && text.value().matches("[+-]?[0-9]{1,19}")) {
            try {
                long number = Long.parseLong(text.value());
                if (least <= number && number <= most) {
                    return number;
                }
            } catch (NumberFormatException e) {
                // told below: more than 64 bits
            }
        }
        problem(key, value, "a whole number from " + grouped(least) + " to " + grouped(most) + " belongs here");
        return byDefault;
    }

    private static String grouped(long number) {
        return String.format(java.util.Locale.ROOT, "%,d", number);
    }

    /** A map inside this one; null where it is not given or is no map (which is told). */
    public @Nullable Section section(String key) {
        Tree value = take(key);
        if (value == null) {
            return null;
        }
        if (value instanceof Tree.Branch inner) {
            return new Section(inner, path(key), problems);
        }
        problem(key, value, "a map of keys and values belongs here");
        return null;
    }

    /** Tells that a key which must be there is not, unless an unknown key turns out to be meant for it. */
    public void missing(String key, String remedy) {
        if (finished) {
            problems.add(branch.place(), path(key), "is missing", remedy);
        } else {
            missing.put(key, remedy);
        }
    }

    /** Tells that what was found at a key cannot be used. */
    public void problem(String key, Tree found, String remedy) {
        problems.add(found.place(), path(key), "found " + found.shown(), remedy);
    }

    /** The same for the value that the key has in this map. */
    public void problem(String key, String remedy) {
        Tree found = branch.get(key);
        if (found == null) {
            missing(key, remedy);
        } else {
            problem(key, found, remedy);
        }
    }

    /** Tells what is wrong with a key that is given, in the reader's own words. */
    public void refuse(String key, String found, String remedy) {
        Tree given = branch.get(key);
        problems.add(given == null ? branch.place() : given.place(), path(key), found, remedy);
    }

    /** Tells of every key that nobody asked for, and of those that are missing. */
    public void finish() {
        finished = true;
        List<String> plain = allowed.stream().map(Tree::plain).toList();
        for (Map.Entry<String, Tree.Entry> line : branch.entries().entrySet()) {
            if (!plain.contains(line.getKey())) {
                Tree.Entry entry = line.getValue();
                problems.add(
                        entry.place(), path(entry.key()), "is not a key here", NearestKey.remedy(entry.key(), allowed));
                NearestKey.to(entry.key(), allowed).ifPresent(missing::remove);
            }
        }
        missing.forEach(this::missing);
    }
}
