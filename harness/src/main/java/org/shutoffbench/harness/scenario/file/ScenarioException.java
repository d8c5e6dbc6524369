package org.shutoffbench.harness.scenario.file;

import java.util.List;
import java.util.stream.Collectors;

/** A scenario that cannot be used, with everything that is wrong with it. Not a programming error: a matter of the user's file. */
public final class ScenarioException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    public ScenarioException(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    public ScenarioException(Problem problem) {
        this(List.of(problem));
    }

    /** All problems, in the order of the file. */
    public List<Problem> problems() {
        return problems;
    }
}
