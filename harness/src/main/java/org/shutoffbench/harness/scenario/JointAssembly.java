package org.shutoffbench.harness.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.joint.Galling;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.joint.JointSpecification;
import org.shutoffbench.joint.Resistance;
import org.shutoffbench.joint.TorqueTension;
import org.shutoffbench.joint.YieldLimit;
import org.shutoffbench.joint.Yielding;
import org.shutoffbench.joint.assembly.BoltedAssembly;
import org.shutoffbench.joint.friction.Retightening;
import org.shutoffbench.joint.prevailing.ReuseDecay;
import org.shutoffbench.joint.strength.PropertyClass;
import org.shutoffbench.joint.thread.ScrewThread;

/** Puts a joint together from the numbers drawn for it. */
public final class JointAssembly {

    private static final double TURN_RAD = 2 * Math.PI;

    private final JointFamily family;
    private final Map<JointKey, Double> drawn;
    private final int repeat;
    private final double snugRad;

    /**
     * A joint of a family.
     *
     * @param drawn a value in SI for every number of the family
     * @param repeat how often this piece was tightened before
     */
    public JointAssembly(JointFamily family, Map<JointKey, Double> drawn, int repeat) {
        this.family = family;
        this.drawn = drawn;
        this.repeat = repeat;
        this.snugRad = value(JointKey.TURNS_TO_SNUG) * TURN_RAD;
    }

    /** The number by which a part is there or not. */
    public static JointKey size(Part part) {
        return switch (part) {
            case PREVAILING -> JointKey.PREVAILING_TORQUE;
            case FOULING -> JointKey.FOULING_TORQUE;
            case COATING -> JointKey.COATING_TORQUE;
            case DAMAGED_THREAD -> JointKey.DAMAGE_TORQUE;
            case GALLING -> JointKey.GALLING_FACTOR;
        };
    }

    /** The value of that number where the part is not there. */
    public static double absent(Part part) {
        return part == Part.GALLING ? 1 : 0;
    }

    /**
     * The law of the joint.
     *
     * @throws IllegalArgumentException with the reason, where no such joint can be tightened
     */
    public JointLaw law() {
        JointLaw law = specification().law();
        return family.yieldRule() == YieldRule.OFF ? law : withYielding(law);
    }

    /** Torque per clamp force before any galling. */
    TorqueTension torqueTension() {
        return specification().torqueTension();
    }

    /** The joint in plain numbers. */
    public JointSpecification specification() {
        BoltedAssembly parts = parts();
        double bearingDiameter =
                parts == null || drawn.containsKey(JointKey.D_B) ? value(JointKey.D_B) : parts.bearingDiameterM();
        double again = retightening().factor(repeat);
        double threadFriction = threadFriction(bearingDiameter);
        return new JointSpecification(
                family.thread().screw(),
                bearingDiameter,
                threadFriction * again,
                bearingFriction(threadFriction) * again,
                stiffness(parts),
                value(JointKey.SEATING),
                snugRad,
                value(JointKey.RUNNING_TORQUE),
                value(JointKey.STATIC_RATIO),
                yieldLimit(),
                resistances(),
                galling());
    }

    private JointLaw withYielding(JointLaw law) {
        Yielding yielding =
                new Yielding(law.yielding().yieldForceN(), value(JointKey.YIELD_SLOPE), value(JointKey.YIELD_FRACTURE));
        return new JointLaw(
                law.torqueTension(), law.clamp(), law.freeTorque(), law.staticRatio(), yielding, law.galling());
    }

    /** Bolt, nut and layers; null where the family gives its stiffness instead. */
    public @Nullable BoltedAssembly parts() {
        Assembly assembly = family.assembly();
        PropertyClass propertyClass = family.propertyClass();
        return assembly == null || propertyClass == null
                ? null
                : assembly.build(family.thread().screw(), propertyClass, drawn.getOrDefault(JointKey.GRIP, Double.NaN));
    }

    private double stiffness(@Nullable BoltedAssembly parts) {
        return parts == null
                ? value(JointKey.STIFFNESS)
                : parts.stiffness().seriesNPerM() * drawn.getOrDefault(JointKey.STIFFNESS_OVER_COMPUTED, 1.0);
    }

    private Retightening retightening() {
        return new Retightening(value(JointKey.RETIGHTENING_FACTOR), value(JointKey.RETIGHTENING_LIMIT));
    }

    private double threadFriction(double bearingDiameter) {
        return drawn.containsKey(JointKey.NUT_FACTOR) ? frictionForNutFactor(bearingDiameter) : value(JointKey.MU_TH);
    }

