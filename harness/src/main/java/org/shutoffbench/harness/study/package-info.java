/**
 * The result of a study: many joints, several strategies, one summary that every page and table reads.
 *
 * <p>{@link org.shutoffbench.harness.study.StudyAccumulator} takes the tightenings, {@link
 * org.shutoffbench.harness.study.StudySummary} is what comes out. May touch {@code run} (records of tightenings) and
 * {@code statistics}; knows nothing of pages, files apart from {@code summary.json}, or the command line.
 */
@NullMarked
package org.shutoffbench.harness.study;

import org.jspecify.annotations.NullMarked;
