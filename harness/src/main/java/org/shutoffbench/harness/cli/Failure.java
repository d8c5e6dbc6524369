package org.shutoffbench.harness.cli;

import java.io.IOException;
import java.io.PrintWriter;
import org.shutoffbench.harness.population.ImpossibleJointException;
import org.shutoffbench.harness.record.FolderRefusedException;
import org.shutoffbench.harness.run.BrokenStrategyException;
import org.shutoffbench.harness.scenario.file.ScenarioException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Says in one message what went wrong: exit code 2 where the input is to blame, 1 otherwise. No stack trace. */
final class Failure implements IExecutionExceptionHandler {

    static final int INPUT_ERROR = 2;
    static final int FAILED = 1;

    @Override
    public int handleExecutionException(Exception failure, CommandLine command, ParseResult parsed) throws Exception {
        PrintWriter err = command.getErr();
        if (failure instanceof ParameterException usage) {
            return command.getParameterExceptionHandler().handleParseException(usage, new String[0]);
        }
        if (failure instanceof ScenarioException
                || failure instanceof FolderRefusedException
                || failure instanceof ImpossibleJointException
                || failure instanceof BrokenStrategyException
                || failure instanceof InputException) {
            err.println(failure.getMessage());
            return INPUT_ERROR;
        }
        if (failure instanceof IOException) {
            err.println("cannot read or write: " + failure);
            return FAILED;
        }
        throw failure;
    }
}
