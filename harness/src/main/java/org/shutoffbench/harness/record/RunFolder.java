package org.shutoffbench.harness.record;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.Writer;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.scenario.JarCopies;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * The folder of one run. While the run goes on, rows are appended to a part file beside a note of which run it is; when it
 * ends, every file gets its real name. A folder with an unfinished run of the same identity is taken up where it stopped.
 */
public final class RunFolder {

    /** Rows of a finished run. */
    public static final String OUTCOMES = "outcomes.csv";

    /** Provenance of a finished run. */
    public static final String PROVENANCE = "run.json";

    /** Everything that was counted. */
    public static final String SUMMARY = "summary.json";

    /** The resolved scenario. */
    public static final String SCENARIO = "scenario.yaml";

    /** The page for eyes. */
    public static final String REPORT = "report.html";

    /** Table schema of the rows. */
    public static final String OUTCOMES_SCHEMA = "outcomes.csv.schema.json";

    private static final String OUTCOMES_PART = "outcomes.csv.part";
    private static final String UNFINISHED = "unfinished.json";

    /** Every file that this bench may leave in a run's folder. */
    public static final List<String> OWN_FILES =
            List.of(OUTCOMES, OUTCOMES_SCHEMA, OUTCOMES_PART, UNFINISHED, PROVENANCE, SUMMARY, SCENARIO, REPORT);

    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final Path folder;

    private RunFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * Opens a folder for a run.
     *
     * @param overwrite whether whatever this bench left there may be replaced
     * @throws FolderRefusedException where the folder holds anything but an unfinished run of the same identity
     */
    public static RunFolder open(Path folder, RunIdentity identity, boolean overwrite) throws IOException {
        RunFolder run = new RunFolder(folder);
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new FolderRefusedException(folder + " is a file, not a folder; name another with --out");
        }
        if (Files.isDirectory(folder) && !isEmpty(folder)) {
            if (identity.equals(run.unfinished())) {
                return run;
            }
            if (!overwrite) {
                throw new FolderRefusedException(folder
                        + " exists and holds no unfinished run of this scenario, seed, number of joints and version;"
                        + " name another folder with --out, or replace what is there with --overwrite");
            }
            run.clear();
        }
        Files.createDirectories(folder);
        run.write(UNFINISHED, JSON.writerWithDefaultPrettyPrinter().writeValueAsString(identity) + "\n");
        return run;
    }

    private static boolean isEmpty(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.findAny().isEmpty();
        }
    }

    private @Nullable RunIdentity unfinished() throws IOException {
        Path note = folder.resolve(UNFINISHED);
        if (!Files.isRegularFile(note)) {
            return null;
        }
        try (InputStream in = Files.newInputStream(note)) {
            return JSON.readValue(in, RunIdentity.class);
        } catch (JacksonException damaged) {
            return null;
        }
    }

    private void clear() throws IOException {
        if (Stream.of(UNFINISHED, PROVENANCE).noneMatch(name -> Files.isRegularFile(folder.resolve(name)))) {
            throw new FolderRefusedException(folder
                    + " holds files but no run of this bench: nothing there is overwritten; name another with --out");
        }
        for (String name : OWN_FILES) {
            Files.deleteIfExists(folder.resolve(name));
        }
        Path jars = folder.resolve(JarCopies.FOLDER);
        if (Files.isDirectory(jars)) {
            try (DirectoryStream<Path> copies = Files.newDirectoryStream(jars, "*.jar")) {
                for (Path copy : copies) {
                    Files.delete(copy);
                }
            }
        }
    }

    public Path path() {
        return folder;
    }

    /**
     * Reads what an interrupted run left, whole joints only, and cuts off the rest.
     *
     * @param rowsPerJoint strategies in the scenario
     * @param eachJoint receives the rows of every whole joint in order
     * @return how many whole joints there were
     */
    public long resume(OutcomesFormat format, int rowsPerJoint, Consumer<List<TighteningRecord>> eachJoint)
            throws IOException {
        Path part = folder.resolve(OUTCOMES_PART);
        if (!Files.isRegularFile(part)) {
            write(OUTCOMES_PART, format.header());
            return 0;
        }
        cutToLastLineEnd(part);
        long joints = 0;
        List<TighteningRecord> rows = new ArrayList<>(rowsPerJoint);
        long keepUntil = format.header().getBytes(StandardCharsets.UTF_8).length;
        try (CsvReader<CsvRecord> csv = CsvReader.builder().ofCsvRecord(part)) {
            for (CsvRecord row : csv) {
                if (row.getStartingLineNumber() == 1) {
                    continue;
                }
                rows.add(format.parse(row));
                if (rows.size() == rowsPerJoint) {
                    keepUntil += format.rows(rows).getBytes(StandardCharsets.UTF_8).length;
                    eachJoint.accept(List.copyOf(rows));
                    rows.clear();
                    joints++;
                }
            }
        }
        try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE)) {
            channel.truncate(keepUntil);
        }
        return joints;
    }

    private static void cutToLastLineEnd(Path part) throws IOException {
        try (FileChannel channel = FileChannel.open(part, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            long end = channel.size();
            ByteBuffer one = ByteBuffer.allocate(1);
            while (end > 0) {
                one.clear();
                channel.read(one, end - 1);
                if (one.get(0) == '\n') {
                    break;
                }
                end--;
            }
            channel.truncate(end);
        }
    }

    /** A writer that appends rows to the part file. */
    public Writer appendRows() throws IOException {
        return Files.newBufferedWriter(
                folder.resolve(OUTCOMES_PART), StandardCharsets.UTF_8, StandardOpenOption.APPEND);
    }

    /** Gives the rows their real name and ends the run; after all other files have been written. */
    public void finish() throws IOException {
        Files.move(folder.resolve(OUTCOMES_PART), folder.resolve(OUTCOMES), StandardCopyOption.ATOMIC_MOVE);
        Files.deleteIfExists(folder.resolve(UNFINISHED));
    }

    /** SHA-256 of the rows, before or after they got their real name. */
    public String outcomesSha256() throws IOException {
        Path part = folder.resolve(OUTCOMES_PART);
        return FileHash.of(Files.isRegularFile(part) ? part : folder.resolve(OUTCOMES));
    }

    /** Writes a text file, whole or not at all. */
    public void write(String name, String text) throws IOException {
        TextFile.write(folder.resolve(name), text);
    }
}
