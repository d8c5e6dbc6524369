package org.shutoffbench.controller.conformance;

import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.controller.ShutoffStrategy;

/** Does {@code arm} reset everything? A used instance, armed again, must answer as a fresh one. */
final class RearmingCheck implements Check {

    @Override
    public String name() {
        return "re-armable";
    }

    @Override
    public Finding examine(Subject subject) {
        Recording plain = MadeUpTightening.plainJoint();
        Recording lockNut = MadeUpTightening.lockNut();
        Playback fresh = Playback.of(subject.create(), Subject.USUAL_TARGET, plain);

        ShutoffStrategy used = subject.create();
        Playback.of(used, Subject.OTHER_TARGET, lockNut);
        String afterAnother = fresh.differenceTo(Playback.of(used, Subject.USUAL_TARGET, plain));
        if (afterAnother != null) {
            return failure("after another tightening", afterAnother);
        }
        Playback.of(used, Subject.USUAL_TARGET, new Beginning(lockNut, lockNut.ticks() / 16));
        String afterHalf = fresh.differenceTo(Playback.of(used, Subject.USUAL_TARGET, plain));
        if (afterHalf != null) {
            return failure("armed in the middle of a tightening", afterHalf);
        }
        return Finding.passed(name(), "an instance used twice before answers as a fresh one");
    }

    private Finding failure(String when, String difference) {
        return Finding.failed(
                name(),
                "differs from a fresh instance " + when + ": " + difference,
                "arm() sets every field that onSample changes.");
    }

    /** The first samples of a recording. */
    private record Beginning(Recording whole, int ticks) implements Recording {

        @Override
        public void sample(int tick, SensorFrame frame) {
            whole.sample(tick, frame);
        }

        @Override
        public String title() {
            return "the beginning of " + whole.title();
        }
    }
}
