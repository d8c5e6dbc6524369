package org.shutoffbench.controller.conformance;

/** Do two instances that listen to the same samples in turn give the same answers as one that listens alone? */
final class RepetitionCheck implements Check {

    @Override
    public String name() {
        return "deterministic";
    }

    @Override
    public Finding examine(Subject subject) {
        for (Recording recording : new Recording[] {MadeUpTightening.plainJoint(), MadeUpTightening.lockNut()}) {
            Playback alone = Playback.of(subject.create(), Subject.USUAL_TARGET, recording);
            Playback[] pair = Playback.interleaved(subject.create(), subject.create(), Subject.USUAL_TARGET, recording);
            for (Playback other : pair) {
                String difference = alone.differenceTo(other);
                if (difference != null) {
                    return Finding.failed(
                            name(),
                            "an instance answers otherwise beside a second one on " + recording.title() + ": "
                                    + difference,
                            "No clock, no random numbers, no mutable statics, nothing written into the frame: all state"
                                    + " belongs to the instance.");
                }
            }
        }
        return Finding.passed(name(), "same samples, same answers, alone and beside a second instance");
    }
}
