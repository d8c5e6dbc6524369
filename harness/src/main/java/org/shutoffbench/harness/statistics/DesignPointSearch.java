package org.shutoffbench.harness.statistics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * The design point: the failing point nearest to the origin of standard-normal space (source: Ditlevsen1996), for limit
 * states that may jump.
 *
 * <p>Starts from failures along every axis, in random directions and from points handed in; improves each by shrinking it
 * along its ray, setting coordinates to 0 where it still fails, stepping along the gradient and by a random local search.
 * Then random probes inside the radius: a failing one becomes a new start, until as many as asked for find none.
 */
public final class DesignPointSearch {

    private static final double REACH = 8;
    private static final int DIRECTIONS = 64;
    private static final int BISECTIONS = 24;
    private static final int LOCAL_STEPS = 40;
    private static final int LOCAL_BATCH = 20;
    private static final int MOST_IMPROVED = 4;
    private static final int PROBE_BATCH = 1000;
    private static final double SLOPE_STEP = 1e-3;

    private final LimitState limitState;
    private final int dimension;
    private final long noiseKey;
    private final RandomGenerator random;
    private final Gaussians gaussians;
    private long evaluations;

    /**
     * A search with all noise held at one key.
     *
     * @param noiseKey key of the noise at every point tried
     */
    public DesignPointSearch(LimitState limitState, int dimension, long noiseKey, RandomGenerator random) {
        this.limitState = limitState;
        this.dimension = dimension;
        this.noiseKey = noiseKey;
        this.random = random;
        this.gaussians = new Gaussians(random);
    }

    /**
     * What was found.
     *
     * @param point nearest failing point
     * @param beta its distance from the origin
     * @param probability Phi(-beta)
     * @param probes random probes inside the radius of which none failed
     * @param evaluations of the limit state in all
     */
    public record Result(NormalPoint point, double beta, double probability, int probes, long evaluations) {}

    /**
     * Searches.
     *
     * @param starts points to start from besides the search's own, such as failures of a subset simulation; may be empty
     * @param probes random probes inside the radius that must all hold
     * @return null where no failing point was found within 8 standard deviations
     */
    public @Nullable Result search(List<NormalPoint> starts, int probes) {
        NormalPoint origin = NormalPoint.origin(dimension, noiseKey);
        if (fails(origin)) {
            return new Result(origin, 0, 0.5, 0, evaluations);
        }
        NormalPoint best = nearest(failures(starts));
        if (best == null) {
            return null;
        }
        best = improved(best);
        NormalPoint nearer = failingProbe(best, probes);
        while (nearer != null) {
            best = improved(nearer);
            nearer = failingProbe(best, probes);
        }
        return new Result(best, best.norm(), StandardNormal.survival(best.norm()), probes, evaluations);
    }

    /** The boundary along every start's ray, the nearest few improved. */
    private List<NormalPoint> failures(List<NormalPoint> given) {
        List<NormalPoint> rays = new ArrayList<>();
        for (int i = 0; i < dimension; i++) {
            rays.add(NormalPoint.origin(dimension, noiseKey).with(i, 1));
            rays.add(NormalPoint.origin(dimension, noiseKey).with(i, -1));
        }
        for (int i = 0; i < DIRECTIONS; i++) {
            NormalPoint direction = gaussians.nextPoint(dimension).withNoise(noiseKey);
            rays.add(direction.scaled(1 / direction.norm()));
        }
        List<NormalPoint> tried = new ArrayList<>();
        for (NormalPoint ray : rays) {
            for (double radius = 0.5; radius <= REACH; radius += 0.5) {
                tried.add(ray.scaled(radius));
            }
        }
        given.forEach(point -> tried.add(point.withNoise(noiseKey)));
        double[] margins = margins(tried);
        List<NormalPoint> failing = new ArrayList<>();
        for (int i = 0; i < margins.length; i++) {
            if (margins[i] <= 0) {
                failing.add(tried.get(i));
            }
        }
        failing.sort(Comparator.comparingDouble(NormalPoint::squaredNorm));
        return failing.subList(0, Math.min(MOST_IMPROVED, failing.size())).stream()
                .map(this::improved)
                .toList();
    }

    private static @Nullable NormalPoint nearest(List<NormalPoint> points) {
        return points.stream()
                .min(Comparator.comparingDouble(NormalPoint::squaredNorm))
                .orElse(null);
    }

    /**
     * A failing point moved as near to the origin as can be done from there: quicker than a search, and blind to other
     * failure regions.
     */
    public Result nearerFrom(NormalPoint failing) {
        NormalPoint point = improved(failing.withNoise(noiseKey));
        return new Result(point, point.norm(), StandardNormal.survival(point.norm()), 0, evaluations);
    }

    private NormalPoint improved(NormalPoint start) {
        NormalPoint point = start;
        double before;
        do {
            before = point.norm();
            point = shrunkAlongRay(point);
            point = withFewestChanges(point);
            point = alongGradient(point);
            point = locally(point);
        } while (point.norm() < before * (1 - 1e-4));
        return withFewestChanges(point);
    }

