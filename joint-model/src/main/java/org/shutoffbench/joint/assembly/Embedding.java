package org.shutoffbench.joint.assembly;

/**
 * How far surfaces flatten after tightening, guide values of VDI 2230 table 5, from memory (source key {@code VDI-2230}).
 *
 * <p>Loss of clamp force F_Z = f_Z k_J.
 */
public enum Embedding {
    /** R_z below 10 um, axial load. */
    FINE_AXIAL("fine, axial load", 3, 2.5, 1.5),
    /** R_z from 10 to 40 um, axial load. */
    MEDIUM_AXIAL("medium, axial load", 3, 3, 2),
    /** R_z from 40 to 160 um, axial load. */
    COARSE_AXIAL("coarse, axial load", 3, 4, 3),
    /** R_z below 10 um, shear load. */
    FINE_SHEAR("fine, shear load", 3, 3, 2),
    /** R_z from 10 to 40 um, shear load. */
    MEDIUM_SHEAR("medium, shear load", 3, 4.5, 2.5),
    /** R_z from 40 to 160 um, shear load. */
    COARSE_SHEAR("coarse, shear load", 3, 6.5, 3.5);

    private static final int BEARING_FACES = 2;

    private final String title;
    private final double threadUm;
    private final double bearingFaceUm;
    private final double interfaceUm;

    Embedding(String title, double threadUm, double bearingFaceUm, double interfaceUm) {
        this.title = title;
        this.threadUm = threadUm;
        this.bearingFaceUm = bearingFaceUm;
        this.interfaceUm = interfaceUm;
    }

    public String title() {
        return title;
    }

    /**
     * f_Z of thread, both bearing faces and the inner interfaces, m.
     *
     * @param innerInterfaces number of faces between clamped parts; not negative
     */
    public double amountM(int innerInterfaces) {
        if (innerInterfaces < 0) {
            throw new IllegalArgumentException("number of interfaces must not be negative");
        }
        return (threadUm + BEARING_FACES * bearingFaceUm + innerInterfaces * interfaceUm) * 1e-6;
    }

    /** F_Z = f_Z k_J, N. */
    public double lossN(int innerInterfaces, double stiffnessNPerM) {
        return amountM(innerInterfaces) * stiffnessNPerM;
    }
}
