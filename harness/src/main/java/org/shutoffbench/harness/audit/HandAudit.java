package org.shutoffbench.harness.audit;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.draw.Stream;
import org.shutoffbench.harness.population.DrawSource;
import org.shutoffbench.harness.population.DrawnCase;
import org.shutoffbench.harness.population.Population;
import org.shutoffbench.harness.population.ScatterSource;
import org.shutoffbench.harness.run.Outcome;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.scenario.AuditKey;
import org.shutoffbench.harness.scenario.AuditRecipe;
import org.shutoffbench.harness.scenario.Level;
import org.shutoffbench.harness.scenario.unit.Quantity;
import org.shutoffbench.joint.JointLaw;

/**
 * The hand audit of a scenario's joints. A pure function of the population, the joint number and what the tool left: every
 * strategy's joint meets the same auditor on the same day. Immutable.
 */
public final class HandAudit {

    private static final ScatterSource SKIPPED =
            ScatterSource.of(ScatterSource.Group.AUDIT, "audit skipped", Stream.AUDIT, Level.REPEAT);

    private final Population population;
    private final AuditRecipe recipe;
    private final Map<AuditKey, ScatterSource> sources = new EnumMap<>(AuditKey.class);

    public HandAudit(Population population, AuditRecipe recipe) {
        this.population = population;
        this.recipe = recipe;
        for (AuditKey key : AuditKey.values()) {
            sources.put(key, ScatterSource.of(ScatterSource.Group.AUDIT, key.title(), Stream.AUDIT, Level.REPEAT));
        }
    }

    /** Least reading that is accepted on a family, N m. */
    public double lowestNm(int family) {
        Quantity given = recipe.lowest();
        double limit = given != null
                ? given.si()
                : population.target(family).clampingTorqueNm()
                        * (1 - population.scenario().judgement().window().si());
        return limit + allowanceNm(family);
    }

    /** Greatest reading that is accepted on a family, N m; infinite where there is no such limit. */
    public double highestNm(int family) {
        Quantity given = recipe.highest();
        return given == null ? Double.POSITIVE_INFINITY : given.si() + allowanceNm(family);
    }

    private double allowanceNm(int family) {
        return recipe.allowanceNm(population.scenario().families().get(family).name());
    }

    /** Audits a joint as a tightening left it. */
    public AuditResult audit(TighteningRecord row) {
        return audit(population.draw(row.family(), row.joint()), row);
    }

    /** The same for a joint that is drawn already. */
    public AuditResult audit(DrawnCase drawn, TighteningRecord row) {
        DrawSource draws = population.keyed(row.family(), row.joint());
        if (draws.uniform(SKIPPED) < recipe.skipped().si()) {
            return new AuditResult(AuditResult.Decision.SKIPPED, Double.NaN);
        }
        HandTool tool = new HandTool(
                value(AuditKey.GAIN, draws),
                value(AuditKey.REPEAT_ERROR, draws),
                recipe.resolution().si());
        double torqueNm = row.outcome() == Outcome.FRACTURED
                ? 0
                : movement(drawn.law(), row, draws).peakNm();
        double readingNm = tool.readingNm(torqueNm);
        return new AuditResult(decision(row.family(), readingNm), readingNm);
    }

    private AuditResult.Decision decision(int family, double readingNm) {
        if (readingNm < lowestNm(family)) {
            return AuditResult.Decision.REJECTED_LOW;
        }
        return readingNm > highestNm(family) ? AuditResult.Decision.REJECTED_HIGH : AuditResult.Decision.ACCEPTED;
    }

    private FirstMovement movement(JointLaw law, TighteningRecord row, DrawSource draws) {
        double nutAngleRad = Math.toRadians(row.nutAngleDeg()) + law.clamp().snugAngleRad();
        double kappaOnM = row.clampForceN() > 1
                ? row.clampingTorqueNm() / row.clampForceN()
                : law.torqueTensionAt(nutAngleRad).kappaOnM();
        return FirstMovement.of(
                new FirstMovement.Tightened(law, kappaOnM, row.clampForceN(), nutAngleRad),
                new FirstMovement.Rest(
                        value(AuditKey.EMBEDDING, draws),
                        value(AuditKey.RELAXATION, draws),
                        value(AuditKey.DELAY, draws)),
                value(AuditKey.STICTION, draws),
                value(AuditKey.OVERSHOOT, draws));
    }

    private double value(AuditKey key, DrawSource draws) {
        return recipe.amount(key).value(level -> draws.uniform(source(key)));
    }

    private ScatterSource source(AuditKey key) {
        @Nullable ScatterSource found = sources.get(key);
        if (found == null) {
            throw new IllegalStateException("no source of " + key);
        }
        return found;
    }
}
