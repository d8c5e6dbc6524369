package org.shutoffbench.harness.scenario;

import java.util.List;
import org.shutoffbench.harness.scenario.unit.Dimension;

/** Every number of a tool, by its symbol. */
@SuppressWarnings("ImmutableEnumChecker") // a Range is a record of records
public enum ToolKey {
    J_M("J_m", Dimension.INERTIA, "1e-6 kg*m^2", "1 kg*m^2", "carrier with the motor seen at it"),
    T_ST("T_st", Dimension.TORQUE, "0.01 N*m", "1000 N*m", "stall torque at the carrier"),
    T_LIM("T_lim", Dimension.TORQUE, "0.01 N*m", "1000 N*m", "torque limit of the electronics"),
    OMEGA_0("omega_0", Dimension.ANGULAR_SPEED, "1 rad/s", "10000 rad/s", "no-load speed at the carrier"),
    T_D("T_d", Dimension.TORQUE, "0 N*m", "100 N*m", "drag when coasting"),
    T_0("T_0", Dimension.TORQUE, "0 N*m", "100 N*m", "preload of the cam spring"),
    K_C("k_c", Dimension.ANGULAR_STIFFNESS, "0.001 N*m/rad", "1000 N*m/rad", "stiffness of the cam spring"),
    C_C("c_c", Dimension.ANGULAR_DAMPING, "0 N*m*s/rad", "10 N*m*s/rad", "damping of the cam"),
    DELTA_0("delta_0", Dimension.ANGLE, "0.0001 rad", "0.5 rad", "angle over which the preload turns round"),
    DELTA_DIS("delta_dis", Dimension.ANGLE, "0.01 rad", "6 rad", "cam angle beyond which the hammer lifts off"),
    DELTA_MAX("delta_max", Dimension.ANGLE, "0.01 rad", "6 rad", "cam angle at the end of the groove"),
    K_G("k_g", Dimension.ANGULAR_STIFFNESS, "1 N*m/rad", "1000000 N*m/rad", "stiffness beyond the groove end"),
    C_G("c_g", Dimension.ANGULAR_DAMPING, "0 N*m*s/rad", "100 N*m*s/rad", "damping beyond the groove end"),
    J_H("J_h", Dimension.INERTIA, "1e-6 kg*m^2", "1 kg*m^2", "hammer"),
    N_L("N_l", Dimension.PURE, "1", "12", "lugs per turn, a whole number"),
    K_L("k_l", Dimension.ANGULAR_STIFFNESS, "100 N*m/rad", "10000000 N*m/rad", "stiffness of the lugs"),
    C_L("c_l", Dimension.ANGULAR_DAMPING, "0 N*m*s/rad", "1000 N*m*s/rad", "damping of the lugs"),
    J_A("J_a", Dimension.INERTIA, "1e-7 kg*m^2", "1 kg*m^2", "anvil with half the socket"),
    J_N("J_n", Dimension.INERTIA, "1e-7 kg*m^2", "1 kg*m^2", "nut with the other half"),
    K_S("k_s", Dimension.ANGULAR_STIFFNESS, "10 N*m/rad", "1000000 N*m/rad", "stiffness of socket and drive"),
    C_S("c_s", Dimension.ANGULAR_DAMPING, "0 N*m*s/rad", "100 N*m*s/rad", "damping of socket and drive"),
    J_B("J_b", Dimension.INERTIA, "0.0001 kg*m^2", "10 kg*m^2", "housing"),
    C_B("c_b", Dimension.ANGULAR_DAMPING, "0.001 N*m*s/rad", "1000 N*m*s/rad", "damping of the operator's arm"),
    K_B("k_b", Dimension.ANGULAR_STIFFNESS, "0.1 N*m/rad", "100000 N*m/rad", "stiffness of the operator's arm");

    /** Levels that a tool's number may scatter at; each tool by default. */
    static final List<Level> LEVELS = List.of(Level.TOOL, Level.REPEAT);

    private final String key;
    private final Dimension dimension;
    private final Range range;
    private final String meaning;

    ToolKey(String key, Dimension dimension, String least, String most, String meaning) {
        this.key = key;
        this.dimension = dimension;
        this.range = Range.of(dimension, least, most);
        this.meaning = meaning;
    }

    /** As written in scenario files. */
    public String key() {
        return key;
    }

    /** Its name among all draws, for example {@code tool k_s}. */
    public String title() {
        return "tool " + key;
    }

    public Dimension dimension() {
        return dimension;
    }

    public Range range() {
        return range;
    }

    /** One line for people. */
    public String meaning() {
        return meaning;
    }
}
