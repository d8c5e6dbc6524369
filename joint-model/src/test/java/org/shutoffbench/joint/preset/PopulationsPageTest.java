package org.shutoffbench.joint.preset;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class PopulationsPageTest {

    private static final Path PAGE = Path.of("../docs/populations.md");

    /** A preset and its page change together: the rows expected stand in the message. */
    @Test
    void thePageListsEveryPresetWithItsNumbers() throws IOException {
        String page = Files.readString(PAGE);
        assertThat(page).contains(PopulationsPage.surfaces()).contains(PopulationsPage.states());
    }
}
