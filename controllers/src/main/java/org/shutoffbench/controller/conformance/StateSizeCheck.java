package org.shutoffbench.controller.conformance;

import org.shutoffbench.controller.ShutoffStrategy;

/** Does the strategy need no more state than it declares? */
final class StateSizeCheck implements Check {

    @Override
    public String name() {
        return "state bytes";
    }

    @Override
    public Finding examine(Subject subject) {
        ShutoffStrategy strategy = subject.create();
        int declared = subject.descriptor.stateBytes();
        int measured;
        try {
            measured = StateSize.of(strategy);
        } catch (IllegalArgumentException e) {
            return Finding.failed(
                    name(),
                    String.valueOf(e.getMessage()),
                    "Keep state in primitives, arrays of primitives, enums and own objects of such.");
        }
        return declared >= measured
                ? Finding.passed(name(), declared + " bytes declared, " + measured + " counted")
                : Finding.failed(
                        name(), declared + " bytes declared, " + measured + " counted", "Declare what is counted.");
    }
}
