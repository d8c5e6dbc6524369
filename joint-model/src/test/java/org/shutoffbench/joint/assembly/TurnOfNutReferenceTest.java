package org.shutoffbench.joint.assembly;

import java.util.List;
import java.util.stream.Stream;
import org.shutoffbench.joint.strength.PropertyClass;
import org.shutoffbench.joint.strength.StructuralPretension;
import org.shutoffbench.joint.thread.CustomaryUnits;
import org.shutoffbench.joint.thread.ThreadDesignation;
import org.shutoffbench.validation.Check;
import org.shutoffbench.validation.ReferenceFile;
import org.shutoffbench.validation.ReferenceRow;
import org.shutoffbench.validation.ReferenceSource;

public class TurnOfNutReferenceTest implements ReferenceSource {

    @Override
    public List<Check> checks() {
        return Stream.of(
                        ReferenceFile.read("turn-of-nut/rotation.csv").checks(this::rotation),
                        ReferenceFile.read("turn-of-nut/pretension.csv").checks(this::pretension),
                        ReferenceFile.read("turn-of-nut/accuracy.csv").checks(this::accuracy))
                .flatMap(List::stream)
                .toList();
    }

    private double rotation(ReferenceRow row) {
        TurnOfNut rule = TurnOfNut.of(row.number("length") * 20e-3, 20e-3);
        return row.text("quantity").equals("turns")
                ? rule.rotationRad() / (2 * Math.PI)
                : Math.toDegrees(rule.toleranceRad());
    }

    private double pretension(ReferenceRow row) {
        return StructuralPretension.minimumN(
                        PropertyClass.named(row.text("class")), ThreadDesignation.parse(row.text("thread")))
                / CustomaryUnits.KIP_N;
    }

    private double accuracy(ReferenceRow row) {
        String quantity = row.text("quantity");
        return 100
                * (Character.isDigit(quantity.charAt(0))
                        ? PreloadAccuracy.ofTighteningFactor(Double.parseDouble(quantity))
                        : PreloadAccuracy.valueOf(quantity).relative());
    }
}
