package org.shutoffbench.harness.record.export;

import java.util.Map;

/**
 * A physical quantity by its number in OPC 40450-1, table 204 and section 9.1, and its unit by its UNECE common code.
 *
 * @param physicalQuantity number of the quantity
 * @param code UNECE Recommendation 20 common code; empty for a pure number
 * @param shown for people
 */
record JoiningUnit(int physicalQuantity, String code, String shown) {

    static final JoiningUnit TIME = new JoiningUnit(1, "SEC", "s");
    static final JoiningUnit TORQUE = new JoiningUnit(2, "NU", "N\u00b7m");
    static final JoiningUnit ANGLE = new JoiningUnit(3, "DD", "\u00b0");
    static final JoiningUnit FORCE = new JoiningUnit(8, "NEW", "N");
    static final JoiningUnit NUMBER = new JoiningUnit(20, "C62", "1");

    /** The number of a code: its ASCII characters as one big-endian number (source: OPC-10000-8). */
    int unitId() {
        int id = 0;
        for (int i = 0; i < code.length(); i++) {
            id = id << 8 | code.charAt(i);
        }
        return id;
    }

    /** EUInformation. */
    Map<String, Object> information() {
        return Map.of(
                "NamespaceUri", "http://www.opcfoundation.org/UA/units/un/cefact",
                "UnitId", unitId(),
                "DisplayName", Map.of("Text", shown));
    }
}
