package org.shutoffbench.joint.stiffness;

import java.util.List;
import java.util.stream.Stream;
import org.shutoffbench.joint.thread.CustomaryUnits;
import org.shutoffbench.joint.thread.ScrewThread;
import org.shutoffbench.validation.Check;
import org.shutoffbench.validation.ReferenceFile;
import org.shutoffbench.validation.ReferenceRow;
import org.shutoffbench.validation.ReferenceSource;

public class StiffnessReferenceTest implements ReferenceSource {

    private static final double INCH = CustomaryUnits.INCH_M;
    private static final double MPSI = 1e6 * CustomaryUnits.PSI_PA;
    private static final double MLBF_PER_INCH = 1e6 * CustomaryUnits.POUND_FORCE_N / INCH;
    private static final ScrewThread ANY = ScrewThread.metric(12.7e-3, 1.5e-3);

    private static final ReferenceFile FRUSTA = ReferenceFile.read("stiffness/frusta.csv");

    @Override
    public List<Check> checks() {
        return Stream.concat(
                        FRUSTA.checks(this::frustum).stream(),
                        ReferenceFile.read("stiffness/joint.csv").checks(this::joint).stream())
                .toList();
    }

    /** A mirrored pair is twice as soft as its one frustum. */
    private double frustum(ReferenceRow row) {
        Layer layer = layer(row, 2);
        LayerStack pair = new LayerStack(List.of(layer), row.number("diameter") * INCH);
        return 2 / PartsMethod.FRUSTA.complianceMPerN(pair, ANY) / MLBF_PER_INCH;
    }

    private static Layer layer(ReferenceRow row, double times) {
        return new Layer(
                row.number("modulus") * MPSI,
                times * row.number("thickness") * INCH,
                Double.POSITIVE_INFINITY,
                row.number("hole") * INCH);
    }

    private double joint(ReferenceRow row) {
        return switch (row.text("quantity")) {
            case "layers" -> fourLayers() / MLBF_PER_INCH;
            case "bolt" -> plainBolt() / 1e6;
            case "fit" -> ExponentialFit.STEEL.stiffnessNPerM(30 * MPSI, 0.625 * INCH, 1.5 * INCH) / MLBF_PER_INCH;
            case "cone identity" -> coneOverFrusta();
            default -> coefficient(row.text("quantity"));
        };
    }

    /** Steel 0.5 in, then cast iron 0.625 in that the middle of the grip cuts in two, then steel 0.095 in. */
    private static double fourLayers() {
        List<ReferenceRow> rows = FRUSTA.rows();
        Layer steel = layer(rows.get(0), 1);
        Layer upperIron = layer(rows.get(1), 1);
        Layer lowerIron = layer(rows.get(2), 1);
        Layer lowerSteel = layer(rows.get(3), 1);
        LayerStack stack = new LayerStack(List.of(steel, upperIron, lowerIron, lowerSteel), 0.75 * INCH);
        return 1 / PartsMethod.FRUSTA.complianceMPerN(stack, ANY);
    }

    /** A_d 113 and A_t 84.3 mm2 belong to M12; l_d 10 mm, l_t 16 mm, E 207 GPa. */
    private static double plainBolt() {
        return new Bolt(ScrewThread.metric(12e-3, 1.75e-3), 207e9, 10e-3, 16e-3).gripStiffnessNPerM();
    }

    private static double coneOverFrusta() {
        double d = 12e-3;
        double face = 18e-3;
        double grip = 40e-3;
        double modulus = 205e9;
        double tangent = Math.tan(Math.PI / 6);
        double edge = face + grip * tangent;
        double cone =
                2 / (Math.PI * modulus * d * tangent) * Math.log((face + d) * (edge - d) / ((face - d) * (edge + d)));
        LayerStack stack = new LayerStack(List.of(new Layer(modulus, grip, Double.POSITIVE_INFINITY, d)), face);
        return cone / PartsMethod.FRUSTA.complianceMPerN(stack, ANY);
    }

    /** The factor is what an endless grip gives; the exponent what a grip of one diameter adds. */
    private static double coefficient(String name) {
        ExponentialFit fit = name.startsWith("steel")
                ? ExponentialFit.STEEL
                : name.startsWith("cast iron") ? ExponentialFit.CAST_IRON : ExponentialFit.GENERAL;
        double factor = fit.stiffnessNPerM(1, 1, Double.POSITIVE_INFINITY);
        return name.endsWith("factor") ? factor : Math.log(fit.stiffnessNPerM(1, 1, 1) / factor);
    }
}
