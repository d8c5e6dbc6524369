package org.shutoffbench.joint.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.joint.stiffness.Bolt;
import org.shutoffbench.joint.stiffness.JointStiffness;
import org.shutoffbench.joint.stiffness.Layer;
import org.shutoffbench.joint.stiffness.LayerStack;
import org.shutoffbench.joint.stiffness.Material;
import org.shutoffbench.joint.stiffness.PartsMethod;
import org.shutoffbench.joint.strength.AssemblyLimit;
import org.shutoffbench.joint.strength.PropertyClass;
import org.shutoffbench.joint.thread.HexDimensions;
import org.shutoffbench.joint.thread.ScrewThread;
import org.shutoffbench.joint.thread.ThreadDesignation;

/**
 * A through-bolted joint: hexagon bolt, nut, washers and clamped layers. A joint that cannot be put together is refused at
 * construction with the reason.
 *
 * <p>Several bolts of one flange that relax each other are out of scope.
 */
public final class BoltedAssembly {

    private final ScrewThread thread;
    private final PropertyClass propertyClass;
    private final HexDimensions hexagon;
    private final BoltLength boltLength;
    private final LayerStack stack;
    private final Bolt bolt;
    private final PartsMethod method;
    private final JointStiffness stiffness;

    private BoltedAssembly(Builder b) {
        thread = b.thread;
        propertyClass = b.propertyClass;
        hexagon = b.hexagon();
        method = b.method;
        stack = new LayerStack(b.allLayers(hexagon), hexagon.bearingFaceM());
        double grip = stack.gripM();
        requireClearance();
        requireEngagement(grip);
        boltLength = b.boltLength(grip, hexagon);
        requireReach(grip);
        double shank = Math.min(boltLength.shankM(), grip);
        bolt = new Bolt(thread, b.boltMaterial.elasticModulusPa(), shank, grip - shank);
        stiffness = new JointStiffness(bolt.complianceMPerN(), method.complianceMPerN(stack, thread), b.springsNPerM);
    }

    /** Starts a joint of a thread and a property class. */
    public static Builder of(ScrewThread thread, PropertyClass propertyClass) {
        return new Builder(thread, propertyClass);
    }

    private void requireClearance() {
        for (Layer layer : stack.layers()) {
            if (layer.holeDiameterM() < thread.majorDiameterM()) {
                throw refused(
                        "hole of %.4g mm has negative clearance to a bolt of %.4g mm",
                        layer.holeDiameterM(), thread.majorDiameterM());
            }
        }
    }

    private void requireEngagement(double gripM) {
        if (gripM < hexagon.nutHeightM()) {
            throw refused(
                    "grip of %.4g mm is shorter than the thread engagement of %.4g mm (nut height)",
                    gripM, hexagon.nutHeightM());
        }
    }

    private void requireReach(double gripM) {
        if (boltLength.lengthM() < gripM + hexagon.nutHeightM()) {
            throw refused(
                    "bolt of %.4g mm does not reach through grip and nut, %.4g mm",
                    boltLength.lengthM(), gripM + hexagon.nutHeightM());
        }
        if (boltLength.shankM() > gripM) {
            throw refused(
                    "unthreaded shank of %.4g mm is longer than the grip of %.4g mm: the nut would jam on it",
                    boltLength.shankM(), gripM);
        }
    }

    private static IllegalArgumentException refused(String format, double aM, double bM) {
        return new IllegalArgumentException(String.format(Locale.ROOT, format, aM * 1e3, bM * 1e3));
    }

    public ScrewThread thread() {
        return thread;
    }

    public PropertyClass propertyClass() {
        return propertyClass;
    }

    public HexDimensions hexagon() {
        return hexagon;
    }

    public BoltLength boltLength() {
        return boltLength;
    }

    /** Clamped layers from the head on, washers included. */
    public LayerStack stack() {
        return stack;
    }

    public Bolt bolt() {
        return bolt;
    }

    /** How the parts were counted. */
    public PartsMethod method() {
        return method;
    }

    public JointStiffness stiffness() {
        return stiffness;
    }

    /** Effective bearing diameter under the nut, D_b = (d_w + d_h)/2 with the hole that the nut turns on, m. */
    public double bearingDiameterM() {
        List<Layer> layers = stack.layers();
        return (hexagon.bearingFaceM() + layers.get(layers.size() - 1).holeDiameterM()) / 2;
    }

    /** Length of thread that stands out past the bearing face of the seated nut, m. */
    public double lengthPastNutFaceM() {
        return boltLength.lengthM() - stack.gripM();
    }

    /** Clamp force at which the bolt yields at a thread friction. */
    public AssemblyLimit limit(double threadFriction) {
        return new AssemblyLimit(thread, propertyClass.strength(thread).yieldPa(), threadFriction);
    }

    /** Whether the nut's thread may strip before the bolt yields: its proof load lies below the yield force. */
    public boolean mayStrip(double threadFriction) {
        return propertyClass.nutProofLoadN(thread) < limit(threadFriction).yieldForceN();
    }

    /** Number of faces between clamped parts, bearing faces of head and nut not counted. */
    public int innerInterfaces() {
        return stack.layers().size() - 1;
    }

    /** Collects what is known of a joint; what is not given is taken from the standard sizes. */
    public static final class Builder {

        /** Width of parts over the bearing face where no layer gives it (assumed). */
        private static final double WIDTH_PER_BEARING_FACE = 3;

