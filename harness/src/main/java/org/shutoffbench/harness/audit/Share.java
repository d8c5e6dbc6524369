package org.shutoffbench.harness.audit;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.shutoffbench.harness.scenario.Grouping;
import org.shutoffbench.harness.statistics.BinomialInterval;
import org.shutoffbench.harness.statistics.ClusterInterval;
import org.shutoffbench.harness.statistics.Interval;

/**
 * Joints counted, and how many of them have something. Exact intervals; where joints share lots or tools, the wider of the
 * intervals by lot and by tool.
 */
public final class Share {

    private final boolean clustered;
    private final Map<String, long[]> lots = new TreeMap<>();
    private final Map<String, long[]> tools = new TreeMap<>();
    private long count;
    private long n;

    /** A count of joints that share lots and tools as a scenario says. */
    public static Share counting(Grouping grouping) {
        return new Share(!grouping.equals(Grouping.NONE));
    }

    private Share(boolean clustered) {
        this.clustered = clustered;
    }

    /** The counts of several families together; lots and tools of different families are different ones. */
    public static Share pooled(List<Share> parts) {
        Share sum = new Share(parts.stream().anyMatch(part -> part.clustered));
        for (int i = 0; i < parts.size(); i++) {
            Share part = parts.get(i);
            sum.count += part.count;
            sum.n += part.n;
            String prefix = i + "/";
            part.lots.forEach((lot, tally) -> sum.lots.put(prefix + lot, tally.clone()));
            part.tools.forEach((tool, tally) -> sum.tools.put(prefix + tool, tally.clone()));
        }
        return sum;
    }

    /** Counts one joint. */
    public void add(boolean has, int lot, int tool) {
        n++;
        count += has ? 1 : 0;
        if (clustered) {
            add(lots, Integer.toString(lot), has);
            add(tools, Integer.toString(tool), has);
        }
    }

    private static void add(Map<String, long[]> clusters, String cluster, boolean has) {
        long[] tally = clusters.computeIfAbsent(cluster, key -> new long[2]);
        tally[0] += has ? 1 : 0;
        tally[1]++;
    }

    /** Joints that have it. */
    public long count() {
        return count;
    }

    /** Joints asked. */
    public long n() {
        return n;
    }

    /** count / n; NaN where no joint was asked. */
    public double estimate() {
        return n == 0 ? Double.NaN : (double) count / n;
    }

    /** The interval; 0 to 1 where no joint was asked. */
    public Interval interval(double confidence) {
        if (n == 0) {
            return new Interval(0, 1);
        }
        Interval exact = BinomialInterval.CLOPPER_PEARSON.of(count, n, confidence);
        if (!clustered) {
            return exact;
        }
        Interval byLot = byCluster(lots, confidence).interval();
        Interval byTool = byCluster(tools, confidence).interval();
        return byLot.width() > byTool.width() ? byLot : byTool;
    }

    /** How many joints stand for one independent joint; 1 where each is its own lot and tool. */
    public double designEffect(double confidence) {
        return !clustered || n == 0
                ? 1
                : Math.max(
                        byCluster(lots, confidence).designEffect(),
                        byCluster(tools, confidence).designEffect());
    }

    private static ClusterInterval byCluster(Map<String, long[]> clusters, double confidence) {
        long[] counts = clusters.values().stream().mapToLong(t -> t[0]).toArray();
        long[] sizes = clusters.values().stream().mapToLong(t -> t[1]).toArray();
        return ClusterInterval.ofRate(counts, sizes, confidence);
    }
}
