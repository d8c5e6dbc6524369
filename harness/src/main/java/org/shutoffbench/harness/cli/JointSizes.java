package org.shutoffbench.harness.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.report.joint.JointSubject;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.harness.scenario.unit.Quantity;
import org.shutoffbench.joint.Galling;
import org.shutoffbench.joint.JointSpecification;
import org.shutoffbench.joint.Resistance;
import org.shutoffbench.joint.YieldLimit;
import org.shutoffbench.joint.assembly.BoltedAssembly;
import org.shutoffbench.joint.assembly.Embedding;
import org.shutoffbench.joint.assembly.Washer;
import org.shutoffbench.joint.preset.SurfacePreset;
import org.shutoffbench.joint.prevailing.LockNutKind;
import org.shutoffbench.joint.prevailing.PrevailingRange;
import org.shutoffbench.joint.stiffness.PartsMethod;
import org.shutoffbench.joint.strength.PropertyClass;
import org.shutoffbench.joint.thread.ScrewThread;
import org.shutoffbench.joint.thread.ThreadDesignation;
import picocli.CommandLine.Option;

/** A joint on the command line: sizes, and what is known of friction and layers. */
final class JointSizes {

    enum Nut {
        plain,
        insert,
        all_metal
    }

    /** Turns from the start to snug, where nothing says so: the joint key's own default. */
    private static final double TURNS_TO_SNUG = 2;

    private static final double RUNNING_TORQUE_NM = 0.2;
    private static final String PROPERTY_CLASSES = "8.8, 10.9, 12.9, A4-70, grade 2, grade 5, grade 8, A325, A490";

    @Option(names = "--size", paramLabel = "M12", required = true, description = "thread: M12, M12x1.25, 1/2-13")
    @SuppressWarnings("NullAway.Init") // picocli sets it before any command runs
    private String size;

    @Option(names = "--class", paramLabel = "8.8", defaultValue = "8.8", description = PROPERTY_CLASSES)
    private String propertyClass = "8.8";

    @Option(names = "--grip", paramLabel = "60mm", description = "clamped length, washers included")
    private @Nullable String grip;

    @Option(
            names = "--layer",
            paramLabel = "steel:20mm[:50mm[:13.5mm]]",
            description = "clamped layer from the head on: material, thickness, width, hole; repeat for more")
    private List<String> layers = new ArrayList<>();

    @Option(names = "--washers", paramLabel = "N", description = "0, 1 (under the nut) or 2 normal steel washers")
    private int washers;

    @Option(names = "--length", paramLabel = "75mm", description = "bolt length (default: the shortest usual one)")
    private @Nullable String length;

    @Option(names = "--thread-length", paramLabel = "30mm", description = "thread length (default: the standard's)")
    private @Nullable String threadLength;

    @Option(names = "--hole", paramLabel = "13.5mm", description = "clearance hole (default: medium or normal)")
    private @Nullable String hole;

    @Option(names = "--bearing-face", paramLabel = "16.63mm", description = "d_w of head and nut")
    private @Nullable String bearingFace;

    @Option(
            names = "--spring",
            paramLabel = "500kN/mm",
            description = "spring in series: gasket, spring washer; repeat")
    private List<String> springs = new ArrayList<>();

    @Option(
            names = "--parts",
            paramLabel = "cone",
            defaultValue = "cone",
            description = "cone, frusta, exponential fit")
    private String parts = "cone";

    @Option(names = "--mu", paramLabel = "0.12", description = "friction of thread and bearing face (default: 0.12)")
    private double mu = 0.12;

    @Option(names = "--mu-th", paramLabel = "0.12", description = "friction of the thread")
    private double threadFriction = Double.NaN;

    @Option(names = "--mu-b", paramLabel = "0.12", description = "friction of the bearing face")
    private double bearingFriction = Double.NaN;

    @Option(
            names = "--surface",
            paramLabel = "NAME",
            description = "median friction of a surface, such as \"dry zinc\"")
    private @Nullable String surface;

    @Option(names = "--seating", paramLabel = "8deg", defaultValue = "8deg", description = "seating width (assumed)")
    private String seating = "8deg";

    @Option(names = "--nut", description = "${COMPLETION-CANDIDATES} (default: plain)")
    private Nut nut = Nut.plain;

    @Option(
            names = "--prevailing",
            paramLabel = "6N*m",
            description = "prevailing torque (default: the middle of the range)")
    private @Nullable String prevailing;

    @Option(
            names = "--target",
            paramLabel = "84N*m",
            description = "clamping torque aimed at (default: 70 %% of yield)")
    private @Nullable String target;

    @Option(
            names = "--embedding",
            paramLabel = "SURFACE",
            defaultValue = "medium_axial",
            description = "fine, medium or coarse, _axial or _shear (default: medium_axial)")
    private String embedding = "medium_axial";

