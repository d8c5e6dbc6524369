/**
 * How a strategy fails: how rarely, by which scatter, and on which joint first.
 *
 * <p>Puts the bench behind the limit states of {@code statistics}: a point of standard-normal space is a joint with its tool
 * and operator, its margin the distance from failure. May touch {@code run}, {@code population}, {@code scenario} and
 * {@code statistics}.
 */
@NullMarked
package org.shutoffbench.harness.study.failure;

import org.jspecify.annotations.NullMarked;
