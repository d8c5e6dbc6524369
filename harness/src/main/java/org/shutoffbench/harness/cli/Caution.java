package org.shutoffbench.harness.cli;

/** What stands wherever a number could be taken for an instruction. */
final class Caution {

    static final String TEXT =
            "Simulated figures, not a tightening procedure: the joint's designer, the maker's instructions, local codes and"
                    + " licensed practice decide. Check on real joints with calibrated measurement. Bolts can break and"
                    + " tools can kick: wear eye and hand protection.";

    private Caution() {}
}
