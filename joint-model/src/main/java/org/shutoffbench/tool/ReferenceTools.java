package org.shutoffbench.tool;

/**
 * Two invented tools of plain numbers (assumed: engineering choices of this project, not measurements of any tool).
 */
public final class ReferenceTools {

    /** Strikes about 4 J, 42 to 44 blows a second. */
    public static final ImpactTool LIGHT = new ImpactTool(
            new Motor(3.9e-4, 7.7, 3.4, 183, 0.05),
            new Cam(0.68, 0.58, 0.0015, 0.01, 0.77, 0.92, 3000, 1.0),
            new Hammer(1.55e-4, 2, 6e4, 1.5),
            new Socket(3e-5, 6e-5, 9000, 0.15),
            new Housing(0.02, 1.0, 60));

    /** Strikes about 12 J, 55 to 57 blows a second. */
    public static final ImpactTool HEAVY = new ImpactTool(
            new Motor(1.03e-3, 21, 10.8, 248, 0.05),
            new Cam(1.97, 1.27, 0.0041, 0.01, 0.74, 0.89, 3000, 1.0),
            new Hammer(3.1e-4, 2, 8e4, 2.0),
            new Socket(6e-5, 1e-4, 14000, 0.25),
            new Housing(0.02, 1.0, 60));

    private ReferenceTools() {}
}
