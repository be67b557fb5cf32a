package org.bellowscribe.musicxml;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The accidentals that MusicXML names, in half semitones, so that quarter tones are whole numbers. */
final class AccidentalSigns {

    private static final Map<String, Integer> HALVES = Map.ofEntries(
            Map.entry("natural", 0),
            Map.entry("sharp", 2),
            Map.entry("natural-sharp", 2),
            Map.entry("flat", -2),
            Map.entry("natural-flat", -2),
            Map.entry("double-sharp", 4),
            Map.entry("sharp-sharp", 4),
            Map.entry("flat-flat", -4),
            Map.entry("triple-sharp", 6),
            Map.entry("triple-flat", -6),
            Map.entry("quarter-sharp", 1),
            Map.entry("quarter-flat", -1),
            Map.entry("three-quarters-sharp", 3),
            Map.entry("three-quarters-flat", -3));

    private static final Map<Integer, String> NAMES = Map.of(
            0,
            "natural",
            2,
            "sharp",
            -2,
            "flat",
            4,
            "double-sharp",
            -4,
            "flat-flat",
            1,
            "quarter-sharp",
            -1,
            "quarter-flat",
            3,
            "three-quarters-sharp",
            -3,
            "three-quarters-flat");

    private AccidentalSigns() {}

    /**
     * Returns the sign that says so many semitones more; null if there is none, or if the sign must stay because it says
     * no semitones or the same.
     */
    static @Nullable String raised(String sign, int semitones) {
        Integer halves = HALVES.get(sign);
        return halves == null || semitones == 0 ? null : NAMES.get(halves + 2 * semitones);
    }

    /** Returns the whole semitones that a sign says, or null if it says none. */
    static @Nullable Integer semitones(String sign) {
        Integer halves = HALVES.get(sign);
        return halves == null || halves % 2 != 0 ? null : Integer.valueOf(halves / 2);
    }
}
