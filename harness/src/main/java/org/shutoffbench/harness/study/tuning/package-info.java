/**
 * Setting strategies up: candidate settings on joints of their own, an equal and logged budget for every strategy. Nothing
 * here touches the joints that a run judges.
 */
@NullMarked
package org.shutoffbench.harness.study.tuning;

import org.jspecify.annotations.NullMarked;
