package org.shutoffbench.harness.report.joint;

import org.shutoffbench.joint.thread.CustomaryUnits;

/** A kind of number on the sheet, with the unit that each system prints it in. */
enum Measure {
    TORQUE("N*m", 1, "ft*lbf", CustomaryUnits.FOOT_POUND_NM),
    FORCE("kN", 1e3, "kip", CustomaryUnits.KIP_N),
    LENGTH("mm", 1e-3, "in", CustomaryUnits.INCH_M),
    MICRO_LENGTH("um", 1e-6, "mil", CustomaryUnits.INCH_M / 1e3),
    AREA("mm^2", 1e-6, "in^2", CustomaryUnits.INCH_M * CustomaryUnits.INCH_M),
    STRESS("MPa", 1e6, "ksi", CustomaryUnits.KSI_PA),
    STIFFNESS("kN/mm", 1e6, "Mlbf/in", 1e6 * CustomaryUnits.POUND_FORCE_N / CustomaryUnits.INCH_M),
    ANGLE("deg", Math.PI / 180, "deg", Math.PI / 180),
    FORCE_PER_ANGLE("kN/deg", 1e3 * 180 / Math.PI, "kip/deg", CustomaryUnits.KIP_N * 180 / Math.PI),
    TORQUE_PER_ANGLE("N*m/deg", 180 / Math.PI, "ft*lbf/deg", CustomaryUnits.FOOT_POUND_NM * 180 / Math.PI),
    TURNS("turns", 2 * Math.PI, "turns", 2 * Math.PI),
    SHARE("%", 0.01, "%", 0.01),
    TEMPERATURE("degC", 1, "degC", 1),
    PURE("", 1, "", 1);

    private final String siUnit;
    private final double siSize;
    private final String customaryUnit;
    private final double customarySize;

    Measure(String siUnit, double siSize, String customaryUnit, double customarySize) {
        this.siUnit = siUnit;
        this.siSize = siSize;
        this.customaryUnit = customaryUnit;
        this.customarySize = customarySize;
    }

    String unit(UnitSystem system) {
        return system == UnitSystem.SI ? siUnit : customaryUnit;
    }

    /** A value given in SI base units, in the unit of a system. */
    double in(UnitSystem system, double si) {
        return si / (system == UnitSystem.SI ? siSize : customarySize);
    }
}
