package org.shutoffbench.sensor;

/** A linear system of first or second order in motion, stepped with a fixed step. */
final class LinearFilter {

    private LinearStep step;
    private double value;
    private double speed;

    LinearFilter(LinearStep step) {
        this.step = step;
    }

    /** At rest at a value. */
    void settle(double atValue) {
        value = atValue;
        speed = 0;
    }

    /** At rest at a value, with another step from now on. */
    void settle(double atValue, LinearStep newStep) {
        step = newStep;
        settle(atValue);
    }

    /** Moves on by one step over which the input goes in a straight line. */
    double advance(double inputFrom, double inputTo) {
        LinearStep s = step;
        double y = s.yFromY() * value + s.yFromW() * speed + s.yFromStart() * inputFrom + s.yFromEnd() * inputTo;
        speed = s.wFromY() * value + s.wFromW() * speed + s.wFromStart() * inputFrom + s.wFromEnd() * inputTo;
        value = y;
        return y;
    }

    double value() {
        return value;
    }

    void copyFrom(LinearFilter other) {
        step = other.step;
        value = other.value;
        speed = other.speed;
    }
}
