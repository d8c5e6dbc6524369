/**
 * The bench on which every strategy, ours or anybody's, is checked against the contract. This is test equipment, not
 * firmware: it may allocate, and it reads the thread's allocation counter.
 */
@NullMarked
package org.shutoffbench.controller.conformance;

import org.jspecify.annotations.NullMarked;