    JointSubject subject() {
        ScrewThread thread = ThreadDesignation.parse(size);
        PropertyClass bolt = PropertyClass.named(propertyClass);
        LockNutKind kind = kind();
        BoltedAssembly assembly = assembly(thread, bolt, kind);
        JointSpecification joint = specification(thread, bolt, kind, assembly);
        double targetForceN = target == null
                ? Double.NaN
                : si("--target", target, Dimension.TORQUE)
                        / joint.torqueTension().kappaOnM();
        String title = thread.designation() + ", class " + bolt.title() + ", grip "
                + String.format(Locale.ROOT, "%.4g mm", assembly.stack().gripM() * 1e3);
        return new JointSubject(title, joint, assembly, bolt, kind, embedding(), targetForceN);
    }

    private BoltedAssembly assembly(ScrewThread thread, PropertyClass bolt, @Nullable LockNutKind kind) {
        BoltedAssembly.Builder builder = BoltedAssembly.of(thread, bolt).method(PartsMethod.named(parts));
        if (kind != null) {
            builder.nutHeight(kind.heightM(thread));
        }
        if (grip != null) {
            builder.grip(si("--grip", grip, Dimension.LENGTH));
        }
        if (hole != null) {
            builder.hole(si("--hole", hole, Dimension.LENGTH));
        }
        if (bearingFace != null) {
            builder.bearingFace(si("--bearing-face", bearingFace, Dimension.LENGTH));
        }
        if (length != null) {
            builder.boltLength(si("--length", length, Dimension.LENGTH));
        }
        if (threadLength != null) {
            builder.threadLength(si("--thread-length", threadLength, Dimension.LENGTH));
        }
        for (String spring : springs) {
            builder.spring(si("--spring", spring, Dimension.STIFFNESS));
        }
        if (washers < 0 || washers > 2) {
            throw new InputException("--washers " + washers + ": give 0, 1 or 2");
        }
        builder.washers(java.util.Collections.nCopies(washers, Washer.normal(thread.majorDiameterM())));
        return builder.layers(LayerOption.read(layers, thread)).build();
    }

    private JointSpecification specification(
            ScrewThread thread, PropertyClass bolt, @Nullable LockNutKind kind, BoltedAssembly assembly) {
        double onThread = Double.isNaN(threadFriction) ? surfaceFriction(false) : threadFriction;
        double onFace = Double.isNaN(bearingFriction) ? surfaceFriction(true) : bearingFriction;
        double turns = TURNS_TO_SNUG;
        List<Resistance> resistances = new ArrayList<>();
        if (kind != null) {
            double before = kind.turnsBeforeSnug(thread, assembly.lengthPastNutFaceM());
            turns = Math.max(turns, before);
            resistances.add(new Resistance.LockingElement(
                    prevailingNm(thread),
                    Resistance.Begin.beforeSnug(before * Resistance.TURN_RAD),
                    Resistance.LockingElement.ASSUMED_RAMP_RAD));
        }
        return new JointSpecification(
                thread,
                assembly.bearingDiameterM(),
                onThread,
                onFace,
                assembly.stiffness().seriesNPerM(),
                si("--seating", seating, Dimension.ANGLE),
                turns * Resistance.TURN_RAD,
                RUNNING_TORQUE_NM,
                JointSpecification.ASSUMED_STATIC_RATIO,
                new YieldLimit.OfMaterial(bolt.strength(thread).yieldPa()),
                resistances,
                Galling.NONE);
    }

    private double surfaceFriction(boolean face) {
        if (surface == null) {
            return mu;
        }
        SurfacePreset preset = SurfacePreset.named(surface);
        return face
                ? preset.friction().bearingMedian()
                : preset.friction().thread().median();
    }

    private double prevailingNm(ScrewThread thread) {
        if (prevailing != null) {
            return si("--prevailing", prevailing, Dimension.TORQUE);
        }
        return PrevailingRange.of(thread)
                .orElseThrow(() -> new InputException("give --prevailing: no standard lists this size"))
                .middleNm();
    }

    private @Nullable LockNutKind kind() {
        return switch (nut) {
            case plain -> null;
            case insert -> LockNutKind.NON_METALLIC_INSERT;
            case all_metal -> LockNutKind.ALL_METAL;
        };
    }

    private Embedding embedding() {
        return Arrays.stream(Embedding.values())
                .filter(e -> e.name().equalsIgnoreCase(embedding))
                .findFirst()
                .orElseThrow(() -> new InputException("--embedding " + embedding + ": give one of "
                        + Arrays.stream(Embedding.values())
                                .map(e -> e.name().toLowerCase(Locale.ROOT))
                                .collect(Collectors.joining(", "))));
    }

    /** A quantity with its unit, in SI. */
    static double si(String option, String text, Dimension dimension) {
        try {
            return Quantity.parse(text, dimension).si();
        } catch (IllegalArgumentException e) {
            throw new InputException(option + " " + text + ": " + e.getMessage());
        }
    }
}
