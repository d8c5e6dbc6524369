package org.shutoffbench.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.shutoffbench.joint.thread.CustomaryUnits;
import org.shutoffbench.joint.thread.MetricSize;
import org.shutoffbench.joint.thread.ScrewThread;
import org.shutoffbench.joint.thread.ThreadForm;

class JointPropertyTest {

    private static final double LITTLE_RAD = 1e-7;

    @Property
    void torqueGrowsWithEveryFrictionCoefficient(
            @ForAll TorqueFormula formula,
            @ForAll MetricSize size,
            @ForAll @DoubleRange(min = 0.02, max = 0.4) double thread,
            @ForAll @DoubleRange(min = 0.02, max = 0.4) double bearing,
            @ForAll @Scale(4) @DoubleRange(min = 1e-4, max = 0.1) double more) {
        ScrewThread screw = size.coarse();
        double diameter = size.hexagon().meanBearingDiameterM();
        double torque = formula.kappaOnM(screw, diameter, thread, bearing);
        assertThat(formula.kappaOnM(screw, diameter, thread + more, bearing)).isGreaterThan(torque);
        assertThat(formula.kappaOnM(screw, diameter, thread, bearing + more)).isGreaterThan(torque);
    }

    @Property
    void looseningTakesLessTorqueThanTightening(
            @ForAll TorqueFormula formula,
            @ForAll MetricSize size,
            @ForAll @DoubleRange(min = 0.02, max = 0.4) double thread,
            @ForAll @DoubleRange(min = 0.02, max = 0.4) double bearing) {
        double diameter = size.hexagon().meanBearingDiameterM();
        assertThat(formula.kappaOffM(size.coarse(), diameter, thread, bearing))
                .isLessThan(formula.kappaOnM(size.coarse(), diameter, thread, bearing));
    }

    /** The same torque wrench reading in N m or lbf ft, on sizes in m or in, makes the same clamp force. */
    @Property
    void clampForceDoesNotDependOnTheUnitSystem(
            @ForAll("specifications") JointSpecification joint,
            @ForAll @DoubleRange(min = 5, max = 500) double torqueNm) {
        double inch = CustomaryUnits.INCH_M;
        double forceSi = torqueNm / joint.torqueTension().kappaOnM();
        ScrewThread inches = new ScrewThread(
                "in inches",
                ThreadForm.METRIC,
                joint.thread().majorDiameterM() / inch,
                joint.thread().pitchM() / inch);
        TorqueTension leversInches = TorqueTension.of(
                inches.pitchM(),
                inches.pitchDiameterM(),
                joint.bearingDiameterM() / inch,
                joint.threadFriction(),
                joint.bearingFriction());
        double torqueInchPounds = torqueNm / CustomaryUnits.FOOT_POUND_NM * 12;
        double forcePounds = torqueInchPounds / leversInches.kappaOnM();
        assertThat(forcePounds * CustomaryUnits.POUND_FORCE_N).isCloseTo(forceSi, within(1e-12 * forceSi));
    }

    @Property
    void clampForceIsContinuousWithItsSlopeAtBothEndsOfSeating(@ForAll("specifications") JointSpecification joint) {
        ClampLaw clamp = joint.law().clamp();
        for (double limit : new double[] {0, clamp.seatingWidthRad()}) {
            double before = clamp.forceN(limit - LITTLE_RAD);
            double at = clamp.forceN(limit);
            double after = clamp.forceN(limit + LITTLE_RAD);
            double slope = clamp.forcePerAngleNPerRad();
            assertThat(at - before).isBetween(0.0, slope * LITTLE_RAD * 1.001);
            assertThat(after - at).isBetween(0.0, slope * LITTLE_RAD * 1.001);
            double kink = ((after - at) - (at - before)) / LITTLE_RAD;
            assertThat(kink).isCloseTo(0, within(slope * (1.001 * LITTLE_RAD / clamp.seatingWidthRad() + 1e-6)));
        }
    }

