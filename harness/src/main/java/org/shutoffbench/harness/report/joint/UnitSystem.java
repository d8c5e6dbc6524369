package org.shutoffbench.harness.report.joint;

/** Units that a sheet prints in. */
public enum UnitSystem {
    /** N m, kN, mm. */
    SI,
    /** ft lbf, kip, in. */
    CUSTOMARY
}
