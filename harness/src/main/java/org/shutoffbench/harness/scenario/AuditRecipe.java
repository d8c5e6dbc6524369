package org.shutoffbench.harness.scenario;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.scenario.unit.Quantity;

/**
 * How somebody checks tightened joints by hand: residual torque by first movement.
 *
 * @param numbers every number that may scatter
 * @param lowest least reading that is accepted, N m; null for the lower edge of the window of the torque that the tool is
 *     set to
 * @param highest greatest reading that is accepted, N m; null for none
 * @param allows torque that the auditor adds to both limits for a family's prevailing torque, N m, by family
 * @param resolution step of the hand tool's scale, N m; 0 for none
 * @param skipped probability that a joint is ticked without having been checked
 */
public record AuditRecipe(
        Map<AuditKey, Amount> numbers,
        @Nullable Quantity lowest,
        @Nullable Quantity highest,
        Map<String, Quantity> allows,
        Quantity resolution,
        Quantity skipped) {

    public AuditRecipe {
        EnumMap<AuditKey, Amount> all = new EnumMap<>(AuditKey.class);
        for (AuditKey key : AuditKey.values()) {
            all.put(key, numbers.getOrDefault(key, key.byDefault()));
        }
        numbers = Collections.unmodifiableMap(all);
        allows = Collections.unmodifiableMap(new LinkedHashMap<>(allows));
    }

    /** The amount of a key. */
    public Amount amount(AuditKey key) {
        return numbers.getOrDefault(key, key.byDefault());
    }

    /** What the auditor adds to the limits on a family, N m. */
    public double allowanceNm(String family) {
        Quantity allowance = allows.get(family);
        return allowance == null ? 0 : allowance.si();
    }
}
