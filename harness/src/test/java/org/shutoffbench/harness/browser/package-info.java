/** A real browser for tests of pages. */
package org.shutoffbench.harness.browser;
