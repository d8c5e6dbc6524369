/**
 * What a run leaves behind for others: the outcomes file, the run's provenance, and the folder that holds them.
 */
@NullMarked
package org.shutoffbench.harness.record;

import org.jspecify.annotations.NullMarked;
