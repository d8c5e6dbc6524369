package org.shutoffbench.joint.thread;

/**
 * The dimensions of a hexagon bolt, its nut and its clearance hole that a joint calculation needs.
 *
 * @param acrossFlatsM width across flats, m
 * @param bearingFaceM d_w, outer diameter of the bearing face, m
 * @param clearanceHoleM d_h, diameter of the medium (normal) clearance hole, m
 * @param headHeightM height of the head, m
 * @param nutHeightM height of a regular nut, m
 */
public record HexDimensions(
        double acrossFlatsM, double bearingFaceM, double clearanceHoleM, double headHeightM, double nutHeightM) {

    /** D_Km = (d_w + d_h)/2, the effective bearing diameter of a plain face, m. Source key {@code VDI-2230}. */
    public double meanBearingDiameterM() {
        return (bearingFaceM + clearanceHoleM) / 2;
    }
}
