package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.bellowscribe.musicxml.read.WrittenNote.SlurEnd;

/**
 * Finds the notes that go on under a slur from the note before. Both ends must be at notes of the melody: a slur that ends
 * at a grace note or in another voice says nothing of the bellows between two of its notes.
 */
final class Slurs {

    private final Map<Integer, List<Integer>> open = new HashMap<>();
    private final Set<Integer> goingOn = new HashSet<>();

    private Slurs() {}

    /**
     * Returns the places, among all notes of the file, of the notes under a slur but for those with which it starts.
     *
     * @param measures the notes of the melody, measure by measure
     */
    static Set<Integer> goingOn(List<List<WrittenNote>> measures) {
        Slurs slurs = new Slurs();
        for (List<WrittenNote> notes : measures) {
            notes.stream()
                    .filter(WrittenNote::isNote)
                    .collect(Collectors.groupingBy(WrittenNote::onset, TreeMap::new, Collectors.toList()))
                    .values()
                    .forEach(slurs::read);
        }
        return slurs.goingOn;
    }

    // Slurs stop before others start. One that starts anew under a number that is still open has no end.
    private void read(List<WrittenNote> struckTogether) {
        List<SlurEnd> ends =
                struckTogether.stream().flatMap(note -> note.slurs().stream()).toList();
        open.values()
                .forEach(under ->
                        struckTogether.stream().map(WrittenNote::noteIndex).forEach(under::add));
        for (SlurEnd end : ends) {
            List<Integer> under = end.starts() ? null : open.remove(end.number());
            if (under != null) {
                goingOn.addAll(under);
            }
        }
        ends.stream().filter(SlurEnd::starts).forEach(end -> open.put(end.number(), new ArrayList<>()));
    }
}
