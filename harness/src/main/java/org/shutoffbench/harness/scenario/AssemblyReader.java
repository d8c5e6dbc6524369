package org.shutoffbench.harness.scenario;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.scenario.file.Section;
import org.shutoffbench.harness.scenario.file.Tree;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.harness.scenario.unit.Quantity;
import org.shutoffbench.joint.stiffness.Material;
import org.shutoffbench.joint.stiffness.PartsMethod;

/** Reads how a joint is put together. */
final class AssemblyReader {

    /** Keys that make sense only where the stiffness is computed. */
    private static final List<String> KEYS =
            List.of("layers", "washers", "hole", "bolt_length", "parts_method", "springs");

    private static final Range SIZE = Range.of(Dimension.LENGTH, "0.1 mm", "10 m");
    private static final Range SPRING = Range.of(Dimension.STIFFNESS, "1 N/mm", "100000 kN/mm");

    private final Section family;

    AssemblyReader(Section family) {
        this.family = family;
    }

    /** The assembly; null where the family gives its stiffness itself. */
    @Nullable
    Assembly read() {
        boolean computed = family.has("grip") || family.has("layers");
        if (!computed) {
            KEYS.stream()
                    .filter(family::has)
                    .forEach(key -> family.refuse(
                            key,
                            "serves to compute the stiffness, which is given here",
                            "leave it out, or give grip or layers"));
            return null;
        }
        if (family.has("grip") && family.has("layers")) {
            family.refuse("grip", "is told twice", "the layers and washers tell the grip; leave one of the two out");
        }
        List<Assembly.Plate> layers = layers();
        int washers = (int) family.wholeNumber("washers", 0, 2, 0);
        PartsMethod method = method();
        return new Assembly(layers, washers, size("hole"), size("bolt_length"), method, springs());
    }

    private @Nullable Quantity size(String key) {
        return size(family, key);
    }

    private static @Nullable Quantity size(Section section, String key) {
        return new AmountReader(Dimension.LENGTH, SIZE, JointKey.LEVELS, section.problems()).readFixed(section, key);
    }

    private PartsMethod method() {
        List<String> titles =
                Arrays.stream(PartsMethod.values()).map(PartsMethod::title).toList();
        return PartsMethod.named(family.choice("parts_method", titles, PartsMethod.VDI_CONE.title()));
    }

    private List<Assembly.Plate> layers() {
        List<Assembly.Plate> layers = new ArrayList<>();
        Tree value = family.take("layers");
        if (value == null) {
            return layers;
        }
        if (!(value instanceof Tree.Sequence list)) {
            family.problem(
                    "layers",
                    "a list belongs here: [{material: steel, thickness: 10 mm, width: 60 mm, hole: 13.5 mm}]");
            return layers;
        }
        for (Tree item : list.items()) {
            String path = family.path("layers[" + layers.size() + "]");
            Assembly.Plate plate =
                    item instanceof Tree.Branch branch ? plate(new Section(branch, path, family.problems())) : null;
            if (plate != null) {
                layers.add(plate);
            } else if (!(item instanceof Tree.Branch)) {
                family.problems().add(item.place(), path, "found " + item.shown(), "a map belongs here");
            }
        }
        return layers;
    }

    private static Assembly.@Nullable Plate plate(Section section) {
        List<String> titles =
                Arrays.stream(Material.values()).map(Material::title).toList();
        Material material = Material.named(section.choice("material", titles, Material.STEEL.title()));
        for (String key : List.of("thickness", "width", "hole")) {
            if (!section.has(key)) {
                section.missing(key, "a layer has thickness, width and hole");
            }
        }
        Quantity thickness = size(section, "thickness");
        Quantity width = size(section, "width");
        Quantity hole = size(section, "hole");
        section.finish();
        return thickness == null || width == null || hole == null
                ? null
                : new Assembly.Plate(material, thickness, width, hole);
    }

    private List<Quantity> springs() {
        List<Quantity> springs = new ArrayList<>();
        Tree value = family.take("springs");
        if (value instanceof Tree.Sequence list) {
            AmountReader reader = new AmountReader(Dimension.STIFFNESS, SPRING, JointKey.LEVELS, family.problems());
            for (Tree item : list.items()) {
                if (reader.read(item, family.path("springs")) instanceof Amount.Fixed fixed) {
                    springs.add(fixed.quantity());
                }
            }
        } else if (value != null) {
            family.problem("springs", "a list of stiffnesses belongs here, for example [50 kN/mm]");
        }
        return springs;
    }
}
