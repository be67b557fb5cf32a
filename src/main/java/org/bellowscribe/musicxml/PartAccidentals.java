package org.bellowscribe.musicxml;

import java.util.HashMap;
import java.util.Map;
import org.bellowscribe.theory.NoteName;

/** Which accidentals must be written in a measure. */
final class PartAccidentals {

    private static final String SHARPS = "FCGDAEB";

    private final int fifths;
    private final Map<String, Integer> held = new HashMap<>();

    /** Begins a measure in a key. */
    PartAccidentals(int fifths) {
        this.fifths = fifths;
    }

    /** Returns the accidental of a note that comes next; empty if the key or an earlier one says it. */
    String sign(NoteName note) {
        String place = "" + note.letter() + note.octave();
        int before = held.getOrDefault(place, ofKey(note.letter()));
        held.put(place, note.alter());
        return before == note.alter() ? "" : name(note.alter());
    }

    private int ofKey(char letter) {
        int place = SHARPS.indexOf(letter);
        if (fifths >= 0) {
            return place < fifths ? 1 : 0;
        }
        return 6 - place < -fifths ? -1 : 0;
    }

    private static String name(int alter) {
        return switch (alter) {
            case 0 -> "natural";
            case 1 -> "sharp";
            case -1 -> "flat";
            case 2 -> "double-sharp";
            case -2 -> "flat-flat";
            default -> "";
        };
    }
}
