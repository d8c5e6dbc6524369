package org.shutoffbench.harness.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.StrategyEntry;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.harness.scenario.unit.Quantity;
import org.shutoffbench.harness.study.StopRule;

/** Ranges of options that several commands share. */
final class Checks {

    private static final int MOST_THREADS = 1024;

    private Checks() {}

    static int joints(int joints) {
        if (joints < 1 || joints > Scenario.MOST_JOINTS) {
            throw new InputException(
                    "--joints " + joints + ": give 1 to " + Scenario.MOST_JOINTS + " joints per family");
        }
        return joints;
    }

    static int threads(int threads) {
        if (threads < 1 || threads > MOST_THREADS) {
            throw new InputException("--threads " + threads + ": give 1 to " + MOST_THREADS);
        }
        return threads;
    }

    /** Index of a family by name; the first where none is named. */
    static int family(Scenario scenario, @Nullable String name) {
        if (name == null) {
            return 0;
        }
        int index = scenario.familyIndex(name);
        if (index < 0) {
            throw new InputException("--family \"" + name + "\" is not in the scenario, which has "
                    + scenario.families().stream().map(f -> f.name()).collect(Collectors.joining(", ")));
        }
        return index;
    }

    /** What {@code --stop} says; a fixed number of joints where it says nothing. */
    static StopRule stopRule(@Nullable String text) {
        if (text == null) {
            return new StopRule.FixedNumber();
        }
        String[] words = text.strip().split("\\s+", 2);
        double share = share(words.length == 2 ? words[1] : "");
        if (words[0].equals("interval") && share > 0 && share < 0.5) {
            return new StopRule.NarrowIntervals(share);
        }
        if (words[0].equals("ranking") && share > 0 && share < 1) {
            return new StopRule.DecidedRanking(share);
        }
        throw new InputException("--stop \"" + text + "\": give \"interval 1 %\" with half of the width that will do,"
                + " below 50 %, or \"ranking 2 %\" with the smallest lead that matters");
    }

    private static double share(String text) {
        try {
            return Quantity.parse(text, Dimension.PURE).si();
        } catch (IllegalArgumentException notAShare) {
            return Double.NaN;
        }
    }

    /** Index of a strategy by its label, or by its label and settings. */
    static int strategy(Scenario scenario, String name, Path file) {
        List<String> known = new ArrayList<>();
        for (int s = 0; s < scenario.strategies().size(); s++) {
            StrategyEntry entry = scenario.strategies().get(s);
            String full = entry.label() + " (" + entry.settings() + ")";
            if (name.equals(entry.label()) || name.equals(full)) {
                return s;
            }
            known.add(full);
        }
        throw new InputException("--strategy \"" + name + "\" is not in " + file + ", which has "
                + (known.isEmpty() ? "none" : String.join(", ", known)));
    }

    /** A time such as "2.5s" or "2.5 s", in s. */
    static double seconds(String option, String text) {
        try {
            double seconds = Quantity.parse(text.replaceFirst("(?<=[0-9.])(?=[a-z])", " "), Dimension.TIME)
                    .si();
            if (seconds > 0) {
                return seconds;
            }
        } catch (IllegalArgumentException notATime) {
            throw new InputException(option + " " + text + ": give a time with its unit, such as 2.5s");
        }
        throw new InputException(option + " " + text + ": the time must be above 0");
    }
}
