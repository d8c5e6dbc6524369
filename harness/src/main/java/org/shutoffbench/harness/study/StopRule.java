package org.shutoffbench.harness.study;

/** What ends a run: a number of joints, or what the joints have shown by then. */
public sealed interface StopRule {

    /** As records name it. */
    String title();

    /** So many joints in every family, whatever they show. */
    record FixedNumber() implements StopRule {
        @Override
        public String title() {
            return "fixed number of joints";
        }
    }

    /**
     * Until the intervals of all in-window and silent-miss rates are narrow.
     *
     * @param halfWidth half of the widest interval that will do, in (0, 0.5)
     */
    record NarrowIntervals(double halfWidth) implements StopRule {

        public NarrowIntervals {
            if (!(halfWidth > 0 && halfWidth < 0.5)) {
                throw new IllegalArgumentException("half a width lies in (0, 0.5), not " + halfWidth);
            }
        }

        @Override
        public String title() {
            return "intervals within " + 100 * halfWidth + " points";
        }
    }

    /**
     * Until one strategy is found best, by the mean in-window rate over the families.
     *
     * @param lead smallest lead that matters, in (0, 1)
     */
    record DecidedRanking(double lead) implements StopRule {

        public DecidedRanking {
            if (!(lead > 0 && lead < 1)) {
                throw new IllegalArgumentException("a lead lies in (0, 1), not " + lead);
            }
        }

        @Override
        public String title() {
            return "best strategy decided, leads of " + 100 * lead + " points matter";
        }
    }
}
