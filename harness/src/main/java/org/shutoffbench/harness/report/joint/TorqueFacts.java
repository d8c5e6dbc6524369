package org.shutoffbench.harness.report.joint;

import org.shutoffbench.joint.JointSpecification;
import org.shutoffbench.joint.TorqueFormula;
import org.shutoffbench.joint.TorqueTension;

/** Where the torque goes. */
final class TorqueFacts {

    private TorqueFacts() {}

    static FactSection of(JointSubject subject) {
        JointSpecification joint = subject.specification();
        TorqueTension levers = subject.torqueTension();
        double on = levers.kappaOnM();
        return new FactSection("Torque and tension")
                .add("friction coefficient of the thread", "mu_th", Measure.PURE, joint.threadFriction(), "given")
                .add("friction coefficient of the bearing face", "mu_b", Measure.PURE, joint.bearingFriction(), "given")
                .add("torque per clamp force", "kappa_on", Measure.LENGTH, on, "Motosh1976")
                .add("share of the pitch", "", Measure.SHARE, levers.helixLeverM() / on, "Motosh1976")
                .add("share of thread friction", "", Measure.SHARE, levers.threadLeverM() / on, "Motosh1976")
                .add("share of bearing friction", "", Measure.SHARE, levers.bearingLeverM() / on, "Motosh1976")
                .add("nut factor", "K", Measure.PURE, joint.nutFactor(), "kappa_on/d")
                .add("loosening over tightening torque", "", Measure.PURE, levers.kappaOffM() / on, "Motosh1976")
                .add("rounded formula over this one", "", Measure.PURE, ratio(joint, TorqueFormula.ROUNDED), "VDI-2230")
                .add(
                        "exact helix over this one",
                        "",
                        Measure.PURE,
                        ratio(joint, TorqueFormula.EXACT_HELIX),
                        "Shigley2011");
    }

    private static double ratio(JointSpecification joint, TorqueFormula formula) {
        return formula.kappaOnM(
                        joint.thread(), joint.bearingDiameterM(), joint.threadFriction(), joint.bearingFriction())
                / joint.torqueTension().kappaOnM();
    }
}
