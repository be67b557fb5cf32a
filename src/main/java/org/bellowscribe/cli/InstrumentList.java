package org.bellowscribe.cli;

import java.util.List;
import org.bellowscribe.instrument.file.LibraryEntry;

/** Lists instruments by family: id, how well the notes are known, name, and what is open about them. */
final class InstrumentList {

    private static final String LINE = "  %-24s %-12s %s\n";
    private static final String REMARK = "  %-24s %-12s - %s\n".formatted("", "", "%s");

    private InstrumentList() {}

    /** Returns the list, each line with its line feed. */
    static String text(List<LibraryEntry> entries) {
        StringBuilder text = new StringBuilder();
        String family = "";
        for (LibraryEntry entry : entries) {
            if (!entry.family().equals(family)) {
                text.append(family.isEmpty() ? "" : "\n").append(entry.family()).append('\n');
                family = entry.family();
            }
            text.append(LINE.formatted(
                    entry.instrument().id(),
                    entry.status().id(),
                    entry.instrument().name()));
            entry.remarks().forEach(remark -> text.append(REMARK.formatted(remark)));
        }
        return text.toString();
    }
}
