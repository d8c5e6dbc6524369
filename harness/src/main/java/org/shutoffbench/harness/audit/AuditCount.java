package org.shutoffbench.harness.audit;

import java.util.ArrayList;
import java.util.List;
import org.shutoffbench.harness.population.DrawnCase;
import org.shutoffbench.harness.population.Population;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.scenario.AuditRecipe;
import org.shutoffbench.harness.scenario.Judgement;

/** Audits every tightening of a run, by family and strategy. Rows come from one thread, in any order. */
public final class AuditCount {

    private final Population population;
    private final HandAudit audit;
    private final int strategies;
    private final List<AuditTally> tallies = new ArrayList<>();
    private final double[] lowestNm;
    private final double[] lowestN;
    private int drawnFamily = -1;
    private int drawnJoint = -1;
    private DrawnCase drawn;

    /**
     * @param strategies how many strategies the rows tell apart
     */
    public AuditCount(Population population, AuditRecipe recipe, int strategies) {
        this.population = population;
        this.audit = new HandAudit(population, recipe);
        this.strategies = strategies;
        int families = population.scenario().families().size();
        this.lowestNm = new double[families];
        this.lowestN = new double[families];
        Judgement judgement = population.scenario().judgement();
        for (int f = 0; f < families; f++) {
            lowestNm[f] = population.target(f).clampingTorqueNm()
                    * (1 - judgement.window().si());
            lowestN[f] = lowestNm[f] / population.medianKappaOnM(f);
            for (int s = 0; s < strategies; s++) {
                tallies.add(new AuditTally(population.scenario().grouping()));
            }
        }
        this.drawn = population.draw(0, 0);
    }

    /** Audits one tightening. */
    public void add(TighteningRecord row) {
        if (row.family() != drawnFamily || row.joint() != drawnJoint) {
            drawn = population.draw(row.family(), row.joint());
            drawnFamily = row.family();
            drawnJoint = row.joint();
        }
        tally(row.family(), row.strategy())
                .add(row, FailureMode.of(row, lowestNm[row.family()], lowestN[row.family()]), audit.audit(drawn, row));
    }

    public HandAudit audit() {
        return audit;
    }

    public AuditTally tally(int family, int strategy) {
        return tallies.get(family * strategies + strategy);
    }
}
