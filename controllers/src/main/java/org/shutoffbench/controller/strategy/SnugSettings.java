package org.shutoffbench.controller.strategy;

import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.Setting.Role;
import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.signal.SnugDetector;

/** The settings of strategies that look for the joint's seating by the work of a blow. */
final class SnugSettings {

    static final Setting BLOW_WORK = new Setting(
            BlowSettings.WORK, "J", 0.2, 60, 2.75, "work that a blow at full drive does on the nut", Role.LEARNED);

    static final Setting SLOWEST_SEATING = new Setting(
            "slowest seating",
            "N*m/rad",
            1,
            200,
            10,
            "torque per angle above which the joint is taken to seat",
            Role.FIXED);

    private SnugSettings() {}

    static SnugDetector detector(Settings settings) {
        return new SnugDetector(settings.get(SLOWEST_SEATING.name()));
    }
}