        private final ScrewThread thread;
        private final PropertyClass propertyClass;
        private final List<Double> springsNPerM = new ArrayList<>();
        private List<Layer> layers = List.of();
        private List<Washer> washers = List.of();
        private double gripM = Double.NaN;
        private double holeM = Double.NaN;
        private double bearingFaceM = Double.NaN;
        private double nutHeightM = Double.NaN;
        private double boltLengthM = Double.NaN;
        private double threadLengthM = Double.NaN;
        private Material boltMaterial;
        private PartsMethod method = PartsMethod.VDI_CONE;

        private Builder(ScrewThread thread, PropertyClass propertyClass) {
            this.thread = thread;
            this.propertyClass = propertyClass;
            this.boltMaterial = propertyClass == PropertyClass.A4_70 ? Material.STAINLESS_STEEL : Material.STEEL;
        }

        /** Clamped length between the faces of head and nut, washers included, m. Steel, where no layers are given. */
        public Builder grip(double gripM) {
            this.gripM = gripM;
            return this;
        }

        /** Clamped parts from the head on, without washers; the grip follows from them. */
        public Builder layers(List<Layer> layers) {
            this.layers = List.copyOf(layers);
            return this;
        }

        /** No, one (under the nut) or two washers (head first). */
        public Builder washers(List<Washer> washers) {
            if (washers.size() > 2) {
                throw new IllegalArgumentException("a joint has at most two washers; give more as layers");
            }
            this.washers = List.copyOf(washers);
            return this;
        }

        /** Clearance hole of a joint given by its grip, m. */
        public Builder hole(double holeM) {
            this.holeM = holeM;
            return this;
        }

        /** d_w of head and nut, m. */
        public Builder bearingFace(double bearingFaceM) {
            this.bearingFaceM = bearingFaceM;
            return this;
        }

        /** Height of the nut, m. */
        public Builder nutHeight(double nutHeightM) {
            this.nutHeightM = nutHeightM;
            return this;
        }

        /** Length of the bolt from under its head, m. */
        public Builder boltLength(double boltLengthM) {
            this.boltLengthM = boltLengthM;
            return this;
        }

        /** Thread length of the bolt, m. */
        public Builder threadLength(double threadLengthM) {
            this.threadLengthM = threadLengthM;
            return this;
        }

        public Builder boltMaterial(Material boltMaterial) {
            this.boltMaterial = boltMaterial;
            return this;
        }

        public Builder method(PartsMethod method) {
            this.method = method;
            return this;
        }

        /** A gasket, spring washer or soft spacer in series, N/m. */
        public Builder spring(double stiffnessNPerM) {
            springsNPerM.add(stiffnessNPerM);
            return this;
        }

        /**
         * The joint.
         *
         * @throws IllegalArgumentException with the reason, where it cannot be put together
         */
        public BoltedAssembly build() {
            return new BoltedAssembly(this);
        }

        private HexDimensions hexagon() {
            @Nullable
            HexDimensions standard = ThreadDesignation.hexagonOf(thread).orElse(null);
            if (standard == null && (Double.isNaN(bearingFaceM) || Double.isNaN(nutHeightM))) {
                throw new IllegalArgumentException("no standard bolt for thread " + thread.designation()
                        + ": give bearing face, hole and nut height");
            }
            double d = thread.majorDiameterM();
            return new HexDimensions(
                    standard == null ? bearingFaceM : standard.acrossFlatsM(),
                    given(bearingFaceM, standard == null ? 0 : standard.bearingFaceM()),
                    given(holeM, standard == null ? 1.1 * d : standard.clearanceHoleM()),
                    standard == null ? 0.65 * d : standard.headHeightM(),
                    given(nutHeightM, standard == null ? 0 : standard.nutHeightM()));
        }

        private List<Layer> allLayers(HexDimensions hexagon) {
            List<Layer> all = new ArrayList<>(layers.isEmpty() ? List.of(singleLayer(hexagon)) : layers);
            if (!washers.isEmpty()) {
                all.add(washers.get(washers.size() - 1).asLayer());
            }
            if (washers.size() == 2) {
                all.add(0, washers.get(0).asLayer());
            }
            return all;
        }

        private Layer singleLayer(HexDimensions hexagon) {
            double washersM = washers.stream().mapToDouble(Washer::thicknessM).sum();
            if (!(gripM > washersM)) {
                throw new IllegalArgumentException("give layers, or a grip longer than the washers");
            }
            double width = WIDTH_PER_BEARING_FACE * hexagon.bearingFaceM();
            return Layer.of(Material.STEEL, gripM - washersM, width, hexagon.clearanceHoleM());
        }

        private BoltLength boltLength(double grip, HexDimensions hexagon) {
            if (!layers.isEmpty() && !Double.isNaN(gripM) && Math.abs(gripM - grip) > 1e-6) {
                throw refused("grip of %.4g mm differs from layers and washers, %.4g mm", gripM, grip);
            }
            if (Double.isNaN(boltLengthM)) {
                return BoltLength.shortestFor(thread, grip, hexagon.nutHeightM());
            }
            BoltLength standard = BoltLength.standard(thread, boltLengthM);
            return Double.isNaN(threadLengthM) ? standard : new BoltLength(boltLengthM, threadLengthM);
        }

        private static double given(double value, double otherwise) {
            return Double.isNaN(value) ? otherwise : value;
        }
    }
}
