package org.shutoffbench.harness.report.joint;

import org.shutoffbench.harness.report.Caution;

/** The sheet as text for a terminal. */
public final class SheetText {

    private SheetText() {}

    /** The whole sheet, the caution last; lines end in a line feed. */
    public static String of(JointSheet sheet, UnitSystem system) {
        StringBuilder text = new StringBuilder(sheet.subject().title()).append('\n');
        for (FactSection section : sheet.sections()) {
            text.append('\n').append(section.title()).append('\n');
            for (Fact fact : section.facts()) {
                text.append(String.format(
                        java.util.Locale.ROOT,
                        "  %-50s %-9s %12s %-11s [%s]%n",
                        fact.name(),
                        fact.symbol(),
                        fact.printed(system),
                        fact.measure().unit(system),
                        fact.source()));
            }
            for (String remark : section.remarks()) {
                text.append("  ").append(remark).append('\n');
            }
        }
        return text.append('\n').append(Caution.TEXT).append('\n').toString().replace("\r\n", "\n");
    }
}
