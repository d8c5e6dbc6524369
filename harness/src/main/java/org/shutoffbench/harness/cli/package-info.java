/**
 * The command line: parses what the user typed, calls the room that does the work, and turns its outcome into text and
 * an exit code. The only room that may use picocli.
 */
@NullMarked
package org.shutoffbench.harness.cli;

import org.jspecify.annotations.NullMarked;
