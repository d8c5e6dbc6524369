package org.shutoffbench.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shutoffbench.joint.Resistance.Begin;
import org.shutoffbench.joint.Resistance.Fouling;
import org.shutoffbench.joint.Resistance.LockingElement;
import org.shutoffbench.joint.Resistance.ThickCoating;
import org.shutoffbench.joint.Resistance.ThreadDamage;
import org.shutoffbench.joint.strength.AssemblyLimit;
import org.shutoffbench.joint.thread.MetricSize;
import org.shutoffbench.joint.thread.ScrewThread;

class JointSpecificationTest {

    private static final ScrewThread M12 = MetricSize.M12.coarse();
    private static final double TURN = 2 * Math.PI;

    private static JointSpecification plain(YieldLimit yield, Resistance... resistances) {
        return new JointSpecification(
                M12,
                15.6e-3,
                0.12,
                0.12,
                312e6,
                Math.toRadians(8),
                2 * TURN,
                0.2,
                1,
                yield,
                List.of(resistances),
                Galling.NONE);
    }

    /** k_F = k_J P/(2 pi); levers by the linear law. */
    @Test
    void thePlainJointBecomesItsLaw() {
        JointSpecification joint = plain(YieldLimit.OFF);
        JointLaw law = joint.law();
        assertThat(law.clamp().forcePerAngleNPerRad()).isCloseTo(312e6 * 1.75e-3 / TURN, within(1e-6));
        assertThat(law.clamp().snugAngleRad()).isEqualTo(2 * TURN);
        assertThat(law.clamp().seatingWidthRad()).isEqualTo(Math.toRadians(8));
        double kappa = 1.75e-3 / TURN + 0.12 * (M12.pitchDiameterM() / Math.sqrt(3) + 7.8e-3);
        assertThat(law.torqueTension().kappaOnM()).isCloseTo(kappa, within(1e-12));
        assertThat(joint.nutFactor()).isCloseTo(kappa / 12e-3, within(1e-12));
        assertThat(law.freeTorque().torqueNm(5)).isEqualTo(0.2);
        assertThat(law.staticRatio()).isEqualTo(1);
        assertThat(law.yielding()).isEqualTo(Yielding.OFF);
        assertThat(law.galling()).isEqualTo(Galling.NONE);
    }

    @Test
    void yieldComesFromForceOrMaterial() {
        assertThat(plain(new YieldLimit.AtForce(50e3)).law().yielding().yieldForceN())
                .isEqualTo(50e3);
        double ofMaterial =
                plain(new YieldLimit.OfMaterial(940e6)).law().yielding().yieldForceN();
        assertThat(ofMaterial).isEqualTo(new AssemblyLimit(M12, 940e6, 0.12).yieldForceN());
        assertThatThrownBy(() -> new YieldLimit.AtForce(0)).hasMessageContaining("yield force");
        assertThatThrownBy(() -> new YieldLimit.OfMaterial(0)).hasMessageContaining("yield strength");
        assertThatThrownBy(() -> new YieldLimit.OfMaterial(Double.POSITIVE_INFINITY))
                .hasMessageContaining("finite");
        assertThatThrownBy(() -> new AssemblyLimit(M12, 0, 0.1)).hasMessageContaining("yield strength");
        assertThatThrownBy(() -> new AssemblyLimit(M12, 1e9, -0.1)).hasMessageContaining("friction");
    }

    @Test
    void aLockingElementRampsUpAndStays() {
        LockingElement element = new LockingElement(10, Begin.fromStart(Math.PI), TURN);
        FreeTorque torque = plain(YieldLimit.OFF, element).law().freeTorque();
        assertThat(torque.torqueNm(Math.PI)).isCloseTo(0.2, within(1e-12));
        assertThat(torque.torqueNm(TURN)).isCloseTo(5.2, within(1e-12));
        assertThat(torque.torqueNm(1.5 * TURN)).isCloseTo(10.2, within(1e-12));
        assertThat(torque.torqueNm(40)).isCloseTo(10.2, within(1e-12));
        assertThat(element.peakNm(0)).isEqualTo(10);
    }

    @Test
    void aLockingElementMayCountBackFromSnugAndStepUp() {
        FreeTorque torque = plain(YieldLimit.OFF, new LockingElement(10, Begin.beforeSnug(TURN), 0))
                .law()
                .freeTorque();
        assertThat(torque.torqueNm(TURN - 1e-9)).isEqualTo(0.2);
        assertThat(torque.torqueNm(TURN)).isEqualTo(10.2);
    }

    @Test
    void foulingActsFromTheStart() {
        FreeTorque torque =
                plain(YieldLimit.OFF, new Fouling(3, Begin.AT_START)).law().freeTorque();
        assertThat(torque.torqueNm(-1e-9)).isEqualTo(0.2);
        assertThat(torque.torqueNm(0)).isEqualTo(3.2);
        assertThat(torque.torqueNm(50)).isEqualTo(3.2);
    }

