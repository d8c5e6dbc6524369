package org.shutoffbench.controller.conformance;

/** Does a target of 0 N m stop the tool no later than a real one? */
final class NoTargetCheck implements Check {

    @Override
    public String name() {
        return "target of 0";
    }

    @Override
    public Finding examine(Subject subject) {
        Recording recording = MadeUpTightening.plainJoint();
        Playback usual = Playback.of(subject.create(), Subject.USUAL_TARGET, recording);
        Playback none = Playback.of(subject.create(), Subject.NO_TARGET, recording);
        if (none.thrown != null) {
            return failure(none.thrown);
        }
        boolean later = usual.stopTick >= 0 && (none.stopTick < 0 || none.stopTick > usual.stopTick);
        if (later) {
            return failure(none.stopInWords() + " with a target of 0, " + usual.stopInWords() + " with "
                    + Subject.USUAL_TARGET.clampingTorqueNm() + " N m");
        }
        return Finding.passed(name(), none.stopInWords() + " (" + usual.stopInWords() + " with the usual target)");
    }

    private Finding failure(String found) {
        return Finding.failed(name(), found, "A target of 0 is reached at once: stop early and document the command.");
    }
}
