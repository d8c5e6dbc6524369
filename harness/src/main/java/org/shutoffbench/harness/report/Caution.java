package org.shutoffbench.harness.report;

/** What stands wherever a number could be tightened to. */
public final class Caution {

    /** The caution in full. */
    public static final String TEXT = "Simulated figures, not a tightening procedure. The joint's designer, the maker's"
            + " instructions, local codes and licensed practice decide. Check on real joints with calibrated measurement."
            + " Bolts can break and tools can kick: wear eye and hand protection.";

    private Caution() {}
}
