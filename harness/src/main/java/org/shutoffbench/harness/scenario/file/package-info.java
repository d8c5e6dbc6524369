/**
 * The text of a scenario file as a tree that remembers where everything was written, and problems with it as people are
 * told of them. The only place that knows YAML.
 */
@NullMarked
package org.shutoffbench.harness.scenario.file;

import org.jspecify.annotations.NullMarked;
