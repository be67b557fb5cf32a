package org.bellowscribe.annotation;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The lyric lines below the staff. Two renderers put the lines in the order in which they first see them, so at the
 * first note of every line all lines above it get a filler if they have nothing to say there.
 */
final class LyricLines {

    private final List<String> names = new ArrayList<>();
    private final SortedMap<Integer, SortedMap<Integer, String>> texts = new TreeMap<>();

    /**
     * Adds a syllable; of two at one note and line the first is kept.
     *
     * @param note place of the note in the file
     */
    void add(int note, Mark.Syllable syllable) {
        if (!names.contains(syllable.line())) {
            names.add(syllable.line());
        }
        texts.computeIfAbsent(note, key -> new TreeMap<>())
                .putIfAbsent(names.indexOf(syllable.line()), syllable.text());
    }

    /** Returns the syllables by note, then line. */
    List<Annotation> annotations(String filler) {
        List<Annotation> annotations = new ArrayList<>();
        int[] seen = {0};
        texts.forEach((note, lines) -> {
            int lowest = lines.lastKey();
            for (int line = 0; line < lowest && lowest >= seen[0]; line++) {
                lines.putIfAbsent(line, filler);
            }
            seen[0] = Math.max(seen[0], lowest + 1);
            lines.forEach((line, text) -> annotations.add(new Annotation.Syllable(note, line, names.get(line), text)));
        });
        return annotations;
    }
}
