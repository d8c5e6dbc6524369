package org.shutoffbench.controller.strategy.adaptive;

import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.BASE;
import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.COUNT;
import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.LOG_RATE;
import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.LOG_SEATING;
import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.PREVAILING;
import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.PREVAILING_START;
import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.SCALE_ERROR;
import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.SNUG;

import java.util.Arrays;

/**
 * Maximum a posteriori fit of the joint law to the nut's path: every stretch says that the work to turn the nut over it equals
 * what its blows transmitted. Damped Gauss-Newton in small pieces: one call of {@link #work} sums a few stretches or
 * solves once.
 */
final class JointFit {

    /** Stretches that one call of {@link #work} sums. */
    static final int STRETCHES_PER_CALL = 8;

    /** Relative error of one blow's transmission, times torque: at low torque the nut moves for long, N m. */
    private static final float LOW_TORQUE_ERROR_NM = 0.3f;

    private static final float LEAST_NM = 3;

    /** Whitened residuals beyond this weigh less. */
    private static final float HUBER = 2.5f;
    /** A run-down into the joint is over before this angle is used up, rad. */
    private static final float RUNDOWN_RAD = (float) (4 * Math.PI);

    /** Torque pulses that are looked at, from the newest. */
    private static final int PULSES = 4;

    private static final int LAST = COUNT - 1;

    private final ToolCalibration tool;
    private final JointPrior prior;
    private final BlowHistory history;

    final JointLawGuess guess = new JointLawGuess();
    private final JointLawGuess trial = new JointLawGuess();
    private final NormalEquations acceptedSums = new NormalEquations(COUNT);
    private final NormalEquations sums = new NormalEquations(COUNT);
    private final float[] before = new float[COUNT - 1];
    private final float[] row = new float[COUNT];
    private final float[] step = new float[COUNT];

    private float energyBefore;
    private float cost;
    private float acceptedCost;
    private float damping;
    private float tauPerNm;
    private int next;
    private int iterations;
    private int iterationsAllowed;
    private boolean first;
    private float rundownJ;
    private float rundownPrecision;
    private float tolerance;

    boolean finished = true;

    JointFit(ToolCalibration tool, JointPrior prior, BlowHistory history) {
        this.tool = tool;
        this.prior = prior;
        this.history = history;
    }

    /** What a free run-down brought into the joint, J, and its relative standard deviation; 0 J if there was none. */
    void setRundown(float energyJ, float spread) {
        rundownJ = energyJ;
        float deviationJ = spread * energyJ;
        rundownPrecision = energyJ > 0 ? 1 / (deviationJ * deviationJ) : 0;
    }

    /** Forgets everything. */
    void reset() {
        guess.reset();
        trial.reset();
        acceptedSums.reset();
        sums.reset();
        Arrays.fill(before, 0);
        Arrays.fill(row, 0);
        Arrays.fill(step, 0);
        energyBefore = 0;
        cost = 0;
        acceptedCost = 0;
        damping = 0;
        tauPerNm = 0;
        next = 0;
        iterations = 0;
        iterationsAllowed = 0;
        first = false;
        rundownJ = 0;
        rundownPrecision = 0;
        tolerance = 0;
        finished = true;
    }

    /** Begins a fit from {@link #guess}. */
    void begin(int mostIterations, float toleranceNm) {
        trial.copyFrom(guess);
        trial.prepare();
        iterationsAllowed = mostIterations;
        tolerance = toleranceNm;
        iterations = 0;
        damping = 1e-3f;
        first = true;
        finished = history.size == 0;
        float energy = 0;
        float blows = 0;
        for (int i = Math.max(0, history.size - 4); i < history.size; i++) {
            energy += history.energyJ[i];
            blows += history.blows[i];
        }
        tauPerNm = tool.tauPerNm(energy / Math.max(1, blows));
        restart();
    }

    private void restart() {
        sums.clear();
        cost = prior.addTo(sums.matrix, sums.right, trial.value);
        next = 0;
        addPulses();
        if (rundownPrecision > 0) {
            addRundown();
        }
        look(history.startRad[0]);
    }

    private void look(float angleRad) {
        trial.look(angleRad);
        energyBefore = trial.energyJ;
        System.arraycopy(trial.slope, 0, before, 0, LAST);
    }

    private void addRundown() {
        look(-RUNDOWN_RAD);
        trial.look(0);
        for (int i = 0; i < LAST; i++) {
            row[i] = before[i] - trial.slope[i];
        }
        row[BASE] = 0;
        row[SCALE_ERROR] = 0;
        float into = trial.energyJ - energyBefore - trial.value[BASE] * RUNDOWN_RAD;
        add(rundownJ - into, rundownPrecision);
    }

