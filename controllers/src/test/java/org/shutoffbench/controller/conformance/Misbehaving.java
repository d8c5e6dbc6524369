package org.shutoffbench.controller.conformance;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Command;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.controller.Target;
import org.shutoffbench.controller.Verdict;

/** Strategies that break the contract in one point each. */
final class Misbehaving {

    private Misbehaving() {}

    public static final class NamedInCapitals extends Exemplary.Factory {
        @Override
        public StrategyDescriptor descriptor() {
            return describe(Set.of(Channel.BLOWS), List.of(setting("Blows", 1, 400, 12)), 64);
        }
    }

    public static final class NoFiniteRange extends Exemplary.Factory {
        @Override
        public StrategyDescriptor descriptor() {
            return describe(Set.of(Channel.BLOWS), List.of(setting("blows", 1, Double.POSITIVE_INFINITY, 12)), 64);
        }
    }

    public static final class AcceptsAnyTool extends Exemplary.Factory {
        @Override
        public ShutoffStrategy create(Settings settings, Provision provision) {
            return make();
        }
    }

    public static final class MakesNothing extends Exemplary.Factory {
        @Override
        public ShutoffStrategy create(Settings settings, Provision provision) {
            provision.demand(descriptor());
            return null;
        }
    }

    public static final class AnswersNothing extends Exemplary.Factory {
        @Override
        protected ShutoffStrategy make() {
            return new Exemplary() {
                @Override
                public Command onSample(SensorFrame frame) {
                    Command command = super.onSample(frame);
                    return blows == 1 ? null : command;
                }
            };
        }
    }

    public static final class DrivesAgain extends Exemplary.Factory {
        @Override
        protected ShutoffStrategy make() {
            return new Exemplary() {
                @Override
                public Command onSample(SensorFrame frame) {
                    Command command = super.onSample(frame);
                    return blows > 14 ? Command.FULL : command;
                }
            };
        }
    }

    public static final class SpeaksEarly extends Exemplary.Factory {
        @Override
        protected ShutoffStrategy make() {
            return new Exemplary() {
                @Override
                public Verdict verdict() {
                    return !stopped && blows == 3 ? Verdict.UNSURE : super.verdict();
                }
            };
        }
    }

    public static final class EstimatesMore extends Exemplary.Factory {
        @Override
        protected ShutoffStrategy make() {
            return new Exemplary() {
                @Override
                public int estimates(float[] into) {
                    if (into.length > 1) {
                        into[1] = 7;
                    }
                    return super.estimates(into);
                }
            };
        }
    }

    public static final class ReadsUndeclaredTorque extends Exemplary.Factory {
        @Override
        protected ShutoffStrategy make() {
            return new Exemplary() {
                @Override
                public Command onSample(SensorFrame frame) {
                    stopped |= frame.torqueNm > 40;
                    return super.onSample(frame);
                }
            };
        }
    }

    public static final class SharesState extends Exemplary.Factory {
        private static int everybodysBlows;

        @Override
        protected ShutoffStrategy make() {
            return new Exemplary() {
                @Override
                public void arm(Target target) {
                    super.arm(target);
                    everybodysBlows = 0;
                }

                @Override
                public Command onSample(SensorFrame frame) {
                    everybodysBlows += frame.blows > 0 ? 1 : 0;
                    stopped |= everybodysBlows >= 12;
                    return super.onSample(frame);
                }
            };
        }
    }

    public static final class RemembersTheLastJoint extends Exemplary.Factory {
        @Override
        protected ShutoffStrategy make() {
            return new Exemplary() {
                private float longestGap;

                @Override
                public Command onSample(SensorFrame frame) {
                    longestGap = Math.max(longestGap, frame.blows > 0 ? blows : 0);
                    return super.onSample(frame);
                }

                @Override
                public int estimates(float[] into) {
                    into[0] = longestGap;
                    return 1;
                }
            };
        }
    }

    public static final class Allocates extends Exemplary.Factory {
        @Override
        protected ShutoffStrategy make() {
            return new Exemplary() {
                private float[] latest = new float[4];

                @Override
                public Command onSample(SensorFrame frame) {
                    if (frame.blows > 0) {
                        latest = new float[4];
                    }
                    latest[0] = frame.blows;
                    return super.onSample(frame);
                }
            };
        }
    }

    public static final class UnderstatesItsState extends Exemplary.Factory {
        @Override
        public StrategyDescriptor descriptor() {
            return describe(Set.of(Channel.BLOWS), List.of(setting("blows", 1, 400, 12)), 7);
        }
    }

    public static final class HoldsALibraryObject extends Exemplary.Factory {
        @Override
        protected ShutoffStrategy make() {
            return new Exemplary() {
                private final List<Integer> seen = new ArrayList<>(4);

                @Override
                public Verdict verdict() {
                    return seen.isEmpty() ? super.verdict() : Verdict.UNSURE;
                }
            };
        }
    }

