package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.audiveris.proxymusic.Degree;
import org.audiveris.proxymusic.DegreeTypeValue;

/** The tones of one chord while degrees are added, altered and taken away; semitones above the root. */
final class ChordTones {

    /** Semitones of the degrees 1 to 13 above the root; as MusicXML says, the seventh is the minor one. */
    private static final int[] PLAIN = {0, 2, 4, 5, 7, 9, 10};
    /** For each degree where to look for it in a chord, likeliest first. */
    private static final List<List<Integer>> PLACES = List.of(
            List.of(0),
            List.of(2, 1, 3),
            List.of(4, 3),
            List.of(5, 6),
            List.of(7, 6, 8),
            List.of(9, 8),
            List.of(10, 11, 9));

    private final TreeSet<Integer> tones;

    ChordTones(List<Integer> kind) {
        tones = new TreeSet<>(kind);
    }

    /** Changes the chord by a degree. */
    void apply(Degree degree) {
        if (degree.getDegreeValue() == null || degree.getDegreeValue().getValue() == null) {
            return;
        }
        int number = Math.floorMod(degree.getDegreeValue().getValue().intValue() - 1, 7);
        int alter = degree.getDegreeAlter() == null || degree.getDegreeAlter().getValue() == null
                ? 0
                : degree.getDegreeAlter().getValue().intValue();
        DegreeTypeValue type = degree.getDegreeType() == null
                ? DegreeTypeValue.ADD
                : degree.getDegreeType().getValue();
        int present =
                PLACES.get(number).stream().filter(tones::contains).findFirst().orElse(-1);
        if (type == DegreeTypeValue.SUBTRACT) {
            remove(present);
        } else if (type == DegreeTypeValue.ALTER && present >= 0) {
            remove(present);
            add(present + alter);
        } else {
            add(PLAIN[number] + alter);
        }
    }

    private void add(int tone) {
        tones.add(Math.floorMod(tone, 12));
    }

    // The root stays: without it there would be no chord to name.
    private void remove(int tone) {
        if (tone > 0) {
            tones.remove(tone);
        }
    }

    /** Returns the tones, ascending. */
    List<Integer> tones() {
        return new ArrayList<>(tones);
    }

    /** Returns the tone that an inversion puts lowest: the third, fifth or seventh. */
    int lowest(int inversion) {
        if (inversion < 1 || inversion > 3) {
            return 0;
        }
        return PLACES.get(2 * inversion).stream()
                .filter(tones::contains)
                .findFirst()
                .orElse(0);
    }
}
