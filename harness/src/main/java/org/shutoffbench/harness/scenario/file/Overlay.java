package org.shutoffbench.harness.scenario.file;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Resolves what a file inherits: {@code based on} another file, {@code like} another family, {@code every family}.
 *
 * <p>Maps merge key by key. A distribution, and a map that says what it is based on or like, stands for itself. The word
 * {@code none} drops what was inherited.
 */
public final class Overlay {

    private static final List<String> NUMBERS =
            List.of("normal", "lognormal", "uniform", "mu th times", "computed times");
    private static final List<String> STANDS_FOR_ITSELF = List.of("based on", "like");
    private static final int LONGEST_CHAIN = 8;

    private Overlay() {}

    /**
     * Reads a file and all that it is based on.
     *
     * @throws ScenarioException if one of them cannot be read, or is based on itself
     */
    public static Tree.Branch read(Path path) {
        return basedOn(
                TreeReader.read(path),
                new ArrayDeque<>(List.of(path.toAbsolutePath().normalize())));
    }

    private static Tree.Branch basedOn(Tree.Branch top, Deque<Path> chain) {
        Tree.Entry entry = top.entries().get("based on");
        if (entry == null) {
            return top;
        }
        Tree base = entry.value();
        if (!(base instanceof Tree.Text text) || text.value().isEmpty()) {
            throw refused(base, "found " + base.shown(), "the path of another scenario file belongs here");
        }
        Path file = beside(text);
        Path identity = file.toAbsolutePath().normalize();
        if (chain.contains(identity) || chain.size() >= LONGEST_CHAIN) {
            throw refused(
                    base, "is based on itself, or more than " + LONGEST_CHAIN + " files deep", "name another file");
        }
        chain.push(identity);
        Tree.Branch lower;
        try {
            lower = TreeReader.read(file);
        } catch (ScenarioException e) {
            List<Problem> problems = new ArrayList<>();
            for (Problem problem : e.problems()) {
                problems.add(
                        problem.place().line() > 0
                                ? problem
                                : new Problem(
                                        base.place(),
                                        "based on",
                                        text.value() + ": " + problem.found(),
                                        problem.remedy()));
            }
            throw new ScenarioException(problems);
        }
        return merge(basedOn(lower, chain), without(top, "based on"));
    }

    /** The file that a text names, seen from the file that the text stands in. */
    public static Path beside(Tree.Text text) {
        try {
            Path folder = Path.of(text.place().file()).getParent();
            return folder == null ? Path.of(text.value()) : folder.resolve(text.value());
        } catch (java.nio.file.InvalidPathException e) {
            throw refused(text, "found " + text.shown(), "this is not a path");
        }
    }

    private static ScenarioException refused(Tree at, String found, String remedy) {
        return new ScenarioException(new Problem(at.place(), "based on", found, remedy));
    }

    /** Lays one map over another. */
    public static Tree.Branch merge(Tree.Branch base, Tree.Branch top) {
        Map<String, Tree.Entry> merged = new LinkedHashMap<>(base.entries());
        top.entries().forEach((key, entry) -> {
            Tree.Entry below = merged.get(key);
            if (isNone(entry.value())) {
                merged.remove(key);
            } else if (below != null
                    && below.value() instanceof Tree.Branch lower
                    && entry.value() instanceof Tree.Branch upper
                    && !standsForItself(lower, upper)) {
                merged.put(key, new Tree.Entry(entry.place(), entry.key(), merge(lower, upper)));
            } else {
                merged.put(key, entry);
            }
        });
        return new Tree.Branch(top.place(), merged);
    }

    private static boolean standsForItself(Tree.Branch lower, Tree.Branch upper) {
        return STANDS_FOR_ITSELF.stream().anyMatch(upper::has)
                || NUMBERS.stream().anyMatch(key -> lower.has(key) || upper.has(key));
    }

    /** Each family with what it is like and with what is said of every family. */
    public static Map<String, Tree.Branch> families(
            Tree.Branch families, Tree.@Nullable Branch every, Problems problems) {
        Map<String, Tree.Branch> resolved = new LinkedHashMap<>();
        families.entries().forEach((key, entry) -> {
            if (entry.value() instanceof Tree.Branch own) {
                Tree.Branch whole = like(own, families, new ArrayDeque<>(List.of(key)), problems);
                resolved.put(entry.key(), every == null ? whole : merge(whole, every));
            } else {
                problems.add(
                        entry.place(),
                        "families." + entry.key(),
                        "found " + entry.value().shown(),
                        "a map of the family's keys belongs here");
            }
        });
        return resolved;
    }

    private static Tree.Branch like(Tree.Branch own, Tree.Branch families, Deque<String> chain, Problems problems) {
        Tree like = own.get("like");
        if (like == null) {
            return withoutNone(own);
        }
        Tree.Branch rest = without(own, "like");
        String at = "families." + chain.peekLast() + ".like";
        String name = like instanceof Tree.Text text ? Tree.plain(text.value()) : "";
        if (!(families.get(name) instanceof Tree.Branch model)) {
            List<String> names =
                    families.entries().values().stream().map(Tree.Entry::key).toList();
            problems.add(
                    like.place(),
                    at,
                    "found " + like.shown() + ", which is no family here",
                    NearestKey.remedy(name, names));
            return withoutNone(rest);
        }
        if (chain.contains(name)) {
            problems.add(
                    like.place(),
                    at,
                    "the families " + String.join(", ", chain) + " are like each other in a ring",
                    "let one of them stand for itself");
            return withoutNone(rest);
        }
        chain.push(name);
        return merge(like(model, families, chain, problems), rest);
    }

    /** A map less one key. */
    public static Tree.Branch without(Tree.Branch branch, String key) {
        Map<String, Tree.Entry> rest = new LinkedHashMap<>(branch.entries());
        rest.remove(Tree.plain(key));
        return new Tree.Branch(branch.place(), rest);
    }

    private static Tree.Branch withoutNone(Tree.Branch branch) {
        return merge(new Tree.Branch(branch.place(), Map.of()), branch);
    }

    private static boolean isNone(Tree value) {
        return value instanceof Tree.Text text && text.value().equals("none");
    }
}
