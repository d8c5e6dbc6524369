package org.shutoffbench.harness.population;

/** A drawn joint that no one could tighten; says which, and why. */
public final class ImpossibleJointException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String family;
    private final int joint;

    public ImpossibleJointException(String family, int joint, String reason) {
        super("joint " + joint + " of family \"" + family + "\" is impossible: " + reason);
        this.family = family;
        this.joint = joint;
    }

    public String family() {
        return family;
    }

    /** Joint number within the family. */
    public int joint() {
        return joint;
    }
}
