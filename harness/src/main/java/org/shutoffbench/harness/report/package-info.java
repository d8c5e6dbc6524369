/**
 * The page of a finished study: one HTML file that works from disk, on paper and without a script.
 *
 * <p>{@link org.shutoffbench.harness.report.HtmlReport} writes it. Every sentence, number and curve on it comes from the
 * study's summary or from the joints that the scenario draws again; nothing here computes a statistic. Sentences are made
 * in Java, pages are templates under the resources of this room, curves are drawn in the browser.
 */
@NullMarked
package org.shutoffbench.harness.report;

import org.jspecify.annotations.NullMarked;
