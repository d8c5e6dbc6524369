package org.shutoffbench.controller.strategy.adaptive;

import java.util.ArrayList;
import java.util.List;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.Setting.Role;

/** Settings of adaptive estimation that do not belong to the tool: what to aim at, what is believed, when to be sure. */
final class AdaptiveSettings {

    static final String AIM = "aim";
    static final String TRIM = "trim";
    static final String RATE = "believed joint rate";
    static final String RATE_SPREAD = "spread of joint rate";
    static final String SEATING = "believed seating angle";
    static final String SEATING_SPREAD = "spread of seating angle";
    static final String PREVAILING = "believed prevailing torque";
    static final String PREVAILING_SPREAD = "spread of prevailing torque";
    static final String LEAD = "believed lead of locking element";
    static final String LEAD_SPREAD = "spread of lead";
    static final String ENERGY_SPREAD = "spread of blow energy";
    static final String GAIN_SPREAD = "spread of torque gain";
    static final String STEP_NOISE = "noise of a step";

    static final String DOUBT = "doubt allowed";
    static final String MISFIT = "misfit allowed";

    static final List<Setting> ALL = all();

    private AdaptiveSettings() {}

    private static List<Setting> all() {
        List<Setting> all = new ArrayList<>();
        all.add(new Setting(AIM, "1", 0.8, 1.2, 1, "torque aimed at, over the target", Role.TUNED));
        all.add(new Setting(TRIM, "1", 0, 1, 1, "1: the last blow may be smaller; 0: full blows only", Role.FIXED));
        all.add(fixed(RATE, "N*m/rad", 1, 1e4, 90, "clamping torque per nut angle, median"));
        all.add(fixed(RATE_SPREAD, "1", 0.02, 3, 0.8, "standard deviation of its logarithm"));
        all.add(fixed(SEATING, "rad", 0.01, 3, 0.28, "angle over which parts come to bear, median"));
        all.add(fixed(SEATING_SPREAD, "1", 0.02, 3, 0.6, "standard deviation of its logarithm"));
        all.add(fixed(PREVAILING, "N*m", 0, 500, 8, "where the nut does not run freely into snug"));
        all.add(fixed(PREVAILING_SPREAD, "N*m", 0.1, 500, 8, "standard deviation"));
        all.add(fixed(LEAD, "turns", 0, 20, 1, "turns before snug at which a locking element begins"));
        all.add(fixed(LEAD_SPREAD, "turns", 0.05, 20, 0.35, "standard deviation"));
        all.add(fixed(ENERGY_SPREAD, "1", 1e-3, 0.5, 0.012, "of one tool's blow energy from the calibrated one"));
        all.add(fixed(GAIN_SPREAD, "1", 0, 0.5, 0.03, "of the torque channel, where there is one"));
        all.add(fixed(STEP_NOISE, "deg", 0.01, 5, 0.14, "standard deviation of a measured step of the nut"));
        all.add(new Setting(
                DOUBT,
                "1",
                0,
                0.05,
                0.05,
                "probability of ending below the window above which it is unsure",
                Role.VERDICT));
        all.add(new Setting(
                MISFIT, "1", 1, 20, 7, "mean squared residual of the fit above which it is unsure", Role.VERDICT));
        all.addAll(ToolSettings.all());
        return List.copyOf(all);
    }

    private static Setting fixed(
            String name, String unit, double least, double greatest, double byDefault, String meaning) {
        return new Setting(name, unit, least, greatest, byDefault, meaning, Role.FIXED);
    }
}
