package org.shutoffbench.joint.strength;

import java.util.List;
import java.util.stream.Stream;
import org.shutoffbench.joint.thread.CustomaryUnits;
import org.shutoffbench.joint.thread.ThreadDesignation;
import org.shutoffbench.validation.Check;
import org.shutoffbench.validation.ReferenceFile;
import org.shutoffbench.validation.ReferenceRow;
import org.shutoffbench.validation.ReferenceSource;

public class StrengthReferenceTest implements ReferenceSource {

    @Override
    public List<Check> checks() {
        return Stream.concat(
                        ReferenceFile.read("strength/proof-load.csv").checks(this::proofLoad).stream(),
                        ReferenceFile.read("strength/nominal.csv").checks(this::nominal).stream())
                .toList();
    }

    private double proofLoad(ReferenceRow row) {
        return PropertyClass.named(row.text("class")).proofLoadN(ThreadDesignation.parse(row.text("thread")));
    }

    private double nominal(ReferenceRow row) {
        Strength strength =
                PropertyClass.named(row.text("class")).strength(ThreadDesignation.parse(row.text("thread")));
        double unit = row.text("unit").equals("ksi") ? CustomaryUnits.KSI_PA : 1e6;
        return switch (row.text("quantity")) {
            case "proof" -> strength.proofPa() / unit;
            case "yield" -> strength.yieldPa() / unit;
            default -> strength.tensilePa() / unit;
        };
    }
}
