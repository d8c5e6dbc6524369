package org.shutoffbench.harness.study.tuning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.SettingsTable;
import org.shutoffbench.harness.scenario.StrategyEntry;
import org.shutoffbench.harness.study.TuningNote;
import org.shutoffbench.harness.study.tuning.SettingsSearch.Candidate;

/**
 * Sets every strategy of a scenario up with the same budget.
 *
 * <p>{@code home} tunes on one family, as a user sets a tool up on one joint; {@code all} on all families pooled. First the
 * settings that decide when to stop: most joints in the window, ties by mean squared deviation. Then those that only decide
 * between verdicts: fewest silent misses with REACHED on 98.5 % of the joints in the window.
 */
public final class Tuning {

    /**
     * What every strategy gets.
     *
     * @param evaluations for its tuned settings, and as many again for its verdict settings
     * @param jointsPerFamily on which each candidate is tried
     */
    public record Budget(int evaluations, int jointsPerFamily) {

        /** The budget of committed tables. */
        public static final Budget STANDARD = new Budget(100, 200);
    }

    /** Least share of joints in the window on which the chosen verdict settings say REACHED. */
    public static final double REACHED_SHARE = 0.985;

    /** Offsets of the seeds of tuning and validation from the scenario's, which stays for the joints that are judged. */
    public static final long TUNING_SEED_OFFSET = 1_000_003;

    public static final long VALIDATION_SEED_OFFSET = 2_000_003;

    private final Scenario scenario;
    private final StrategyCatalogue catalogue;
    private final List<Integer> families;
    private final Budget budget;
    private final int threads;
    private final Consumer<String> log;

    /**
     * @param families indices of the families to tune on
     * @param budget the same for every strategy
     * @param threads at least 1; changes no result
     * @param log receives one line per strategy and per candidate
     */
    public Tuning(
            Scenario scenario,
            StrategyCatalogue catalogue,
            List<Integer> families,
            Budget budget,
            int threads,
            Consumer<String> log) {
        this.scenario = scenario;
        this.catalogue = catalogue;
        this.families = List.copyOf(families);
        this.budget = budget;
        this.threads = threads;
        this.log = log;
    }

    /** Indices of all families of a scenario. */
    public static List<Integer> allFamilies(Scenario scenario) {
        return IntStream.range(0, scenario.families().size()).boxed().toList();
    }

    /** Tunes every strategy once, whatever settings the scenario names for it. */
    public SettingsTable table(String name) throws InterruptedException {
        Map<String, StrategyEntry> byLabel = new LinkedHashMap<>();
        scenario.strategies().forEach(entry -> byLabel.putIfAbsent(entry.label(), entry));
        Map<String, String> made = new LinkedHashMap<>();
        made.put("scenario", scenario.name());
        made.put(
                "families",
                String.join(
                        ", ",
                        families.stream()
                                .map(f -> scenario.families().get(f).name())
                                .toList()));
        made.put("tuning seed", Long.toString(scenario.seed() + TUNING_SEED_OFFSET));
        made.put("validation seed", Long.toString(scenario.seed() + VALIDATION_SEED_OFFSET));
        made.put("budget", budget.evaluations() + " evaluations of " + budget.jointsPerFamily() + " joints per family");
        Map<String, Map<String, String>> values = new LinkedHashMap<>();
        for (StrategyEntry entry : byLabel.values()) {
            Result result = tune(entry);
            values.put(entry.label(), result.written());
            made.put(entry.label(), result.summary());
            StrategyEntry.External external = entry.external();
            if (external != null) {
                made.put(entry.label() + ", jar's SHA-256", external.sha256());
            }
        }
        return new SettingsTable(name, made, values);
    }

    private record Result(Map<String, String> written, String summary) {}

