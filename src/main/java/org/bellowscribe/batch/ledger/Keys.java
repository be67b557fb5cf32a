package org.bellowscribe.batch.ledger;

import java.util.List;

/**
 * The hashes of all that the files of a tune are made from.
 *
 * @param score the score
 * @param pins its pins
 * @param settings the options, and the name under which the score goes
 * @param definitions the files that the options name
 * @param tool the tool itself, with its libraries and plug-ins
 */
public record Keys(String score, String pins, String settings, String definitions, String tool) {

    static final int COUNT = 5;

    List<String> fields() {
        return List.of(score, pins, settings, definitions, tool);
    }

    static Keys of(List<String> fields) {
        return new Keys(fields.get(0), fields.get(1), fields.get(2), fields.get(3), fields.get(4));
    }

    /** Returns what is not as it was, in words that stand alone; empty if nothing. */
    public String differenceTo(Keys earlier) {
        if (!score.equals(earlier.score)) {
            return "the score has changed";
        }
        if (!pins.equals(earlier.pins)) {
            return "its pins have changed";
        }
        if (!settings.equals(earlier.settings)) {
            return "the options are others";
        }
        if (!definitions.equals(earlier.definitions)) {
            return "a file that the options name has changed";
        }
        return tool.equals(earlier.tool) ? "" : "the tool is another";
    }
}