    /** A constant torque that begins at once is a step by its nature; every other resistance joins without one. */
    @Property
    void freeTorqueIsContinuousAtEveryZoneLimit(@ForAll("specifications") JointSpecification joint) {
        FreeTorque torque = joint.law().freeTorque();
        for (int zone = 1; zone < torque.zoneCount(); zone++) {
            double limit = torque.startRad(zone);
            assertThat(torque.torqueNm(Math.nextDown(limit)))
                    .isCloseTo(torque.torqueNm(limit), within(1e-9 * (1 + Math.abs(torque.torqueNm(limit)))));
        }
    }

    @Property
    void freeTorqueIsTheSumOfItsResistances(
            @ForAll("specifications") JointSpecification joint,
            @ForAll @DoubleRange(min = -1, max = 40) double angleRad) {
        double sum = joint.runningTorqueNm();
        for (Resistance resistance : joint.resistances()) {
            sum += FreeTorque.of(0, resistance.pieces(joint.snugAngleRad())).torqueNm(angleRad);
        }
        double together = joint.law().freeTorque().torqueNm(angleRad);
        assertThat(together).isCloseTo(sum, within(1e-9 * (1 + sum)));
    }

    @Property
    void theClampAngleInvertsTheClampForce(
            @ForAll("specifications") JointSpecification joint,
            @ForAll @DoubleRange(min = 0, max = 3) double angleRad) {
        ClampLaw clamp = joint.law().clamp();
        assertThat(clamp.angleForForceRad(clamp.forceN(angleRad))).isCloseTo(angleRad, within(1e-9));
    }

    @Property
    void higherThreadFrictionYieldsEarlier(
            @ForAll MetricSize size, @ForAll @DoubleRange(min = 0.02, max = 0.4) double friction) {
        YieldLimit limit = new YieldLimit.OfMaterial(640e6);
        assertThat(limit.yielding(size.coarse(), friction + 0.01).yieldForceN())
                .isLessThan(limit.yielding(size.coarse(), friction).yieldForceN());
    }

    @Provide
    Arbitrary<JointSpecification> specifications() {
        Arbitrary<Double> friction = Arbitraries.doubles().between(0.05, 0.35).ofScale(6);
        Arbitrary<Double> stiffness = Arbitraries.doubles().between(20e6, 600e6).ofScale(6);
        Arbitrary<Double> seating = Arbitraries.doubles().between(0.01, 1).ofScale(6);
        Arbitrary<Double> snug = Arbitraries.doubles().between(0, 25).ofScale(6);
        return Combinators.combine(
                        Arbitraries.of(MetricSize.class), friction, friction, stiffness, seating, snug, resistances())
                .as((size, thread, bearing, k, xa, snugRad, resistances) -> new JointSpecification(
                        size.coarse(),
                        size.hexagon().meanBearingDiameterM(),
                        thread,
                        bearing,
                        k,
                        xa,
                        snugRad,
                        0.2,
                        1.05,
                        YieldLimit.OFF,
                        resistances,
                        Galling.NONE));
    }

    private static Arbitrary<List<Resistance>> resistances() {
        Arbitrary<Double> torque = Arbitraries.doubles().between(0, 20).ofScale(6);
        Arbitrary<Double> angle = Arbitraries.doubles().between(0, 12).ofScale(6);
        Arbitrary<Resistance> element = Combinators.combine(
                        torque, angle, Arbitraries.doubles().between(0.1, 7).ofScale(6))
                .as((t, a, ramp) -> new Resistance.LockingElement(t, Resistance.Begin.beforeSnug(a), ramp));
        Arbitrary<Resistance> coating = torque.map(Resistance.ThickCoating::growing);
        Arbitrary<Resistance> dent = Combinators.combine(
                        torque,
                        angle,
                        Arbitraries.doubles().between(0.05, 6.28).ofScale(6),
                        Arbitraries.of(true, false))
                .as((t, a, width, every) ->
                        new Resistance.ThreadDamage(t, width, Resistance.Begin.fromStart(a), every));
        return Arbitraries.oneOf(element, coating, dent).list().ofMaxSize(4);
    }
}