    /** Bisects between the origin, which holds, and a failing point. */
    private NormalPoint shrunkAlongRay(NormalPoint failing) {
        double holds = 0;
        double fails = 1;
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = (holds + fails) / 2;
            if (fails(failing.scaled(middle))) {
                fails = middle;
            } else {
                holds = middle;
            }
        }
        return failing.scaled(fails);
    }

    /** Sets coordinates to 0, least ones first, as long as it still fails; shrinks the rest one by one. */
    private NormalPoint withFewestChanges(NormalPoint failing) {
        NormalPoint point = failing;
        for (int i : coordinatesAscending(failing)) {
            if (point.coordinate(i) != 0 && fails(point.with(i, 0))) {
                point = point.with(i, 0);
            }
        }
        for (int i : coordinatesAscending(point)) {
            double holds = 0;
            double fails = 1;
            double coordinate = point.coordinate(i);
            for (int step = 0; coordinate != 0 && step < BISECTIONS; step++) {
                double middle = (holds + fails) / 2;
                if (fails(point.with(i, middle * coordinate))) {
                    fails = middle;
                } else {
                    holds = middle;
                }
            }
            point = point.with(i, fails * coordinate);
        }
        return point;
    }

    private static List<Integer> coordinatesAscending(NormalPoint point) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < point.dimension(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble(i -> Math.abs(point.coordinate(i))));
        return order;
    }

    /** Steps of Hasofer, Lind, Rackwitz and Fiessler as long as they lead to a nearer failing point. */
    private NormalPoint alongGradient(NormalPoint start) {
        NormalPoint best = start;
        for (int i = 0; i < 20; i++) {
            NormalPoint projected = projected(best);
            NormalPoint boundary = projected == null ? null : boundaryBeyond(projected);
            if (boundary == null || boundary.norm() >= best.norm() * (1 - 1e-6)) {
                return best;
            }
            best = boundary;
        }
        return best;
    }

    private @Nullable NormalPoint projected(NormalPoint at) {
        List<NormalPoint> points = new ArrayList<>(List.of(at));
        for (int i = 0; i < dimension; i++) {
            points.add(at.with(i, at.coordinate(i) + SLOPE_STEP));
        }
        double[] margins = margins(points);
        double[] slope = new double[dimension];
        double squared = 0;
        double along = -margins[0];
        for (int i = 0; i < dimension; i++) {
            slope[i] = (margins[i + 1] - margins[0]) / SLOPE_STEP;
            squared += slope[i] * slope[i];
            along += slope[i] * at.coordinate(i);
        }
        if (!(squared > 0) || !Double.isFinite(squared) || !Double.isFinite(along)) {
            return null;
        }
        double factor = along / squared;
        for (int i = 0; i < dimension; i++) {
            slope[i] *= factor;
        }
        return NormalPoint.of(slope, noiseKey);
    }

    /** The failing point nearest beyond a guess on its ray, shrunk to the boundary. */
    private @Nullable NormalPoint boundaryBeyond(NormalPoint guess) {
        for (double factor : new double[] {1, 1.01, 1.05, 1.2}) {
            NormalPoint tried = guess.scaled(factor);
            if (tried.norm() <= REACH && fails(tried)) {
                return shrunkAlongRay(tried);
            }
        }
        return null;
    }

    /** Random steps towards the origin, their size adapted to success. */
    private NormalPoint locally(NormalPoint start) {
        NormalPoint best = start;
        double size = 0.3;
        for (int step = 0; step < LOCAL_STEPS && size > 1e-3; step++) {
            List<NormalPoint> tried = new ArrayList<>();
            for (int i = 0; i < LOCAL_BATCH; i++) {
                tried.add(stepInward(best, size));
            }
            double[] margins = margins(tried);
            NormalPoint found = null;
            for (int i = 0; i < margins.length; i++) {
                boolean nearer = tried.get(i).squaredNorm() < (found == null ? best : found).squaredNorm();
                found = margins[i] <= 0 && nearer ? tried.get(i) : found;
            }
            size *= found == null ? 0.7 : 1.3;
            best = found == null ? best : found;
        }
        return best;
    }

    private NormalPoint stepInward(NormalPoint from, double size) {
        double root = size / Math.sqrt(dimension);
        double[] moved = from.coordinates();
        for (int i = 0; i < dimension; i++) {
            moved[i] += root * gaussians.next();
        }
        NormalPoint stepped = NormalPoint.of(moved, noiseKey);
        double wanted = from.norm() * (1 - 0.1 * size * random.nextDouble());
        return stepped.norm() > wanted ? stepped.scaled(wanted / stepped.norm()) : stepped;
    }

    /** A failing point among uniform probes inside the radius, or null. */
    private @Nullable NormalPoint failingProbe(NormalPoint best, int probes) {
        for (int done = 0; done < probes; done += PROBE_BATCH) {
            List<NormalPoint> tried = new ArrayList<>();
            for (int i = 0; i < Math.min(PROBE_BATCH, probes - done); i++) {
                NormalPoint direction = gaussians.nextPoint(dimension).withNoise(noiseKey);
                double radius = best.norm() * Math.pow(random.nextDouble(), 1.0 / dimension) * (1 - 1e-9);
                tried.add(direction.scaled(radius / direction.norm()));
            }
            double[] margins = margins(tried);
            List<NormalPoint> failing = new ArrayList<>();
            for (int i = 0; i < margins.length; i++) {
                if (margins[i] <= 0) {
                    failing.add(tried.get(i));
                }
            }
            if (!failing.isEmpty()) {
                return nearest(failing);
            }
        }
        return null;
    }

    private boolean fails(NormalPoint point) {
        return margins(List.of(point))[0] <= 0;
    }

    private double[] margins(List<NormalPoint> points) {
        evaluations += points.size();
        return limitState.margins(points);
    }
}
