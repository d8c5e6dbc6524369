package org.shutoffbench.harness.scenario.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Reads YAML into a {@link Tree}: one document, unique keys, no tags, bounded in size, depth and expansion of aliases. */
public final class TreeReader {

    /** Largest file that is read, bytes. */
    public static final int LARGEST_FILE = 1 << 20;

    private static final int MOST_NODES = 50_000;
    private static final int DEEPEST = 24;
    private static final int LONGEST_REASON = 200;

    private final String file;
    private final FileKind kind;
    private final Problems problems;
    private int nodes;

    private TreeReader(String file, FileKind kind, Problems problems) {
        this.file = file;
        this.kind = kind;
        this.problems = problems;
    }

    /** A scenario as {@link #read(Path, FileKind)} reads it. */
    public static Tree.Branch read(Path path) {
        return read(path, FileKind.SCENARIO);
    }

    /** A scenario as {@link #parse(String, String, FileKind)} reads it. */
    public static Tree.Branch parse(String name, String text) {
        return parse(name, text, FileKind.SCENARIO);
    }

    /**
     * Reads a file; its name in messages is the path as given.
     *
     * @throws ScenarioException if it cannot be read or is not one YAML map
     */
    public static Tree.Branch read(Path path, FileKind kind) {
        String name = path.toString().replace('\\', '/');
        try {
            if (Files.isDirectory(path)) {
                throw refused(name, "is a folder", "name a " + kind.title());
            }
            if (Files.size(path) > LARGEST_FILE) {
                throw refused(name, "is larger than 1 MiB", "it should be a short text; name a " + kind.title());
            }
            return parse(name, decoded(name, kind, Files.readAllBytes(path)), kind);
        } catch (NoSuchFileException e) {
            throw refused(name, "there is no such file", "check the path");
        } catch (IOException | SecurityException e) {
            throw refused(name, "cannot be read", "check the path and its permissions");
        }
    }

    /**
     * Reads a text; {@code name} stands for the file in messages.
     *
     * @throws ScenarioException if it is not one YAML map
     */
    public static Tree.Branch parse(String name, String text, FileKind kind) {
        Problems problems = new Problems();
        Tree tree = new TreeReader(name, kind, problems).compose(text);
        problems.throwIfAny();
        if (tree instanceof Tree.Branch branch) {
            return branch;
        }
        throw refused(name, "is not a map of keys and values", kind.beginning());
    }

    private static String decoded(String name, FileKind kind, byte[] bytes) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            if (text.indexOf('\0') < 0) {
                return text;
            }
        } catch (CharacterCodingException e) {
            // told below
        }
        throw refused(name, "is not text in UTF-8 (a binary file?)", "name a " + kind.title());
    }

    private Tree compose(String text) {
        List<Node> documents = documents(text);
        if (documents.isEmpty()) {
            throw refused(file, "is empty", kind.beginning());
        }
        if (documents.size() > 1) {
            throw refused(file, "holds " + documents.size() + " documents", "keep one document in one file");
        }
        return convert(documents.get(0), "", 0);
    }

    /** Whatever the parser throws, its own errors included, is a matter of the text: fuzzing found an index out of bounds. */
    private List<Node> documents(String text) {
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file)
                .setAllowDuplicateKeys(true) // told by our own words, all of them
                .setAllowRecursiveKeys(false)
                .setCodePointLimit(LARGEST_FILE)
                .build();
        List<Node> documents = new ArrayList<>();
        try {
            new Compose(settings).composeAllFromString(text).forEach(documents::add);
            return documents;
        } catch (MarkedYamlEngineException e) {
            int line = e.getProblemMark().map(mark -> mark.getLine() + 1).orElse(0);
            throw new ScenarioException(new Problem(
                    new Place(file, line),
                    "",
                    "is not valid YAML: " + oneLine(e.getProblem()),
                    "look at this line and the one above: indentation, colons, quotes, brackets"));
        } catch (YamlEngineException e) {
            throw notYaml(oneLine(String.valueOf(e.getMessage())));
        } catch (RuntimeException e) {
            throw notYaml("the parser gave up");
        } catch (StackOverflowError e) {
            throw notYaml("nested too deeply");
        }
    }

    private ScenarioException notYaml(String reason) {
        return refused(file, "is not valid YAML: " + reason, "check that it is a text of keys and values");
    }

    private static String oneLine(String text) {
        String line = text.replaceAll("[\\s\\p{Cntrl}\\u2028\\u2029]+", " ").strip();
        return line.length() > LONGEST_REASON ? line.substring(0, LONGEST_REASON) + "..." : line;
    }

    private Tree convert(Node node, String key, int depth) {
        Place place = place(node);
        if (++nodes > MOST_NODES) {
            throw new ScenarioException(
                    new Problem(place, key, "the file expands to more than 50,000 values", "repeat less by aliases"));
        }
        if (depth > DEEPEST) {
            throw new ScenarioException(new Problem(place, key, "nested too deeply", "at most 24 levels"));
        }
        if (node instanceof MappingNode map) {
            return branch(map, place, key, depth);
        }
        if (node instanceof SequenceNode sequence) {
            List<Tree> items = new ArrayList<>();
            for (Node item : sequence.getValue()) {
                items.add(convert(item, key + "[" + items.size() + "]", depth + 1));
            }
            return new Tree.Sequence(place, items);
        }
        if (!node.getTag().getValue().startsWith("tag:yaml.org,2002:")) {
            problems.add(place, key, "carries the YAML tag " + node.getTag().getValue(), "write values without tags");
        }
        return new Tree.Text(place, ((ScalarNode) node).getValue().strip());
    }

    private Tree branch(MappingNode map, Place place, String key, int depth) {
        Map<String, Tree.Entry> entries = new LinkedHashMap<>();
        for (NodeTuple tuple : map.getValue()) {
            Place at = place(tuple.getKeyNode());
            if (!(tuple.getKeyNode() instanceof ScalarNode name)) {
                problems.add(at, key, "a key is itself a map or a list", "keys are words");
                continue;
            }
            String written = name.getValue().strip();
            String full = key.isEmpty() ? written : key + "." + written;
            Tree value = convert(tuple.getValueNode(), full, depth + 1);
            Tree.Entry before = entries.putIfAbsent(Tree.plain(written), new Tree.Entry(at, written, value));
            if (before != null) {
                problems.add(
                        at,
                        full,
                        "is given twice",
                        "it stands in line " + before.place().line() + " already; keep one");
            }
        }
        return new Tree.Branch(place, entries);
    }

    private Place place(Node node) {
        return new Place(file, node.getStartMark().map(Mark::getLine).orElse(-1) + 1);
    }

    private static ScenarioException refused(String file, String found, String remedy) {
        return new ScenarioException(new Problem(Place.whole(file), "", found, remedy));
    }
}
