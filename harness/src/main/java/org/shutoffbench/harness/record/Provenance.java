package org.shutoffbench.harness.record;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * Where a run's numbers come from: {@code run.json}. The only file of a run that knows time and host.
 *
 * @param bench version of this program
 * @param command the command line
 * @param scenario name
 * @param scenarioSha256 hash of the resolved scenario, which lies beside this file
 * @param outcomesSha256 hash of the outcomes file
 * @param seed root seed of the joints that were judged
 * @param jointsPerFamily in every family
 * @param settings how each settings table was made, its seeds included; one text per table
 * @param started UTC, to the second
 * @param seconds wall time of this sitting; an interrupted run has several
 * @param resumedAtJoint joints kept from earlier sittings
 * @param host the machine
 */
public record Provenance(
        String bench,
        List<String> command,
        String scenario,
        String scenarioSha256,
        String outcomesSha256,
        long seed,
        int jointsPerFamily,
        java.util.Map<String, java.util.Map<String, String>> settings,
        String started,
        double seconds,
        long resumedAtJoint,
        Host host) {

    /**
     * Facts of the machine.
     *
     * @param java version and maker of the runtime
     * @param system operating system and architecture
     * @param processors seen by the runtime
     * @param threads used
     * @param heapBytes largest heap
     */
    public record Host(String java, String system, int processors, int threads, long heapBytes) {

        /** This machine. */
        public static Host here(int threads) {
            Runtime runtime = Runtime.getRuntime();
            return new Host(
                    System.getProperty("java.vm.name") + " " + Runtime.version(),
                    System.getProperty("os.name") + " " + System.getProperty("os.arch"),
                    runtime.availableProcessors(),
                    threads,
                    runtime.maxMemory());
        }
    }

    /** An instant as written here. */
    public static String text(Instant instant) {
        return instant.truncatedTo(ChronoUnit.SECONDS).toString();
    }

    /** The text of the file. */
    public String json() {
        return JsonMapper.builder()
                        .enable(SerializationFeature.INDENT_OUTPUT)
                        .build()
                        .writeValueAsString(this)
                + "\n";
    }
}
