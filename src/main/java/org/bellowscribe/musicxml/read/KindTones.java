package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.audiveris.proxymusic.KindValue;

/**
 * The tones of each kind of chord, in semitones above the root. The augmented sixth chords and the Tristan chord are
 * given above the tonic, which MusicXML writes as their root; a Neapolitan is read as a major triad on its root.
 */
final class KindTones {

    private static final String TABLE = """
            major 0 4 7
            minor 0 3 7
            augmented 0 4 8
            diminished 0 3 6
            dominant 0 4 7 10
            major-seventh 0 4 7 11
            minor-seventh 0 3 7 10
            diminished-seventh 0 3 6 9
            augmented-seventh 0 4 8 10
            half-diminished 0 3 6 10
            major-minor 0 3 7 11
            major-sixth 0 4 7 9
            minor-sixth 0 3 7 9
            dominant-ninth 0 2 4 7 10
            major-ninth 0 2 4 7 11
            minor-ninth 0 2 3 7 10
            dominant-11th 0 2 4 5 7 10
            major-11th 0 2 4 5 7 11
            minor-11th 0 2 3 5 7 10
            dominant-13th 0 2 4 5 7 9 10
            major-13th 0 2 4 5 7 9 11
            minor-13th 0 2 3 5 7 9 10
            suspended-second 0 2 7
            suspended-fourth 0 5 7
            Neapolitan 0 4 7
            Italian 0 6 8
            French 0 2 6 8
            German 0 3 6 8
            pedal 0
            power 0 7
            Tristan 0 3 6 10
            other 0
            none
            """;

    private static final Map<KindValue, List<Integer>> TONES = read();

    private KindTones() {}

    /** Returns true if the text is one of MusicXML's kinds. */
    static boolean isKind(String text) {
        for (KindValue kind : KindValue.values()) {
            if (kind.value().equals(text)) {
                return true;
            }
        }
        return false;
    }

    /** Returns the tones of a kind, 0 to 11, ascending; empty for "no chord". */
    static List<Integer> of(KindValue kind) {
        return TONES.getOrDefault(kind, List.of(0));
    }

    private static Map<KindValue, List<Integer>> read() {
        Map<KindValue, List<Integer>> map = new EnumMap<>(KindValue.class);
        TABLE.lines().forEach(line -> {
            String[] words = line.split(" ", -1);
            List<Integer> tones = new ArrayList<>();
            for (int i = 1; i < words.length; i++) {
                tones.add(Integer.valueOf(words[i]));
            }
            map.put(KindValue.fromValue(words[0]), List.copyOf(tones));
        });
        return map;
    }
}
