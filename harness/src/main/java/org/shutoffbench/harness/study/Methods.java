package org.shutoffbench.harness.study;

/**
 * Which intervals a summary holds.
 *
 * @param confidence of every interval, in (0, 1)
 * @param rates kind of the intervals of rates
 * @param toleranceContent share of joints that a tolerance interval holds, in (0, 1)
 * @param toleranceConfidence confidence of tolerance intervals, in (0, 1)
 * @param torqueRateSigmas standard deviations on each side that count as scatter in the torque-rate pair
 */
public record Methods(
        double confidence,
        RateInterval rates,
        double toleranceContent,
        double toleranceConfidence,
        double torqueRateSigmas) {

    /** 95 % everywhere, exact intervals, three standard deviations. */
    public static final Methods DEFAULT = new Methods(0.95, RateInterval.CLOPPER_PEARSON, 0.95, 0.95, 3);

    public Methods {
        if (!(confidence > 0 && confidence < 1)
                || !(toleranceContent > 0 && toleranceContent < 1)
                || !(toleranceConfidence > 0 && toleranceConfidence < 1)
                || !(torqueRateSigmas > 0)) {
            throw new IllegalArgumentException("confidence and content lie in (0, 1), sigmas above 0");
        }
    }

    /** Kind of interval for a rate of independent joints. */
    public enum RateInterval {
        /** Exact: never covers less than it says. */
        CLOPPER_PEARSON("Clopper-Pearson"),
        /** Shorter, covers what it says on average. */
        WILSON("Wilson");

        private final String title;

        RateInterval(String title) {
            this.title = title;
        }

        /** As written in reports. */
        public String title() {
            return title;
        }
    }
}
