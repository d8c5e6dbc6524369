package org.shutoffbench.harness.scenario;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.joint.strength.PropertyClass;
import org.shutoffbench.joint.thread.ScrewThread;

/**
 * A family of joints: what is alike and what scatters.
 *
 * @param name unique within the scenario
 * @param thread thread of bolt and nut
 * @param propertyClass property class of the bolt; null where the file gives none
 * @param yieldRule where the bolts yield
 * @param assembly how its joints are put together; null where the file gives their stiffness
 * @param numbers every number that the family has, defaults filled in
 * @param presence parts that joints may have, with the probability that a joint has them, in (0, 1]
 * @param damageEveryTurn whether a damaged place comes round every turn or stands at one place
 */
public record JointFamily(
        String name,
        WrittenThread thread,
        @Nullable PropertyClass propertyClass,
        YieldRule yieldRule,
        @Nullable Assembly assembly,
        Map<JointKey, Amount> numbers,
        Map<Part, Double> presence,
        boolean damageEveryTurn) {

    /**
     * A thread as the file writes it.
     *
     * @param written for example {@code M12x1.75}
     * @param screw its sizes
     */
    public record WrittenThread(String written, ScrewThread screw) {}

    public JointFamily {
        numbers = copy(JointKey.class, numbers);
        presence = copy(Part.class, presence);
    }

    private static <K extends Enum<K>, V> Map<K, V> copy(Class<K> type, Map<K, V> map) {
        EnumMap<K, V> copy = new EnumMap<>(type);
        copy.putAll(map);
        return Collections.unmodifiableMap(copy);
    }
}
