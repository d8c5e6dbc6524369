package org.shutoffbench.joint.assembly;

import java.util.List;
import org.shutoffbench.joint.TorqueFormula;
import org.shutoffbench.joint.strength.AssemblyLimit;
import org.shutoffbench.joint.strength.PropertyClass;
import org.shutoffbench.joint.thread.ScrewThread;
import org.shutoffbench.joint.thread.ThreadDesignation;
import org.shutoffbench.validation.Check;
import org.shutoffbench.validation.ReferenceFile;
import org.shutoffbench.validation.ReferenceRow;
import org.shutoffbench.validation.ReferenceSource;

public class AssemblyReferenceTest implements ReferenceSource {

    @Override
    public List<Check> checks() {
        return ReferenceFile.read("assembly/vdi-tables.csv").checks(this::ours);
    }

    private double ours(ReferenceRow row) {
        ScrewThread thread = ThreadDesignation.parse(row.text("thread"));
        double mu = row.number("mu");
        BoltedAssembly assembly = BoltedAssembly.of(thread, PropertyClass.named(row.text("class")))
                .grip(5 * thread.majorDiameterM())
                .build();
        double force = assembly.limit(mu).forceN(AssemblyLimit.TABLE_UTILISATION);
        double kappa = TorqueFormula.LINEAR.kappaOnM(thread, assembly.bearingDiameterM(), mu, mu);
        return row.text("quantity").equals("force") ? force / 1e3 : kappa * force;
    }
}
