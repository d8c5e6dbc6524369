package org.shutoffbench.joint.preset;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shutoffbench.joint.prevailing.LockNutKind;
import org.shutoffbench.joint.prevailing.ReuseDecay;

/**
 * The state of a joint as a crew finds it: surface, nut and what disturbs the thread. Torques are shares of the highest
 * prevailing torque that the standard allows a lock nut of the size, so that one description serves every size.
 *
 * @param name as written in scenario files
 * @param surface how it rubs
 * @param lockNut kind of prevailing-torque nut; empty for a plain nut
 * @param prevailingShare prevailing torque when new, share of the standard's highest
 * @param earlierSeatings how often the nut was seated before
 * @param foulingShare constant extra torque of dirt or rust, share
 * @param coatingSharePerTurn torque that a thick coating adds with every turn, share
 * @param damageShare height of the torque that a dent asks for once per turn, share
 * @param basis where the numbers come from, or assumed
 */
public record JointPreset(
        String name,
        SurfacePreset surface,
        Optional<LockNutKind> lockNut,
        Chance prevailingShare,
        int earlierSeatings,
        Chance foulingShare,
        Chance coatingSharePerTurn,
        Chance damageShare,
        String basis) {

    /** ISO 2320 for M12: from a quarter to nine tenths of the highest. */
    private static final Chance WITHIN_STANDARD = Chance.always(0.25, 0.9);

    public static final JointPreset PLAIN = new JointPreset(
            "new plain nut",
            SurfacePreset.ZINC_FLAKE,
            Optional.empty(),
            Chance.NEVER,
            0,
            Chance.NEVER,
            Chance.NEVER,
            Chance.NEVER,
            "assumed");

    public static final JointPreset NEW_LOCK_NUT = new JointPreset(
            "new lock nut",
            SurfacePreset.ZINC_FLAKE,
            Optional.of(LockNutKind.NON_METALLIC_INSERT),
            WITHIN_STANDARD,
            0,
            Chance.NEVER,
            Chance.NEVER,
            Chance.NEVER,
            "highest torque by ISO-2320, spread below it assumed");

    public static final JointPreset REUSED_LOCK_NUT = new JointPreset(
            "reused lock nut",
            SurfacePreset.DRY_ZINC,
            Optional.of(LockNutKind.NON_METALLIC_INSERT),
            WITHIN_STANDARD,
            2,
            new Chance(0.2, 0.05, 0.2),
            Chance.NEVER,
            Chance.NEVER,
            "loss on reuse by Zimandy2013, the rest assumed");

    public static final JointPreset WEATHERED_LOCK_NUT = new JointPreset(
            "weathered lock nut",
            SurfacePreset.GALVANISED,
            Optional.of(LockNutKind.NON_METALLIC_INSERT),
            WITHIN_STANDARD,
            0,
            new Chance(0.6, 0.15, 0.65),
            Chance.NEVER,
            new Chance(0.05, 0.2, 0.8),
            "highest torque by ISO-2320, disturbances assumed");

    public static final JointPreset ALL_METAL_LOCK_NUT = new JointPreset(
            "all-metal lock nut",
            SurfacePreset.ZINC_FLAKE,
            Optional.of(LockNutKind.ALL_METAL),
            Chance.always(0.4, 1.0),
            0,
            Chance.NEVER,
            Chance.NEVER,
            Chance.NEVER,
            "highest torque by ISO-2320, spread below it assumed");

    public static final JointPreset PAINTED = new JointPreset(
            "painted thread",
            SurfacePreset.GALVANISED,
            Optional.empty(),
            Chance.NEVER,
            0,
            Chance.NEVER,
            Chance.always(0.02, 0.12),
            Chance.NEVER,
            "assumed");

    public static final JointPreset DAMAGED = new JointPreset(
            "damaged thread",
            SurfacePreset.DRY_ZINC,
            Optional.empty(),
            Chance.NEVER,
            0,
            Chance.NEVER,
            Chance.NEVER,
            Chance.always(0.3, 1.2),
            "assumed");

    public JointPreset {
        if (lockNut.isPresent() != (prevailingShare.probability() > 0)) {
            throw new IllegalArgumentException("a lock nut has prevailing torque and a plain nut has none");
        }
        if (earlierSeatings < 0) {
            throw new IllegalArgumentException("number of earlier seatings must not be negative");
        }
    }

    /** Every joint preset. */
    public static List<JointPreset> all() {
        return List.of(PLAIN, NEW_LOCK_NUT, REUSED_LOCK_NUT, WEATHERED_LOCK_NUT, ALL_METAL_LOCK_NUT, PAINTED, DAMAGED);
    }

    /** What earlier seatings have left of prevailing torque. */
    public double reuseFactor() {
        return ReuseDecay.TYPICAL.factor(earlierSeatings);
    }

    /**
     * The preset of a name.
     *
     * @throws IllegalArgumentException with the names that exist
     */
    public static JointPreset named(String name) {
        return all().stream()
                .filter(p -> p.name.equalsIgnoreCase(name.strip()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("\"" + name + "\" is no joint preset; known are "
                        + all().stream().map(JointPreset::name).collect(Collectors.joining(", "))));
    }
}
