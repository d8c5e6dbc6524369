package org.shutoffbench.joint.preset;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shutoffbench.joint.friction.FrictionClass;
import org.shutoffbench.joint.friction.FrictionScatter;
import org.shutoffbench.joint.friction.Retightening;
import org.shutoffbench.joint.friction.Scatter;

/**
 * How a pair of surfaces rubs.
 *
 * @param name as written in scenario files
 * @param friction coefficients of thread and bearing face and their scatter
 * @param staticRatio breakaway torque over moving torque
 * @param galling how often thread friction jumps, and by which factor
 * @param basis where the numbers come from, or assumed
 */
public record SurfacePreset(String name, FrictionScatter friction, Chance staticRatio, Chance galling, String basis) {

    private static final Chance USUAL_STATIC_RATIO = Chance.always(1.0, 1.15);

    /** Friction grows as zinc wears; the direction is published, the factor assumed. */
    private static final Retightening ZINC_WEARS = new Retightening(1.08, 1.6);

    /** Paste and wax are pressed out (assumed). */
    private static final Retightening LUBRICANT_LEAVES = new Retightening(1.04, 1.3);

    /**
     * Fitted to 20 preloads of dry 12 mm bolts at one torque: mean 34.3 kN and CV 14.3 % under a perfect torque stop of 90
     * N m on M12x1.25. One test, so all of it between pieces.
     */
    public static final SurfacePreset DRY_STEEL = new SurfacePreset(
            "dry steel",
            new FrictionScatter(new Scatter(0.1752, 0, 0.149, 0), ratio(0.08), Retightening.NONE),
            USUAL_STATIC_RATIO,
            Chance.NEVER,
            "BlakeKurtz1965 through Shigley2011, fitted");

    public static final SurfacePreset DRY_ZINC = new SurfacePreset(
            "dry zinc",
            new FrictionScatter(new Scatter(0.17, 0.10, 0.07, 0.03), ratio(0.08), ZINC_WEARS),
            USUAL_STATIC_RATIO,
            Chance.NEVER,
            "class C of VDI-2230, median and scatter assumed; change on re-tightening after Eccles2010, factor assumed");

    public static final SurfacePreset LUBRICATED = new SurfacePreset(
            "lubricated",
            new FrictionScatter(new Scatter(0.11, 0.06, 0.05, 0.02), ratio(0.06), LUBRICANT_LEAVES),
            USUAL_STATIC_RATIO,
            Chance.NEVER,
            "middle of class B of VDI-2230, scatter assumed");

    public static final SurfacePreset ZINC_FLAKE = new SurfacePreset(
            "sealed zinc flake",
            new FrictionScatter(new Scatter(0.13, 0.08, 0.06, 0.02), ratio(0.06), Retightening.NONE),
            USUAL_STATIC_RATIO,
            Chance.NEVER,
            "class B of VDI-2230, median and scatter assumed");

    public static final SurfacePreset GALVANISED = new SurfacePreset(
            "hot-dip galvanised",
            new FrictionScatter(new Scatter(0.19, 0.12, 0.10, 0.04), ratio(0.10), ZINC_WEARS),
            Chance.always(1.0, 1.25),
            Chance.NEVER,
            "class C of VDI-2230, scatter assumed");

    public static final SurfacePreset GALVANISED_WAXED = new SurfacePreset(
            "galvanised and waxed",
            new FrictionScatter(new Scatter(0.12, 0.08, 0.07, 0.03), ratio(0.08), LUBRICANT_LEAVES),
            USUAL_STATIC_RATIO,
            Chance.NEVER,
            "class B of VDI-2230, scatter assumed");

    public static final SurfacePreset STAINLESS = new SurfacePreset(
            "dry stainless",
            new FrictionScatter(new Scatter(0.26, 0.10, 0.12, 0.06), ratio(0.12), new Retightening(1.15, 1.8)),
            Chance.always(1.0, 1.3),
            new Chance(0.05, 1.5, 3),
            "class D of VDI-2230, scatter, galling and re-tightening assumed");

    public static final SurfacePreset STAINLESS_PASTE = new SurfacePreset(
            "stainless with paste",
            new FrictionScatter(new Scatter(0.12, 0.08, 0.08, 0.03), ratio(0.08), LUBRICANT_LEAVES),
            USUAL_STATIC_RATIO,
            Chance.NEVER,
            "class B of VDI-2230, scatter assumed");

    /** Every surface preset, the friction classes last. */
    public static List<SurfacePreset> all() {
        Stream<SurfacePreset> named = Stream.of(
                DRY_STEEL, DRY_ZINC, LUBRICATED, ZINC_FLAKE, GALVANISED, GALVANISED_WAXED, STAINLESS, STAINLESS_PASTE);
        return Stream.concat(named, Arrays.stream(FrictionClass.values()).map(SurfacePreset::of))
                .toList();
    }

    /** A friction class as a preset, named such as "class B". */
    public static SurfacePreset of(FrictionClass frictionClass) {
        return new SurfacePreset(
                "class " + frictionClass.name(),
                frictionClass.scatter(),
                USUAL_STATIC_RATIO,
                Chance.NEVER,
                "range of VDI-2230, distribution assumed");
    }

    /**
     * The preset of a name.
     *
     * @throws IllegalArgumentException with the names that exist
     */
    public static SurfacePreset named(String name) {
        List<String> known = new ArrayList<>();
        for (SurfacePreset preset : all()) {
            if (preset.name.equalsIgnoreCase(name.strip())) {
                return preset;
            }
            known.add(preset.name);
        }
        throw new IllegalArgumentException(
                "\"" + name + "\" is no surface; known are " + known.stream().collect(Collectors.joining(", ")));
    }

    private static Scatter ratio(double pieceCv) {
        return new Scatter(1, 0, pieceCv, 0);
    }
}
