/**
 * The lesson "why counting blows fails on a lock nut": a page in the browser, driven by the real plant.
 *
 * <p>{@link org.shutoffbench.harness.lesson.LessonServer} serves it on this machine alone; {@link
 * org.shutoffbench.harness.lesson.StaticLesson} writes a version that runs from disk on joints computed beforehand. May use
 * plants, populations and runs; no other room knows it but the command line.
 */
@NullMarked
package org.shutoffbench.harness.lesson;

import org.jspecify.annotations.NullMarked;