    @Test
    void aThickCoatingGrowsWithEveryTurn() {
        FreeTorque torque = plain(YieldLimit.OFF, ThickCoating.growing(2)).law().freeTorque();
        assertThat(torque.torqueNm(0)).isCloseTo(0.2, within(1e-12));
        assertThat(torque.torqueNm(TURN)).isCloseTo(2.2, within(1e-12));
        assertThat(torque.torqueNm(6.5 * TURN)).isCloseTo(13.2, within(1e-12));
        assertThat(torque.torqueNm(7 * TURN)).isCloseTo(14.2, within(1e-12));
        assertThat(torque.torqueNm(9 * TURN)).isCloseTo(14.2, within(1e-12));
        FreeTorque limited = plain(YieldLimit.OFF, new ThickCoating(2, 3)).law().freeTorque();
        assertThat(limited.torqueNm(1.5 * TURN)).isCloseTo(3.2, within(1e-12));
        assertThat(limited.torqueNm(3 * TURN)).isCloseTo(3.2, within(1e-12));
        assertThat(new ThickCoating(0, 3).pieces(1)).isEmpty();
        assertThat(new ThickCoating(2, 0).pieces(1)).isEmpty();
        assertThat(ThickCoating.growing(2).peakNm(3 * TURN)).isCloseTo(6, within(1e-12));
        assertThat(ThickCoating.growing(2).peakNm(-1)).isEqualTo(0);
        assertThat(new ThickCoating(2, 3).peakNm(3 * TURN)).isEqualTo(3);
    }

    @Test
    void aDentIsAParabolaAtOnePlaceOrOnceATurn() {
        ThreadDamage once = new ThreadDamage(8, 0.5, Begin.fromStart(1), false);
        FreeTorque torque = plain(YieldLimit.OFF, once).law().freeTorque();
        assertThat(torque.torqueNm(1)).isCloseTo(0.2, within(1e-12));
        assertThat(torque.torqueNm(1.25)).isCloseTo(8.2, within(1e-12));
        assertThat(torque.torqueNm(1.125)).isCloseTo(6.2, within(1e-12));
        assertThat(torque.torqueNm(1.5)).isCloseTo(0.2, within(1e-12));
        assertThat(torque.torqueNm(1.25 + TURN)).isEqualTo(0.2);
        ThreadDamage every = new ThreadDamage(8, 0.5, Begin.fromStart(1), true);
        FreeTorque again = plain(YieldLimit.OFF, every).law().freeTorque();
        for (int turn = 0; turn <= 6; turn++) {
            assertThat(again.torqueNm(1.25 + turn * TURN)).isCloseTo(8.2, within(1e-9));
        }
        assertThat(every.pieces(2 * TURN)).hasSize(7);
        assertThat(every.peakNm(0)).isEqualTo(8);
        assertThat(new Fouling(4, Begin.AT_START).peakNm(0)).isEqualTo(4);
    }

    @Test
    void jointsThatCannotBeTightenedAreRefusedWithTheReason() {
        YieldLimit weak = new YieldLimit.AtForce(10e3);
        assertThatThrownBy(() -> plain(weak, new Fouling(25, Begin.AT_START)).law())
                .hasMessageStartingWith("running and prevailing torque of 25.20 N m reach the yield torque of");
        double torqueAtYield = plain(weak).torqueTension().kappaOnM() * 10e3;
        Fouling justBelow = new Fouling(torqueAtYield - 0.2001, Begin.AT_START);
        assertThat(plain(weak, justBelow).law()).isNotNull();
        assertThatThrownBy(() -> plain(new YieldLimit.AtForce(5e3)).law())
                .hasMessageContaining("inside the seating zone");
        JointSpecification slippery = new JointSpecification(
                M12, 15.6e-3, 0.01, 0.01, 312e6, 0.1, 10, 0.2, 1, YieldLimit.OFF, List.of(), Galling.NONE);
        assertThatThrownBy(slippery::law).hasMessageContaining("not self-locking");
    }

    @Test
    void nonsenseIsRefusedAtOnce() {
        assertThatThrownBy(() -> of(0, 0.1, 0.1, 1e8)).hasMessageContaining("bearing diameter");
        assertThatThrownBy(() -> of(1e-2, -0.1, 0.1, 1e8)).hasMessageContaining("friction");
        assertThatThrownBy(() -> of(1e-2, 0.1, -0.1, 1e8)).hasMessageContaining("friction");
        assertThatThrownBy(() -> of(1e-2, Double.NaN, 0.1, 1e8)).hasMessageContaining("friction");
        assertThatThrownBy(() -> of(1e-2, 0.1, 0.1, 0)).hasMessageContaining("stiffness");
        assertThatThrownBy(() -> new Fouling(-1, Begin.AT_START)).hasMessageContaining("resisting torque");
        assertThatThrownBy(() -> new LockingElement(1, Begin.AT_START, -1)).hasMessageContaining("ramp");
        assertThatThrownBy(() -> new LockingElement(-1, Begin.AT_START, 1)).hasMessageContaining("resisting torque");
        assertThatThrownBy(() -> new ThickCoating(-1, 1)).hasMessageContaining("resisting torque");
        assertThatThrownBy(() -> new ThickCoating(1, -1)).hasMessageContaining("limit");
        assertThatThrownBy(() -> new ThreadDamage(1, 0, Begin.AT_START, true)).hasMessageContaining("wider");
        assertThatThrownBy(() -> new ThreadDamage(1, 7, Begin.AT_START, true)).hasMessageContaining("one turn");
        assertThatThrownBy(() -> new ThreadDamage(-1, 1, Begin.AT_START, true)).hasMessageContaining("torque");
        assertThatThrownBy(() -> Begin.fromStart(Double.NaN)).hasMessageContaining("finite");
        assertThatThrownBy(() -> Begin.beforeSnug(Double.POSITIVE_INFINITY)).hasMessageContaining("finite");
    }

    private static JointSpecification of(double bearing, double thread, double face, double stiffness) {
        return new JointSpecification(
                M12, bearing, thread, face, stiffness, 0.1, 10, 0.2, 1, YieldLimit.OFF, List.of(), Galling.NONE);
    }
}
