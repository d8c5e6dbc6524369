/**
 * Shutoff strategies, one file or one small package each, and their catalogue.
 */
@NullMarked
package org.shutoffbench.controller.strategy;

import org.jspecify.annotations.NullMarked;
