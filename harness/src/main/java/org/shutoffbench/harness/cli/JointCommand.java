package org.shutoffbench.harness.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.record.TextFile;
import org.shutoffbench.harness.report.Caution;
import org.shutoffbench.harness.report.joint.JointSheet;
import org.shutoffbench.harness.report.joint.JointSubject;
import org.shutoffbench.harness.report.joint.SheetJson;
import org.shutoffbench.harness.report.joint.SheetText;
import org.shutoffbench.harness.report.joint.TorqueAngleCurve;
import org.shutoffbench.harness.report.joint.UnitSystem;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.JointAssembly;
import org.shutoffbench.harness.scenario.JointFamily;
import org.shutoffbench.harness.scenario.JointKey;
import org.shutoffbench.harness.scenario.JudgedQuantity;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.ScenarioFile;
import org.shutoffbench.joint.JointSpecification;
import org.shutoffbench.joint.assembly.Embedding;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code joint}: what one joint comes to, without tightening it. */
@Command(
        name = "joint",
        mixinStandardHelpOptions = true,
        versionProvider = ShutoffBench.Version.class,
        description = {
            "Prints the geometry, stiffness, torque split, strength, angles and losses of one joint, each number with its"
                    + " source. The joint is the median of a scenario's family, or is given by its sizes.",
            ""
        },
        footer = {
            "",
            "Example: shutoff-bench joint --size M12 --class 8.8 --grip 60mm --mu 0.12 --svg m12.svg",
            "Example: shutoff-bench joint docs/examples/harbour-walkway.yaml --family \"lock nut\" --json",
            "",
            Caution.TEXT
        })
final class JointCommand implements Callable<Integer> {

    enum Units {
        si,
        customary
    }

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before any command runs
    private CommandSpec spec;

    @Parameters(arity = "0..1", paramLabel = "SCENARIO", description = "scenario file, instead of --size")
    private @Nullable Path scenarioFile;

    @Option(names = "--family", paramLabel = "NAME", description = "family of joints (default: the first)")
    private @Nullable String family;

    @ArgGroup(exclusive = false, heading = "The joint by its sizes:%n")
    private @Nullable JointSizes sizes;

    @Option(names = "--units", description = "${COMPLETION-CANDIDATES} (default: si): N*m, kN, mm or ft*lbf, kip, in")
    private Units units = Units.si;

    @Option(names = "--json", description = "print JSON instead of text")
    private boolean json;

    @Option(names = "--svg", paramLabel = "FILE.svg", description = "write the torque-angle curve as a picture")
    private @Nullable Path svg;

    @Override
    public Integer call() throws IOException {
        JointSheet sheet = sheet();
        UnitSystem system = units == Units.si ? UnitSystem.SI : UnitSystem.CUSTOMARY;
        if (svg != null) {
            TextFile.write(svg, TorqueAngleCurve.svg(sheet, system));
        }
        PrintWriter out = spec.commandLine().getOut();
        out.print(json ? SheetJson.of(sheet, system) : SheetText.of(sheet, system));
        out.flush();
        return 0;
    }

    private JointSheet sheet() {
        JointSizes given = sizes;
        Path file = scenarioFile;
        if ((given == null) == (file == null)) {
            throw new ParameterException(spec.commandLine(), "give either a SCENARIO or --size");
        }
        try {
            return JointSheet.of(file == null ? Objects.requireNonNull(given).subject() : median(file));
        } catch (IllegalArgumentException e) {
            throw new InputException("no such joint: " + e.getMessage());
        }
    }

    /** The median joint of a family, every number at its middle. */
    private JointSubject median(Path file) {
        Scenario scenario = new ScenarioFile(new StrategyCatalogue()).read(file);
        JointFamily chosen = scenario.families().get(Checks.family(scenario, family));
        Map<JointKey, Double> middle = new EnumMap<>(JointKey.class);
        chosen.numbers().forEach((key, amount) -> middle.put(key, amount.median()));
        JointAssembly assembly = new JointAssembly(chosen, middle, 0);
        JointSpecification joint = assembly.specification();
        double target = scenario.judgement().target().si();
        double targetForceN = scenario.judgement().quantity() == JudgedQuantity.CLAMP_FORCE
                ? target
                : target / joint.torqueTension().kappaOnM();
        return new JointSubject(
                chosen.name() + " of " + scenario.name() + ": "
                        + chosen.thread().written() + ", median joint",
                joint,
                assembly.parts(),
                chosen.propertyClass(),
                null,
                Embedding.MEDIUM_AXIAL,
                targetForceN);
    }
}
