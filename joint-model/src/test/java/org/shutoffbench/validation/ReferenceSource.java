package org.shutoffbench.validation;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** A test class that holds published values against ours; each check is a test and a row of docs/validation.md. */
public interface ReferenceSource {

    List<Check> checks();

    @TestFactory
    default Stream<DynamicTest> everyPublishedValueIsReproduced() {
        return checks().stream().map(check -> DynamicTest.dynamicTest(check.what(), check::verify));
    }
}
