package org.shutoffbench.plant;

/**
 * The anvil ringing on a stuck nut with nothing else to touch: x'' + 2 s x' + w^2 x = 0, known for all times at once.
 *
 * <p>The state at node n is a power of the node's propagator, put together from precomputed squares; within a node four
 * short series of the free motion are summed, from unit angle and from unit speed. Plain arithmetic only, so that bits are
 * the same on every machine, and a look depends on nothing but its time.
 */
final class Ring {

    private static final int SQUARES = 14;
    private static final int LAST_NODE = (1 << SQUARES) - 1;
    private static final int DEGREE = 9;

    /** Node length times undamped rate. */
    private static final double NODE_PHASE = 0.125;

    private final double[] powers = new double[4 * SQUARES];
    private final double[] decays = new double[SQUARES];
    // angle and speed within a node from unit angle and from unit speed, in powers of the part of the node
    private final double[] angleByAngle = new double[DEGREE + 1];
    private final double[] angleBySpeed = new double[DEGREE + 1];
    private final double[] speedByAngle = new double[DEGREE + 1];
    private final double[] speedBySpeed = new double[DEGREE + 1];
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

    // the node looked at last
    private int lookNode = -1;
    private double nodePhi;
    private double nodeOmega;

    void start(double socketStiffness, double socketDamping, double inverseAnvil) {
        stiffness = socketStiffness;
        damping = socketDamping;
        rateSquared = socketStiffness * inverseAnvil;
        twoDecay = socketDamping * inverseAnvil;
        double square = rateSquared - 0.25 * twoDecay * twoDecay;
        oscillates = square > 0.01 * rateSquared;
        lookNode = -1;
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
        expand(1, 0, angleByAngle, speedByAngle);
        expand(0, 1, angleBySpeed, speedBySpeed);
        powers[0] = sum(angleByAngle, 1);
        powers[1] = sum(angleBySpeed, 1);
        powers[2] = sum(speedByAngle, 1);
        powers[3] = sum(speedBySpeed, 1);
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

    /** Series of the free motion from a state, over a node. */
    private void expand(double fromPhi, double fromOmega, double[] angle, double[] speed) {
        angle[0] = fromPhi;
        speed[0] = fromOmega;
        for (int k = 1; k <= DEGREE; k++) {
            double r = nodeS * Series.RECIPROCAL[k];
            angle[k] = r * speed[k - 1];
            speed[k] = -r * (rateSquared * angle[k - 1] + twoDecay * speed[k - 1]);
        }
    }

    private static double sum(double[] c, double t) {
        double t2 = t * t;
        double t4 = t2 * t2;
        double a0 = Math.fma(c[1], t, c[0]);
        double a1 = Math.fma(c[3], t, c[2]);
        double a2 = Math.fma(c[5], t, c[4]);
        double a3 = Math.fma(c[7], t, c[6]);
        double a4 = Math.fma(c[9], t, c[8]);
        double low = Math.fma(Math.fma(a3, t2, a2), t4, Math.fma(a1, t2, a0));
        return Math.fma(a4, t4 * t4, low);
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
        lookNode = -1;
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

    /** Looks up the node before a time and returns the part of the node passed by then. */
    private double look(double timeS) {
        int node = node(timeS);
        if (node != lookNode) {
            lookNode = node;
            double x = phi0;
            double v = omega0;
            for (int rest = node; rest != 0; rest &= rest - 1) {
                int at = 4 * Integer.numberOfTrailingZeros(rest);
                double nextX = powers[at] * x + powers[at + 1] * v;
                v = powers[at + 2] * x + powers[at + 3] * v;
                x = nextX;
            }
            nodePhi = x;
            nodeOmega = v;
        }
        return (timeS - baseS - node * nodeS) * perNode;
    }

    private double phi(double part) {
        return nodePhi * sum(angleByAngle, part) + nodeOmega * sum(angleBySpeed, part);
    }

    private double omega(double part) {
        return nodePhi * sum(speedByAngle, part) + nodeOmega * sum(speedBySpeed, part);
    }

    double twist(double timeS) {
        return phi(look(timeS));
    }

    double speed(double timeS) {
        return omega(look(timeS));
    }

    double torque(double timeS) {
        double part = look(timeS);
        return stiffness * phi(part) + damping * omega(part);
    }

    void copyFrom(Ring other) {
        System.arraycopy(other.powers, 0, powers, 0, powers.length);
        System.arraycopy(other.decays, 0, decays, 0, decays.length);
        System.arraycopy(other.angleByAngle, 0, angleByAngle, 0, angleByAngle.length);
        System.arraycopy(other.angleBySpeed, 0, angleBySpeed, 0, angleBySpeed.length);
        System.arraycopy(other.speedByAngle, 0, speedByAngle, 0, speedByAngle.length);
        System.arraycopy(other.speedBySpeed, 0, speedBySpeed, 0, speedBySpeed.length);
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
        lookNode = -1;
    }
}
