/**
 * One YAML file that says which joints, which tool, which sensors, which strategies and how many: its model as immutable
 * records, and the reader that turns a file into them or says everything that is wrong with it.
 *
 * <p>Nothing is drawn here. Values are in SI; every number keeps the words it was written with, so that a resolved scenario
 * reads like the original and gives the same bits.
 */
@NullMarked
package org.shutoffbench.harness.scenario;

import org.jspecify.annotations.NullMarked;
