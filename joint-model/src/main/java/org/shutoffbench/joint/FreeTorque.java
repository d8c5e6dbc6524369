package org.shutoffbench.joint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Torque that makes no clamp force, over nut angle: running torque, prevailing torque and disturbances of field joints,
 * summed into one piecewise polynomial of degree at most 2.
 *
 * <p>Zone i covers {@code [start(i), start(i + 1))}; the first starts at minus infinity and the last ends at plus
 * infinity. Its torque is {@code c0 + c1 u + c2 u^2} with {@code u = theta - origin(i)}, where the origin is the zone's
 * start (0 for the first zone).
 */
public final class FreeTorque {

    /**
     * One additive part: a polynomial in the angle since its start, 0 outside its range.
     *
     * @param fromRad where it starts, rad
     * @param toRad where it ends, rad; may be infinite if c1 = c2 = 0
     */
    public record Piece(double fromRad, double toRad, double c0Nm, double c1NmPerRad, double c2NmPerRad2) {
        public Piece {
            if (!(fromRad < toRad)) {
                throw new IllegalArgumentException("a torque piece must end after it starts");
            }
        }

        /** A constant torque from an angle onwards. */
        public static Piece constantFrom(double fromRad, double torqueNm) {
            return new Piece(fromRad, Double.POSITIVE_INFINITY, torqueNm, 0, 0);
        }
    }

    private final double[] starts;
    private final double[] origins;
    private final double[][] coefficients;

    private FreeTorque(double[] starts, double[] origins, double[][] coefficients) {
        this.starts = starts;
        this.origins = origins;
        this.coefficients = coefficients;
    }

    /** The sum of a running torque everywhere and of pieces. */
    public static FreeTorque of(double runningTorqueNm, List<Piece> pieces) {
        if (!(runningTorqueNm >= 0 && runningTorqueNm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("running torque must be finite and not negative");
        }
        double[] cuts = pieces.stream()
                .flatMapToDouble(p -> java.util.stream.DoubleStream.of(p.fromRad(), p.toRad()))
                .filter(Double::isFinite)
                .sorted()
                .distinct()
                .toArray();
        List<double[]> zones = new ArrayList<>();
        double[] starts = new double[cuts.length + 1];
        double[] origins = new double[cuts.length + 1];
        for (int i = 0; i <= cuts.length; i++) {
            starts[i] = i == 0 ? Double.NEGATIVE_INFINITY : cuts[i - 1];
            origins[i] = i == 0 ? 0 : cuts[i - 1];
            zones.add(sumAt(runningTorqueNm, pieces, starts[i], origins[i]));
        }
        return new FreeTorque(starts, origins, zones.toArray(double[][]::new));
    }

    private static double[] sumAt(double runningTorqueNm, List<Piece> pieces, double start, double origin) {
        double[] sum = {runningTorqueNm, 0, 0};
        for (Piece p : pieces) {
            if (p.fromRad() <= start && start < p.toRad()) {
                double shift = p.fromRad() == Double.NEGATIVE_INFINITY ? 0 : origin - p.fromRad();
                sum[0] += p.c0Nm() + shift * (p.c1NmPerRad() + shift * p.c2NmPerRad2());
                sum[1] += p.c1NmPerRad() + 2 * shift * p.c2NmPerRad2();
                sum[2] += p.c2NmPerRad2();
            }
        }
        return sum;
    }

    public int zoneCount() {
        return starts.length;
    }

    /** Start angle of a zone in rad; minus infinity for zone 0. */
    public double startRad(int zone) {
        return starts[zone];
    }

    /** End angle of a zone in rad; plus infinity for the last. */
    public double endRad(int zone) {
        return zone + 1 < starts.length ? starts[zone + 1] : Double.POSITIVE_INFINITY;
    }

    /** Angle from which the zone's polynomial counts, rad. */
    public double originRad(int zone) {
        return origins[zone];
    }

    /** Coefficient of order 0, 1 or 2 of a zone, N m / rad^order. */
    public double coefficient(int zone, int order) {
        return coefficients[zone][order];
    }

    /** The zone that holds a nut angle. */
    public int zoneAt(double angleRad) {
        int found = Arrays.binarySearch(starts, angleRad);
        return found >= 0 ? found : -found - 2;
    }

    /** Torque in N m at a nut angle in rad from where the tool starts. */
    public double torqueNm(double angleRad) {
        int zone = zoneAt(angleRad);
        double u = angleRad - origins[zone];
        double[] c = coefficients[zone];
        return c[0] + u * (c[1] + u * c[2]);
    }
}
