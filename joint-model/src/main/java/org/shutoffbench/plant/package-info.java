/**
 * Joint and tool in motion: the mutable {@link org.shutoffbench.plant.PlantState}, the fast and the reference solver,
 * and the energy audit.
 *
 * <p>Parameters never change here and state never hides: all that moves is in the state. May use the joint and tool
 * rooms; knows no sensor and no strategy.
 */
@NullMarked
package org.shutoffbench.plant;

import org.jspecify.annotations.NullMarked;
