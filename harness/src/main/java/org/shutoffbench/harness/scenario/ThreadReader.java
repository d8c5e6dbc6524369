package org.shutoffbench.harness.scenario;

import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.scenario.JointFamily.WrittenThread;
import org.shutoffbench.harness.scenario.file.Section;
import org.shutoffbench.harness.scenario.file.Tree;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.harness.scenario.unit.Quantity;
import org.shutoffbench.joint.thread.ScrewThread;
import org.shutoffbench.joint.thread.ThreadDesignation;

/** Reads a thread: a size such as {@code M12x1.75}, or plain numbers. */
final class ThreadReader {

    private static final Range DIAMETER = Range.of(Dimension.LENGTH, "1 mm", "500 mm");
    private static final Range PITCH = Range.of(Dimension.LENGTH, "0.1 mm", "50 mm");
    private static final String EXAMPLES = "write a size such as M12, M12x1.25 or 1/2-13, or {d: 12 mm, P: 1.75 mm}";

    private final Section family;

    ThreadReader(Section family) {
        this.family = family;
    }

    /** The thread; null where it is missing or wrong, which is told. */
    @Nullable
    WrittenThread read() {
        Tree value = family.take("thread");
        if (value instanceof Tree.Branch) {
            return plainNumbers();
        }
        if (!(value instanceof Tree.Text text)) {
            family.problem("thread", EXAMPLES);
            return null;
        }
        try {
            return new WrittenThread(text.value(), ThreadDesignation.parse(text.value()));
        } catch (IllegalArgumentException e) {
            family.problem("thread", EXAMPLES + " (" + e.getMessage() + ")");
            return null;
        }
    }

    private @Nullable WrittenThread plainNumbers() {
        Section map = family.section("thread");
        if (map == null) {
            return null;
        }
        Quantity d = size(map, "d", DIAMETER, "its nominal diameter");
        Quantity p = size(map, "P", PITCH, "its pitch");
        map.finish();
        if (d == null || p == null) {
            return null;
        }
        try {
            return new WrittenThread("{d: " + d + ", P: " + p + "}", ScrewThread.metric(d.si(), p.si()));
        } catch (IllegalArgumentException e) {
            family.problem("thread", String.valueOf(e.getMessage()));
            return null;
        }
    }

    private static @Nullable Quantity size(Section map, String key, Range range, String meaning) {
        if (!map.has(key)) {
            map.missing(key, "give " + meaning);
            return null;
        }
        return new AmountReader(Dimension.LENGTH, range, JointKey.LEVELS, map.problems()).readFixed(map, key);
    }
}