    private Result tune(StrategyEntry entry) throws InterruptedException {
        StrategyFactory factory = catalogue.factory(entry);
        StrategyDescriptor descriptor = factory.descriptor();
        Trials trials = trials(entry, factory, TUNING_SEED_OFFSET);
        List<Setting> tuned = withRole(descriptor, Setting.Role.TUNED);
        List<Setting> verdict = withRole(descriptor, Setting.Role.VERDICT);
        Candidate best = new Candidate(fixed(entry, descriptor), Score.NONE);
        int evaluations = 0;
        if (!tuned.isEmpty()) {
            SettingsSearch search = new SettingsSearch(tuned, best.settings(), trials::run);
            best = search.leastLoss(budget.evaluations());
            evaluations += logged(entry, search);
        }
        if (!verdict.isEmpty()) {
            SettingsSearch search = new SettingsSearch(verdict, best.settings(), trials::run);
            best = search.fewestSilentMisses(budget.evaluations(), REACHED_SHARE);
            evaluations += logged(entry, search);
        }
        if (best.score().joints() == 0) {
            best = new Candidate(
                    best.settings(), trials.run(List.of(best.settings())).get(0));
        }
        Score fresh = trials(entry, factory, VALIDATION_SEED_OFFSET)
                .run(List.of(best.settings()))
                .get(0);
        String summary = evaluations + " evaluations; " + new TuningNote(tally(best.score()), tally(fresh)).words()
                + faults(best.score().faults() + fresh.faults());
        log.accept(entry.label() + ": " + best.settings() + "; " + summary);
        return new Result(written(descriptor, best.settings()), summary);
    }

    /** A tightening that ends by a fault counts as not in the window; whoever wrote the strategy should hear of it. */
    private static String faults(long tightenings) {
        return tightenings == 0
                ? ""
                : "; " + tightenings + " tightenings ended by a fault of the strategy: conform says which";
    }

    private static TuningNote.Tally tally(Score score) {
        return new TuningNote.Tally(score.inWindow(), score.joints(), score.silentMisses());
    }

    private Trials trials(StrategyEntry entry, StrategyFactory factory, long seedOffset) {
        Bench bench = Bench.of(scenario, scenario.seed() + seedOffset, catalogue);
        return new Trials(
                bench,
                factory,
                Bench.provision(scenario, entry.withheld()),
                families,
                budget.jointsPerFamily(),
                threads);
    }

    /** What the scenario's own line gives and tuning leaves alone. */
    private static Map<String, Double> fixed(StrategyEntry entry, StrategyDescriptor descriptor) {
        Map<String, Double> fixed = new TreeMap<>(entry.values());
        descriptor.settings().forEach(setting -> {
            if (setting.role() == Setting.Role.TUNED || setting.role() == Setting.Role.VERDICT) {
                fixed.remove(setting.name());
            }
        });
        return fixed;
    }

    private static List<Setting> withRole(StrategyDescriptor descriptor, Setting.Role role) {
        List<Setting> settings = new ArrayList<>(descriptor.settings());
        settings.removeIf(setting -> setting.role() != role || setting.minimum() == setting.maximum());
        return settings;
    }

    private int logged(StrategyEntry entry, SettingsSearch search) {
        int number = 0;
        for (Candidate candidate : search.log()) {
            log.accept(String.format(
                    Locale.ROOT,
                    "%s, evaluation %d: %s in window %d of %d, loss %.6f, silent misses %d",
                    entry.label(),
                    ++number,
                    new TreeMap<>(candidate.settings()),
                    candidate.score().inWindow(),
                    candidate.score().joints(),
                    candidate.score().loss(),
                    candidate.score().silentMisses()));
        }
        return number;
    }

    private static Map<String, String> written(StrategyDescriptor descriptor, Map<String, Double> settings) {
        Map<String, String> written = new LinkedHashMap<>();
        for (Setting setting : descriptor.settings()) {
            Double value = settings.get(setting.name());
            boolean found = setting.role() == Setting.Role.TUNED || setting.role() == Setting.Role.VERDICT;
            if (value != null && found) {
                written.put(setting.name(), SettingsTable.written(setting, value));
            }
        }
        return written;
    }
}
