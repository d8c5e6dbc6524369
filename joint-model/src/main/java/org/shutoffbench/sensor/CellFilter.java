package org.shutoffbench.sensor;

/**
 * Low pass for a torque that changes much faster than the tool samples. Time is cut into equal cells; of the torque over a
 * cell its area and first moment are taken, piece by piece between the plant's events, and the low pass is moved on by the
 * straight line that has both. No impulse is lost, however short.
 */
final class CellFilter {

    private final LinearFilter filter;
    private final double cellS;
    private double area;
    private double moment;

    CellFilter(LowPass lowPass, double cellS) {
        filter = new LinearFilter(LinearStep.of(lowPass, cellS));
        this.cellS = cellS;
    }

    void start() {
        filter.settle(0);
        area = 0;
        moment = 0;
    }

    /**
     * Adds a piece of the present cell, known at the two points of Gauss and Legendre.
     *
     * @param widthS width of the piece
     * @param fromCentreS middle of the piece from the cell's middle
     * @param apartS distance of the points from the middle of the piece
     */
    void add(double widthS, double fromCentreS, double apartS, double earlier, double later) {
        double half = 0.5 * widthS;
        area += half * (earlier + later);
        moment += half * (fromCentreS * (earlier + later) + apartS * (later - earlier));
    }

    /** Ends the present cell and begins the next. */
    void close() {
        double mean = area / cellS;
        double halfRise = 6 * moment / (cellS * cellS);
        filter.advance(mean - halfRise, mean + halfRise);
        area = 0;
        moment = 0;
    }

    double value() {
        return filter.value();
    }

    void copyFrom(CellFilter other) {
        filter.copyFrom(other.filter);
        area = other.area;
        moment = other.moment;
    }
}
