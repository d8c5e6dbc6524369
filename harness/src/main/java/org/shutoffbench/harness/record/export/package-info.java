/**
 * The records of a finished run in other forms, for whoever signs: CSV with a table schema, Parquet, and JSON with the field
 * names of OPC 40450-1. Nothing is simulated here. The Parquet library is optional: one class alone knows it.
 */
@NullMarked
package org.shutoffbench.harness.record.export;

import org.jspecify.annotations.NullMarked;
