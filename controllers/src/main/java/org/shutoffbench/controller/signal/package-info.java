/**
 * Building blocks of strategies: filters, blow detector, change-point detector, ring buffer, recursive least squares.
 */
@NullMarked
package org.shutoffbench.controller.signal;

import org.jspecify.annotations.NullMarked;
