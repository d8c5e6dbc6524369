package org.shutoffbench.controller.conformance;

import java.util.Set;
import org.shutoffbench.controller.Channel;

/** Does the strategy keep to the channels it declares? Undeclared ones are shown and hidden in turn. */
final class ChannelCheck implements Check {

    @Override
    public String name() {
        return "declared channels only";
    }

    @Override
    public Finding examine(Subject subject) {
        Set<Channel> declared = subject.declaredChannels();
        for (Recording recording : new Recording[] {MadeUpTightening.plainJoint(), MadeUpTightening.lockNut()}) {
            Playback shown = Playback.of(subject.create(), Subject.USUAL_TARGET, recording);
            Playback hidden =
                    Playback.of(subject.create(), Subject.USUAL_TARGET, new MaskedRecording(recording, declared));
            String difference = shown.differenceTo(hidden);
            if (difference != null) {
                return Finding.failed(
                        name(),
                        "answers differ on " + recording.title() + " when undeclared channels are hidden: "
                                + difference,
                        "Declare every channel that onSample reads, or stop reading it.");
            }
        }
        return Finding.passed(name(), "same answers with undeclared channels shown and hidden");
    }
}
