package org.shutoffbench.plant;

/**
 * The anvil ringing on a stuck nut with nothing else to touch: x'' + 2 s x' + w^2 x = 0, known for all times at once.
 *
 * <p>The state at node n is a power of the node's propagator, put together from precomputed squares; within a node a short
 * series is summed. Plain arithmetic only, so that bits are the same on every machine.
 */
final class Ring {

    private static final int SQUARES = 14;
    private static final int LAST_NODE = (1 << SQUARES) - 1;
    private static final int TERMS = 9;

    /** Node length times undamped rate. */
    private static final double NODE_PHASE = 0.125;

    private final double[] powers = new double[4 * SQUARES];
    private final double[] decays = new double[SQUARES];
    private double stiffness;
    private double damping;
    private double rateSquared;
    private double twoDecay;
    private double perDampedRate;
    private double torquePerSwing;
    private double nodeS;
    private double perNode;
    private boolean oscillates;

    private double baseS;
    private double phi0;
    private double omega0;
    private double swing0;

    // the last look
    private double lookS = Double.NaN;
    private double phi;
    private double omega;

    void start(double socketStiffness, double socketDamping, double inverseAnvil) {
        stiffness = socketStiffness;
        damping = socketDamping;
        rateSquared = socketStiffness * inverseAnvil;
        twoDecay = socketDamping * inverseAnvil;
        double square = rateSquared - 0.25 * twoDecay * twoDecay;
        oscillates = square > 0.01 * rateSquared;
        lookS = Double.NaN;
        if (!oscillates) {
            return;
        }
        double dampedRate = Math.sqrt(square);
        perDampedRate = 1 / dampedRate;
        double real = stiffness - 0.5 * damping * twoDecay;
        double imaginary = damping * dampedRate;
        torquePerSwing = Math.sqrt(real * real + imaginary * imaginary);
        nodeS = NODE_PHASE / Math.sqrt(rateSquared);
        perNode = 1 / nodeS;
        sum(1, 0, nodeS);
        powers[0] = phi;
        powers[2] = omega;
        sum(0, 1, nodeS);
        powers[1] = phi;
        powers[3] = omega;
        decays[0] = Math.sqrt(powers[0] * powers[3] - powers[1] * powers[2]);
        for (int j = 1; j < SQUARES; j++) {
            square(4 * (j - 1), 4 * j);
            decays[j] = decays[j - 1] * decays[j - 1];
        }
    }

    private void square(int from, int to) {
        double a = powers[from];
        double b = powers[from + 1];
        double c = powers[from + 2];
        double d = powers[from + 3];
        powers[to] = a * a + b * c;
        powers[to + 1] = b * (a + d);
        powers[to + 2] = c * (a + d);
        powers[to + 3] = d * d + b * c;
    }

    /** Sums the series of the free motion from a state over a short time. */
    private void sum(double fromPhi, double fromOmega, double tau) {
        double x = fromPhi;
        double v = fromOmega;
        double sumX = x;
        double sumV = v;
        for (int k = 1; k <= TERMS; k++) {
            double r = tau * Series.RECIPROCAL[k];
            double nextX = r * v;
            v = -r * (rateSquared * x + twoDecay * v);
            x = nextX;
            sumX += x;
            sumV += v;
        }
        phi = sumX;
        omega = sumV;
    }

    /** Largest angle that a state can still swing to. */
    double swing(double angle, double speed) {
        double quadrature = (speed + 0.5 * twoDecay * angle) * perDampedRate;
        return Math.sqrt(angle * angle + quadrature * quadrature);
    }

    boolean oscillates() {
        return oscillates;
    }

    /** The socket torque of such a swing stays below a limit. */
    boolean staysBelow(double limit, double angle, double speed) {
        return oscillates && torquePerSwing * swing(angle, speed) < limit;
    }

    void begin(double timeS, double angle, double speed) {
        baseS = timeS;
        phi0 = angle;
        omega0 = speed;
        swing0 = swing(angle, speed);
        lookS = Double.NaN;
    }

    /** When the swing has fallen to a limit, or as far as the powers reach. */
    double fallenS(double limit) {
        int node = 0;
        double swing = swing0;
        for (int j = SQUARES - 1; j >= 0; j--) {
            if (swing * decays[j] > limit) {
                swing *= decays[j];
                node += 1 << j;
            }
        }
        return baseS + Math.min(node + 1, LAST_NODE) * nodeS;
    }

    /** Bound on the swing from a time on. */
    double swingFrom(double timeS) {
        double swing = swing0;
        int node = node(timeS);
        for (int j = 0; j < SQUARES; j++) {
            if ((node & (1 << j)) != 0) {
                swing *= decays[j];
            }
        }
        return swing;
    }

    private int node(double timeS) {
        return Math.min(LAST_NODE, (int) ((timeS - baseS) * perNode));
    }

    private void look(double timeS) {
        if (timeS == lookS) {
            return;
        }
        lookS = timeS;
        int node = node(timeS);
        double x = phi0;
        double v = omega0;
        for (int rest = node; rest != 0; rest &= rest - 1) {
            int at = 4 * Integer.numberOfTrailingZeros(rest);
            double nextX = powers[at] * x + powers[at + 1] * v;
            v = powers[at + 2] * x + powers[at + 3] * v;
            x = nextX;
        }
        sum(x, v, timeS - baseS - node * nodeS);
    }

    double twist(double timeS) {
        look(timeS);
        return phi;
    }

    double speed(double timeS) {
        look(timeS);
        return omega;
    }

    double torque(double timeS) {
        look(timeS);
        return stiffness * phi + damping * omega;
    }

    void copyFrom(Ring other) {
        System.arraycopy(other.powers, 0, powers, 0, powers.length);
        System.arraycopy(other.decays, 0, decays, 0, decays.length);
        stiffness = other.stiffness;
        damping = other.damping;
        rateSquared = other.rateSquared;
        twoDecay = other.twoDecay;
        perDampedRate = other.perDampedRate;
        torquePerSwing = other.torquePerSwing;
        nodeS = other.nodeS;
        perNode = other.perNode;
        oscillates = other.oscillates;
        baseS = other.baseS;
        phi0 = other.phi0;
        omega0 = other.omega0;
        swing0 = other.swing0;
        lookS = Double.NaN;
    }
}