    /** Throws where a reading meets a condition. */
    abstract static class OnTorque extends Exemplary.Factory {
        abstract void read(float torqueNm);

        @Override
        protected ShutoffStrategy make() {
            return new Exemplary() {
                @Override
                public Command onSample(SensorFrame frame) {
                    read(frame.torqueNm);
                    return super.onSample(frame);
                }
            };
        }

        @Override
        public StrategyDescriptor descriptor() {
            return describe(Set.of(Channel.BLOWS, Channel.TORQUE), List.of(setting("blows", 1, 400, 12)), 64);
        }
    }

    public static final class GrowsWhenArmed extends Exemplary.Factory {
        @Override
        protected ShutoffStrategy make() {
            return new Exemplary() {
                private float[] recent;

                @Override
                public void arm(Target target) {
                    super.arm(target);
                    if (recent == null) {
                        recent = new float[1000];
                    }
                    recent[0] = 0;
                }
            };
        }
    }

    public static final class ClaimsBlind extends Exemplary.Factory {
        @Override
        protected ShutoffStrategy make() {
            return new Exemplary() {
                private int blind;

                @Override
                public void arm(Target target) {
                    super.arm(target);
                    blind = 0;
                }

                @Override
                public Command onSample(SensorFrame frame) {
                    blind += Float.isNaN(frame.torqueNm) ? 1 : 0;
                    stopped |= blind > 20_000;
                    return super.onSample(frame);
                }
            };
        }

        @Override
        public StrategyDescriptor descriptor() {
            return describe(Set.of(Channel.BLOWS, Channel.TORQUE), List.of(setting("blows", 1, 400, 12)), 64);
        }
    }

    public static final class TrustsTheScale extends OnTorque {
        @Override
        void read(float torqueNm) {
            if (Math.abs(torqueNm) == 1e5f) {
                throw new ArithmeticException("beyond the scale");
            }
        }
    }

    public static final class TrustsFiniteness extends OnTorque {
        @Override
        void read(float torqueNm) {
            if (Float.isInfinite(torqueNm)) {
                throw new ArithmeticException("infinite");
            }
        }
    }

    public static final class TripsOverDropOuts extends Exemplary.Factory {
        @Override
        protected ShutoffStrategy make() {
            return new Exemplary() {
                private boolean wasMissing;
                private int returns;

                @Override
                public void arm(Target target) {
                    super.arm(target);
                    returns = 0;
                }

                @Override
                public Command onSample(SensorFrame frame) {
                    boolean missing = Float.isNaN(frame.torqueNm);
                    returns += wasMissing && !missing ? 1 : 0;
                    wasMissing = missing;
                    if (returns > 3) {
                        throw new IllegalStateException("came back too often");
                    }
                    return super.onSample(frame);
                }
            };
        }

        @Override
        public StrategyDescriptor descriptor() {
            return describe(Set.of(Channel.BLOWS, Channel.TORQUE), List.of(setting("blows", 1, 400, 12)), 64);
        }
    }

    public static final class DividesByTheChange extends Exemplary.Factory {
        @Override
        protected ShutoffStrategy make() {
            return new Exemplary() {
                private float before = Float.NaN;

                @Override
                public Command onSample(SensorFrame frame) {
                    float now = frame.torqueNm;
                    if (now == before && Math.abs(now) < 1000) {
                        throw new ArithmeticException("no change");
                    }
                    before = now;
                    return super.onSample(frame);
                }
            };
        }

        @Override
        public StrategyDescriptor descriptor() {
            return describe(Set.of(Channel.BLOWS, Channel.TORQUE), List.of(setting("blows", 1, 400, 12)), 64);
        }
    }

    public static final class DrivesForNothing extends Exemplary.Factory {
        @Override
        protected ShutoffStrategy make() {
            return new Exemplary() {
                @Override
                public void arm(Target target) {
                    super.arm(target);
                    blows = nothingToReach ? -5 : 0;
                    nothingToReach = false;
                }
            };
        }
    }

    public static final class RunsOutOfRoom extends Exemplary.Factory {
        @Override
        protected ShutoffStrategy make() {
            return new Exemplary() {
                private int quiet;

                @Override
                public void arm(Target target) {
                    super.arm(target);
                    quiet = 0;
                }

                @Override
                public Command onSample(SensorFrame frame) {
                    quiet = frame.blows != 0 ? 0 : quiet + 1;
                    if (quiet > 100_000) {
                        throw new ArrayIndexOutOfBoundsException(quiet);
                    }
                    return super.onSample(frame);
                }
            };
        }
    }
}