    /** The newest torque pulses together say what the nut's torque is; their error is common to them, so they are one row. */
    private void addPulses() {
        Arrays.fill(row, 0);
        float logRatio = 0;
        int pulses = 0;
        for (int i = Math.max(0, history.size - PULSES); i < history.size; i++) {
            if (history.pulseNm[i] > 0) {
                float end = history.startRad[i + 1];
                float torque = Math.max(LEAST_NM, trial.clampingNm(end) + trial.freeNm(end));
                trial.addTorqueSlopes(end, -1 / torque, row);
                logRatio += (float) Math.log(history.pulseNm[i] / torque);
                pulses++;
            }
        }
        if (pulses > 0) {
            float share = 1f / pulses;
            for (int p = 0; p < LAST; p++) {
                row[p] *= share;
            }
            add(logRatio * share, 1 / (tool.pulseSpread * tool.pulseSpread));
        }
    }

    private void add(float residual, float precision) {
        float square = residual * residual * precision;
        float weight = precision;
        if (square > HUBER * HUBER) {
            float size = (float) Math.sqrt(square);
            weight *= HUBER / size;
            square = HUBER * (2 * size - HUBER);
        }
        cost += square;
        sums.add(row, residual, weight);
    }

    /** Does a bounded piece of work. */
    void work() {
        if (finished) {
            return;
        }
        if (next < history.size) {
            int end = Math.min(history.size, next + STRETCHES_PER_CALL);
            for (; next < end; next++) {
                addStretch(next);
            }
        }
        if (next >= history.size) {
            judgeAndStep();
        }
    }

    private void addStretch(int i) {
        float length = Math.max(1e-4f, history.lengthRad(i));
        float energy = history.energyJ[i];
        trial.look(history.startRad[i + 1]);
        float needed = trial.energyJ - energyBefore;
        float torque = needed / length;
        tool.lookUp(torque, tauPerNm);
        float given = energy * tool.share;
        float response = 1 - trial.scale * energy * tool.sharePerNm / length;
        for (int p = 0; p < LAST; p++) {
            row[p] = response * (before[p] - trial.slope[p]);
            before[p] = trial.slope[p];
        }
        row[SCALE_ERROR] = given;
        energyBefore = trial.energyJ;
        float end = trial.torqueNm;
        float relative = LOW_TORQUE_ERROR_NM / Math.max(LEAST_NM, torque);
        float variance = end * end * history.varianceRad2[i]
                + given * given * (history.energyVariance[i] + relative * relative / history.blows[i]);
        add(trial.scale * given - needed, 1 / variance);
    }

    private void judgeAndStep() {
        if (first || cost < acceptedCost * 1.0005f + 1e-3f) {
            boolean small = !first && Math.abs(stepNm()) < tolerance;
            guess.copyFrom(trial);
            acceptedSums.copyFrom(sums);
            acceptedCost = cost;
            damping = Math.max(1e-4f, damping * 0.2f);
            first = false;
            if (small) {
                finish();
                return;
            }
        } else {
            damping = damping * 10 + 1e-2f;
        }
        iterations++;
        if (iterations >= iterationsAllowed) {
            finish();
            return;
        }
        acceptedSums.factor(damping);
        acceptedSums.solve(acceptedSums.right, step);
        trial.copyFrom(guess);
        move(LOG_RATE, 0.5f, -10, 10);
        move(SNUG, 0.3f, -1000, 1000);
        move(LOG_SEATING, 0.5f, -6, 2);
        move(BASE, 5, 0, 1000);
        move(PREVAILING, 5, 0, 1000);
        move(PREVAILING_START, 1, -1000, 1000);
        move(SCALE_ERROR, 0.03f, -0.5f, 0.5f);
        trial.prepare();
        restart();
    }

    private void move(int p, float most, float least, float greatest) {
        float moved = guess.value[p] + Math.max(-most, Math.min(most, step[p]));
        trial.value[p] = Math.max(least, Math.min(greatest, moved));
        step[p] = trial.value[p] - guess.value[p];
    }

    private float stepNm() {
        float end = history.endRad();
        return trial.clampingNm(end) - guess.clampingNm(end);
    }

    private void finish() {
        finished = true;
        acceptedSums.factor(0);
    }

    /** Mean squared, whitened residual of the guess, prior included: about 1 where the law of the joint holds. */
    float misfit() {
        return acceptedCost / (history.size + 1);
    }

    /** Standard deviation of the clamping torque at an angle, N m. */
    float deviationNm(float angleRad) {
        for (int p = 0; p < COUNT; p++) {
            row[p] = 0;
        }
        guess.clampingSlopes(angleRad, row);
        return (float) Math.sqrt(acceptedSums.variance(row));
    }
}
