package org.shutoffbench.harness.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.record.OutcomesFormat.StrategyName;
import org.shutoffbench.harness.run.EndReason;
import org.shutoffbench.harness.run.Outcome;
import org.shutoffbench.harness.run.TighteningRecord;

class RunFolderTest {

    private static final RunIdentity IDENTITY = new RunIdentity("1", "abc", 7, 10, "fixed");
    private static final OutcomesFormat FORMAT = new OutcomesFormat(
            List.of("plain", "nut, \"locked\""),
            List.of(new StrategyName("blow count", "home"), new StrategyName("blow count", "all")));

    @TempDir
    Path temporary;

    private static List<TighteningRecord> joint(int number) {
        List<TighteningRecord> rows = new ArrayList<>();
        for (int strategy = 0; strategy < 2; strategy++) {
            rows.add(new TighteningRecord(
                    1,
                    number,
                    number,
                    number,
                    0,
                    number,
                    strategy,
                    EndReason.SHUTOFF,
                    Verdict.REACHED,
                    Outcome.IN_WINDOW,
                    41_234.567 + number,
                    84.123456,
                    -0.0,
                    28.5,
                    9,
                    0.3141,
                    Double.NaN,
                    strategy));
        }
        return rows;
    }

    private void append(RunFolder folder, String text) throws IOException {
        try (Writer rows = folder.appendRows()) {
            rows.write(text);
        }
    }

    @Test
    void anInterruptedRunIsTakenUpAfterItsLastWholeJoint() throws IOException {
        RunFolder folder = RunFolder.open(temporary.resolve("out"), IDENTITY, false);
        assertThat(folder.resume(FORMAT, 2, joint -> {})).isZero();
        append(folder, FORMAT.rows(joint(0)) + FORMAT.rows(joint(1)));
        String third = FORMAT.rows(joint(2));
        append(folder, third.substring(0, third.length() - 25));

        List<List<TighteningRecord>> kept = new ArrayList<>();
        RunFolder again = RunFolder.open(temporary.resolve("out"), IDENTITY, false);
        assertThat(again.resume(FORMAT, 2, kept::add)).isEqualTo(2);
        assertThat(kept).containsExactly(joint(0), joint(1));

        append(again, third);
        again.finish();
        assertThat(temporary.resolve("out").resolve(RunFolder.OUTCOMES))
                .hasContent(FORMAT.header() + FORMAT.rows(joint(0)) + FORMAT.rows(joint(1)) + third);
    }

    @Test
    void anotherRunIsRefusedAndLeftAlone() throws IOException {
        RunFolder.open(temporary.resolve("out"), IDENTITY, false).resume(FORMAT, 2, joint -> {});
        RunIdentity other = new RunIdentity("1", "abc", 8, 10, "fixed");
        assertThatThrownBy(() -> RunFolder.open(temporary.resolve("out"), other, false))
                .isInstanceOf(FolderRefusedException.class)
                .hasMessageContaining("--overwrite");
        assertThat(RunFolder.open(temporary.resolve("out"), IDENTITY, false)).isNotNull();
    }

    @Test
    void overwritingTakesOnlyWhatABenchWrote() throws IOException {
        Path out = temporary.resolve("out");
        RunFolder.open(out, IDENTITY, false).resume(FORMAT, 2, joint -> {});
        Files.writeString(out.resolve("my notes.txt"), "keep");
        RunFolder folder = RunFolder.open(out, new RunIdentity("2", "abc", 7, 10, "fixed"), true);
        assertThat(folder.resume(FORMAT, 2, joint -> {})).isZero();
        assertThat(out.resolve("my notes.txt")).hasContent("keep");
    }

    @Test
    void aFolderWithoutARunIsNeverOverwritten() throws IOException {
        Files.writeString(temporary.resolve("letter.txt"), "keep");
        assertThatThrownBy(() -> RunFolder.open(temporary, IDENTITY, true)).isInstanceOf(FolderRefusedException.class);
        assertThat(temporary.resolve("letter.txt")).hasContent("keep");
    }

    @Test
    void aFileInPlaceOfTheFolderIsRefused() throws IOException {
        Path file = Files.writeString(temporary.resolve("out"), "text");
        assertThatThrownBy(() -> RunFolder.open(file, IDENTITY, true))
                .isInstanceOf(FolderRefusedException.class)
                .hasMessageContaining("is a file");
    }

    @Test
    void aDamagedNoteCountsAsAnotherRun() throws IOException {
        Path out = temporary.resolve("out");
        RunFolder.open(out, IDENTITY, false);
        Files.writeString(
                out.resolve("unfinished.json"), "{", StandardCharsets.UTF_8, StandardOpenOption.TRUNCATE_EXISTING);
        assertThatThrownBy(() -> RunFolder.open(out, IDENTITY, false)).isInstanceOf(FolderRefusedException.class);
    }
}
