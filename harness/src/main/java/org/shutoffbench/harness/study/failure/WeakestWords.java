package org.shutoffbench.harness.study.failure;

import java.util.List;
import java.util.Locale;
import org.shutoffbench.harness.population.DrawnCase;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.scenario.JointKey;
import org.shutoffbench.harness.scenario.unit.Dimension;

/** Says in a sentence what it takes for a strategy to fail: "a prevailing torque of 9.0 N m alone, 1.3 sigma, is enough". */
record WeakestWords(
        String strategy,
        TighteningRecord record,
        double beta,
        List<WeakestStudy.Change> changes,
        DrawnCase drawn,
        double overNoise) {

    private static final String PRESENT = " present";

    @Override
    public String toString() {
        String end = String.format(
                        Locale.ROOT,
                        "%s says %s at %.1f N m clamping torque (%s).",
                        strategy,
                        record.verdict(),
                        record.clampingTorqueNm(),
                        record.outcome().title())
                + (overNoise < 0.5
                        ? String.format(
                                Locale.ROOT,
                                " A fluke of the noise: with other noise %.1f %% of the runs fail.",
                                100 * overNoise)
                        : "");
        if (changes.isEmpty()) {
            return "The mild joint itself is enough: " + end;
        }
        List<String> parts = changes.stream().map(this::part).toList();
        String what = parts.size() == 1
                ? parts.get(0) + " alone"
                : String.join(", ", parts.subList(0, parts.size() - 1)) + " and " + parts.get(parts.size() - 1)
                        + " together";
        return String.format(
                Locale.ROOT, "%s, %.2f sigma in all, %s enough: %s", what, beta, parts.size() == 1 ? "is" : "are", end);
    }

    private String part(WeakestStudy.Change change) {
        String name = change.source().replaceFirst(" \\([a-z]+\\)$", "");
        if (name.endsWith(PRESENT)) {
            String part = name.substring(0, name.length() - PRESENT.length());
            Double torqueNm = drawn.values().get(part + " torque");
            String size = torqueNm == null ? "" : String.format(Locale.ROOT, " of %.1f N m", torqueNm);
            return String.format(Locale.ROOT, "%s%s (%+.2f sigma)", part + " torque", size, change.sigma());
        }
        Double value = drawn.values().get(name);
        String size = value == null ? "" : " " + written(name, value);
        return String.format(Locale.ROOT, "%s%s (%+.2f sigma)", name, size, change.sigma());
    }

    private static String written(String name, double value) {
        for (JointKey key : JointKey.values()) {
            if (key.title().equals(name) && key.dimension() == Dimension.ANGLE) {
                return String.format(Locale.ROOT, "%.1f deg", Math.toDegrees(value));
            }
            if (key.title().equals(name) && key.dimension() == Dimension.STIFFNESS) {
                return String.format(Locale.ROOT, "%.0f kN/mm", value * 1e-6);
            }
        }
        return String.format(Locale.ROOT, "%.4g", value);
    }
}
