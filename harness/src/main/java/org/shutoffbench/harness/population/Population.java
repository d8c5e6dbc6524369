package org.shutoffbench.harness.population;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shutoffbench.controller.Target;
import org.shutoffbench.draw.DrawKey;
import org.shutoffbench.harness.scenario.Grouping;
import org.shutoffbench.harness.scenario.JointFamily;
import org.shutoffbench.harness.scenario.JudgedQuantity;
import org.shutoffbench.harness.scenario.Judgement;
import org.shutoffbench.harness.scenario.PinnedDraws;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.joint.strength.PropertyClass;

/**
 * All joints that a scenario can draw under one root seed. Immutable: any thread may draw any joint at any time and gets the
 * same one.
 */
public final class Population {

    private final Scenario scenario;
    private final List<DrawKey> keys;
    private final List<FamilyDraw> draws;
    private final int firstJoint;

    /** The population of a scenario; its own root seed is replaced by the given one, pinned draws are not. */
    public Population(Scenario scenario, long rootSeed) {
        this.scenario = scenario;
        List<DrawKey> familyKeys = new ArrayList<>();
        List<FamilyDraw> familyDraws = new ArrayList<>();
        PinnedDraws pinned = scenario.pinned();
        for (JointFamily family : scenario.families()) {
            familyKeys.add(
                    pinned == null
                            ? DrawKey.of(rootSeed, scenario.name(), family.name())
                            : DrawKey.of(pinned.seed(), pinned.scenario(), pinned.family()));
            familyDraws.add(new FamilyDraw(scenario, family));
        }
        this.keys = List.copyOf(familyKeys);
        this.draws = List.copyOf(familyDraws);
        this.firstJoint = pinned == null ? 0 : pinned.joint();
    }

    /** The population under the scenario's own root seed. */
    public Population(Scenario scenario) {
        this(scenario, scenario.seed());
    }

    public Scenario scenario() {
        return scenario;
    }

    /** Every source of scatter of a family, in the order of the scenario's keys. */
    public List<ScatterSource> sources(int family) {
        return draws.get(family).sources();
    }

    /**
     * Joint number k of a family, from 0.
     *
     * @throws ImpossibleJointException where no such joint can be tightened
     */
    public DrawnCase draw(int family, int joint) {
        return draw(family, joint, keyed(family, joint));
    }

    /**
     * The same with draws from elsewhere.
     *
     * @throws ImpossibleJointException where no such joint can be tightened
     */
    public DrawnCase draw(int family, int joint, DrawSource source) {
        if (joint < 0) {
            throw new IllegalArgumentException("joints count from 0");
        }
        return draws.get(family).draw(family, joint, indices(joint), source);
    }

    /**
     * What the tool is set to on a family: the target torque, or the torque that makes the target clamp force on the median
     * joint, as someone who knows the nominal friction would set it.
     */
    public Target target(int family) {
        Judgement judgement = scenario.judgement();
        double torqueNm = judgement.target().si();
        if (judgement.quantity() == JudgedQuantity.CLAMP_FORCE) {
            torqueNm *= medianKappaOnM(family);
        }
        return new Target((float) torqueNm, (float) judgement.window().si());
    }

    /** Torque per clamp force of a family's median joint, m. */
    public double medianKappaOnM(int family) {
        return draw(family, 0, new MedianDraws(0)).law().torqueTension().kappaOnM();
    }

    /** What should worry someone about the families, though they can be tightened: one line each. */
    public List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        for (int family = 0; family < draws.size(); family++) {
            JointFamily joints = scenario.families().get(family);
            PropertyClass bolt = joints.propertyClass();
            double yieldN = draw(family, 0, new MedianDraws(0)).law().yielding().yieldForceN();
            if (bolt != null && bolt.nutProofLoadN(joints.thread().screw()) < yieldN) {
                warnings.add(String.format(
                        Locale.ROOT,
                        "%s: the nut's thread may strip: its proof load of %.1f kN lies below the bolt's yield at %.1f kN",
                        joints.name(),
                        1e-3 * bolt.nutProofLoadN(joints.thread().screw()),
                        1e-3 * yieldN));
            }
        }
        return warnings;
    }

    /** The first impossible joint among the first joints of every family; empty where all of them can be tightened. */
    public Optional<ImpossibleJointException> firstImpossible(int jointsPerFamily) {
        for (int family = 0; family < draws.size(); family++) {
            for (int joint = 0; joint < jointsPerFamily; joint++) {
                try {
                    draw(family, joint);
                } catch (ImpossibleJointException impossible) {
                    return Optional.of(impossible);
                }
            }
        }
        return Optional.empty();
    }

    /** The keyed draws of a joint, for those who replace some of them. */
    public DrawSource keyed(int family, int joint) {
        Indices at = indices(joint);
        return new KeyedDraws(keys.get(family), at.lot(), at.piece(), at.run(), at.tool());
    }

    private Indices indices(int joint) {
        Grouping groups = scenario.grouping();
        int run = firstJoint + joint;
        return new Indices(groups.lot(run), groups.piece(run), groups.repeat(run), run, groups.tool(run));
    }

    /** Indices of one tightening at every level. */
    record Indices(int lot, int piece, int repeat, int run, int tool) {}
}
