package org.shutoffbench.harness.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.shutoffbench.harness.population.DrawnCase;
import org.shutoffbench.harness.population.ImpossibleJointException;
import org.shutoffbench.harness.population.MedianDraws;
import org.shutoffbench.harness.population.Population;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.ClosedLoop;
import org.shutoffbench.harness.scenario.Amount;
import org.shutoffbench.harness.scenario.JointFamily;
import org.shutoffbench.harness.scenario.JointKey;
import org.shutoffbench.harness.scenario.Part;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.harness.scenario.unit.Quantity;
import org.shutoffbench.harness.study.PrevailingScan.Ending;
import org.shutoffbench.harness.study.PrevailingScan.Level;
import org.shutoffbench.plant.FastPlant;
import org.shutoffbench.plant.Plant;

/** Runs the median joint of every family whose prevailing torque scatters, from none of it up to the most that is drawn. */
final class PrevailingScans {

    private static final int MOST_STEPS = 15;

    private final Bench bench;
    private final ClosedLoop loop;

    private PrevailingScans(Bench bench) {
        this.bench = bench;
        this.loop = bench.newLoop();
    }

    /** One scan for each family that has a covariate. */
    static List<PrevailingScan> of(Bench bench, List<Family> families) {
        PrevailingScans scans = new PrevailingScans(bench);
        List<PrevailingScan> found = new ArrayList<>();
        for (int family = 0; family < families.size(); family++) {
            Covariate covariate = families.get(family).covariate();
            if (covariate != null) {
                double mostNm = covariate.edges().get(covariate.classes());
                found.add(new PrevailingScan(family, scans.levels(family, mostNm)));
            }
        }
        return found;
    }

    private List<Level> levels(int family, double mostNm) {
        double stepNm = Math.max(1, Math.ceil(mostNm / MOST_STEPS));
        List<Level> levels = new ArrayList<>();
        try {
            for (double torqueNm = 0; torqueNm <= mostNm; torqueNm += stepNm) {
                levels.add(level(medianWith(family, torqueNm), torqueNm));
            }
        } catch (ImpossibleJointException tooTight) {
            return levels;
        }
        return levels;
    }

    private Level level(DrawnCase drawn, double torqueNm) {
        List<Ending> endings = new ArrayList<>();
        for (var record : bench.tighten(loop, drawn)) {
            endings.add(new Ending(record.outcome(), record.verdict(), record.blows()));
        }
        return new Level(torqueNm, blowsBeforeSnug(drawn), endings);
    }

    private int blowsBeforeSnug(DrawnCase drawn) {
        Plant plant = new FastPlant();
        plant.start(drawn.law(), drawn.impactTool(), drawn.supplyRatio());
        double snugRad = drawn.law().clamp().snugAngleRad();
        while (plant.state().nutAngleRad < snugRad
                && plant.state().timeS < bench.scenario().timeLimitS()) {
            plant.plan();
            plant.commit();
        }
        return plant.state().blows;
    }

    /** The median joint of a family, its prevailing torque set. */
    private DrawnCase medianWith(int family, double torqueNm) {
        List<JointFamily> families = new ArrayList<>(bench.scenario().families());
        families.set(family, withPrevailing(families.get(family), torqueNm));
        Scenario set = bench.scenario().withFamilies(families);
        return new Population(set).draw(family, 0, new MedianDraws(0));
    }

    private static JointFamily withPrevailing(JointFamily family, double torqueNm) {
        Map<JointKey, Amount> numbers = new EnumMap<>(family.numbers());
        numbers.put(JointKey.PREVAILING_TORQUE, new Amount.Fixed(Quantity.ofSi(torqueNm, Dimension.TORQUE)));
        Map<Part, Double> presence = new EnumMap<>(family.presence());
        presence.put(Part.PREVAILING, 1.0);
        return new JointFamily(
                family.name(),
                family.thread(),
                family.propertyClass(),
                family.yieldRule(),
                family.assembly(),
                numbers,
                presence,
                family.damageEveryTurn());
    }
}