    private double bearingFriction(double threadFriction) {
        if (drawn.containsKey(JointKey.NUT_FACTOR)) {
            return threadFriction;
        }
        return drawn.containsKey(JointKey.MU_B_OVER_MU_TH)
                ? threadFriction * value(JointKey.MU_B_OVER_MU_TH)
                : value(JointKey.MU_B);
    }

    /** The one friction coefficient of thread and bearing face that gives the nut factor: kappa_on = K d. */
    private double frictionForNutFactor(double bearingDiameter) {
        ScrewThread screw = family.thread().screw();
        TorqueTension unit = TorqueTension.of(screw.pitchM(), screw.pitchDiameterM(), bearingDiameter, 1, 1);
        double frictionLever = value(JointKey.NUT_FACTOR) * screw.majorDiameterM() - unit.helixLeverM();
        if (!(frictionLever > 0)) {
            throw new IllegalArgumentException("a nut factor of " + value(JointKey.NUT_FACTOR)
                    + " leaves nothing for friction: the helix alone makes more");
        }
        return frictionLever / (unit.threadLeverM() + unit.bearingLeverM());
    }

    private YieldLimit yieldLimit() {
        PropertyClass propertyClass = family.propertyClass();
        return switch (family.yieldRule()) {
            case OFF -> YieldLimit.OFF;
            case AT_FORCE -> new YieldLimit.AtForce(value(JointKey.YIELD_FORCE));
            case BY_CLASS ->
                propertyClass == null
                        ? YieldLimit.OFF
                        : new YieldLimit.OfMaterial(
                                propertyClass.strength(family.thread().screw()).yieldPa());
        };
    }

    private List<Resistance> resistances() {
        List<Resistance> resistances = new ArrayList<>();
        if (has(Part.PREVAILING)) {
            resistances.add(new Resistance.LockingElement(
                    prevailingTorqueNm(), lockingBegin(), value(JointKey.PREVAILING_RAMP)));
        }
        if (has(Part.FOULING)) {
            resistances.add(new Resistance.Fouling(value(JointKey.FOULING_TORQUE), Resistance.Begin.AT_START));
        }
        if (has(Part.COATING)) {
            resistances.add(Resistance.ThickCoating.growing(value(JointKey.COATING_TORQUE) * TURN_RAD));
        }
        if (has(Part.DAMAGED_THREAD)) {
            resistances.add(new Resistance.ThreadDamage(
                    value(JointKey.DAMAGE_TORQUE),
                    value(JointKey.DAMAGE_WIDTH),
                    Resistance.Begin.fromStart(value(JointKey.DAMAGE_FROM)),
                    family.damageEveryTurn()));
        }
        return resistances;
    }

    /** Full prevailing torque, less what earlier seatings took; 0 where the joint has none. N m. */
    public double prevailingTorqueNm() {
        if (!has(Part.PREVAILING)) {
            return 0;
        }
        ReuseDecay decay = new ReuseDecay(value(JointKey.PREVAILING_FIRST_LOSS), value(JointKey.PREVAILING_LATER_LOSS));
        return value(JointKey.PREVAILING_TORQUE)
                * decay.factor(repeat + (int) Math.rint(value(JointKey.PREVAILING_EARLIER)));
    }

    private Resistance.Begin lockingBegin() {
        if (drawn.containsKey(JointKey.PREVAILING_FROM)) {
            return Resistance.Begin.fromStart(value(JointKey.PREVAILING_FROM));
        }
        double beforeSnug = value(JointKey.PREVAILING_BEFORE_SNUG);
        if (beforeSnug > snugRad) {
            throw new IllegalArgumentException(
                    "the locking element would begin before the start: before_snug exceeds turns_to_snug");
        }
        return Resistance.Begin.beforeSnug(beforeSnug);
    }

    private Galling galling() {
        if (!has(Part.GALLING)) {
            return Galling.NONE;
        }
        double from = drawn.containsKey(JointKey.GALLING_FROM)
                ? value(JointKey.GALLING_FROM)
                : snugRad + value(JointKey.GALLING_PAST_SNUG);
        return new Galling(from, value(JointKey.GALLING_FACTOR));
    }

    private boolean has(Part part) {
        return drawn.containsKey(size(part)) && value(size(part)) != absent(part);
    }

    private double value(JointKey key) {
        Double value = drawn.get(key);
        if (value == null) {
            throw new IllegalStateException("this joint has no " + key.title());
        }
        return value;
    }
}
