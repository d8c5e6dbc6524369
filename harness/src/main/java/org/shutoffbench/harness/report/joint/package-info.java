/**
 * The sheet of one joint: what its bolt, parts, threads and friction come to, each number with its source, as text, JSON
 * and a picture of torque over nut angle.
 *
 * <p>Reads joint-model; knows no command line and writes no file.
 */
@NullMarked
package org.shutoffbench.harness.report.joint;

import org.jspecify.annotations.NullMarked;
