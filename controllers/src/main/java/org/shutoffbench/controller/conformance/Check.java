package org.shutoffbench.controller.conformance;

/** One question that the suite puts to a strategy. */
interface Check {

    /** Name of the check, lower case words. */
    String name();

    /** Examines a strategy that can be created; never throws on behalf of the strategy. */
    Finding examine(Subject subject);
}
