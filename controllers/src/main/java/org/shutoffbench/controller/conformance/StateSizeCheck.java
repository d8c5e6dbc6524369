package org.shutoffbench.controller.conformance;

import org.shutoffbench.controller.ShutoffStrategy;

/** Does the strategy need no more state than it declares, as made and after a tightening? */
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
            int asMade = StateSize.of(strategy);
            Playback.of(strategy, Subject.USUAL_TARGET, MadeUpTightening.plainJoint());
            measured = Math.max(asMade, StateSize.of(strategy));
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
