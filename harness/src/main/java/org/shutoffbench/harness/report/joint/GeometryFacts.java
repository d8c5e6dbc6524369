package org.shutoffbench.harness.report.joint;

import org.shutoffbench.joint.assembly.BoltedAssembly;
import org.shutoffbench.joint.thread.HexDimensions;
import org.shutoffbench.joint.thread.ScrewThread;
import org.shutoffbench.joint.thread.ThreadForm;

/** Thread, hexagon and lengths. */
final class GeometryFacts {

    private GeometryFacts() {}

    static FactSection of(JointSubject subject) {
        FactSection section = new FactSection("Geometry");
        ScrewThread t = subject.specification().thread();
        boolean metric = t.form() == ThreadForm.METRIC;
        String profile = metric ? "ISO-724" : "ASME-B1.1";
        section.add("thread diameter", "d", Measure.LENGTH, t.majorDiameterM(), metric ? "ISO-261" : "ASME-B1.1")
                .add("pitch", "P", Measure.LENGTH, t.pitchM(), metric ? "ISO-261" : "ASME-B1.1")
                .add("pitch diameter", "d2", Measure.LENGTH, t.pitchDiameterM(), profile)
                .add("minor diameter of the bolt", "d3", Measure.LENGTH, t.minorDiameterM(), profile)
                .add("minor diameter of the nut", "D1", Measure.LENGTH, t.nutMinorDiameterM(), profile)
                .add("stress area", "A_s", Measure.AREA, t.stressAreaM2(), metric ? "ISO-898-1" : "ASME-B1.1")
                .add("helix angle", "phi_h", Measure.ANGLE, Math.atan(t.helixTangent()), profile)
                .add(
                        "effective bearing diameter",
                        "D_b",
                        Measure.LENGTH,
                        subject.specification().bearingDiameterM(),
                        "VDI-2230");
        BoltedAssembly assembly = subject.assembly();
        if (assembly != null) {
            lengths(section, assembly, metric);
        }
        return section;
    }

    private static void lengths(FactSection section, BoltedAssembly assembly, boolean metric) {
        HexDimensions hexagon = assembly.hexagon();
        String bolts = metric ? "ISO-4014" : "ASME-B18.2";
        section.add("width across flats", "s", Measure.LENGTH, hexagon.acrossFlatsM(), bolts)
                .add("bearing face", "d_w", Measure.LENGTH, hexagon.bearingFaceM(), bolts)
                .add(
                        "clearance hole",
                        "d_h",
                        Measure.LENGTH,
                        hexagon.clearanceHoleM(),
                        metric ? "ISO-273" : "ASME-B18.2.8")
                .add("nut height", "m", Measure.LENGTH, hexagon.nutHeightM(), metric ? "ISO-4032" : "ASME-B18.2")
                .add("grip", "l_K", Measure.LENGTH, assembly.stack().gripM(), "given, washers included")
                .add("bolt length", "L", Measure.LENGTH, assembly.boltLength().lengthM(), bolts)
                .add(
                        "thread length",
                        "b",
                        Measure.LENGTH,
                        assembly.boltLength().threadLengthM(),
                        metric ? "ISO-888" : bolts)
                .add("bolt past the nut's face", "", Measure.LENGTH, assembly.lengthPastNutFaceM(), "L - l_K");
    }
}
