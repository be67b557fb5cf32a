package org.bellowscribe.musicxml.read;

import static org.bellowscribe.musicxml.read.ScoreText.ATTRIBUTES;
import static org.bellowscribe.musicxml.read.ScoreText.note;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.bellowscribe.score.Tune;

/** Writes scores of several parts for tests: each has a name, a clef and notes that are played or sung twice. */
final class Ensemble {

    static final String TUNE = "D5:4 E5:4 F#5:4 G5:4 A5:8 G5:4 F#5:4";
    static final String LOW_TUNE = "D4:4 E4:4 F#4:4 G4:4 A4:8 G4:4 F#4:4";
    static final String THIRD_BELOW = "B4:4 C5:4 D5:4 E5:4 F#5:8 E5:4 D5:4";
    static final String SIXTH_BELOW = "F4:4 G4:4 A4:4 B4:4 C5:8 B4:4 A4:4";
    static final String BASS = "D3:8 A2:8 D3:8 A2:8";
    static final String TENOR = "F#3:8 A3:8 D4:8 A3:8";
    static final String CHORDS = "D4:8 +F#4:8 +A4:8 D4:8 +F#4:8 +A4:8 D4:8 +G4:8 +B4:8 D4:8 +F#4:8 +A4:8";
    static final String RUNS = "D4:2 F#4:2 A4:2 F#4:2 D4:2 F#4:2 A4:2 F#4:2 D4:2 G4:2 B4:2 G4:2 D4:2 F#4:2 A4:2 F#4:2";
    static final String HIGH_RUNS = RUNS.replace("4:", "6:");
    static final String FIDDLE_ON_TOP = "A5:4 B5:4 A5:4 B5:4 A5:8 B5:4 A5:4";

    private final List<String> parts = new ArrayList<>();
    private final StringBuilder list = new StringBuilder("<part-list>");

    /** Adds a part that is played. */
    Ensemble with(String name, String clef, String notes) {
        return add(name, clef, notes, "");
    }

    /** Adds a part that is sung. */
    Ensemble sung(String name, String clef, String notes) {
        return add(name, clef, notes, "<lyric><text>la</text></lyric>");
    }

    private Ensemble add(String name, String clef, String notes, String lyric) {
        String id = "P" + (parts.size() + 1);
        list.append("<score-part id=\"" + id + "\"><part-name>" + name + "</part-name></score-part>");
        StringBuilder inside = new StringBuilder(ATTRIBUTES);
        inside.append("<attributes><clef><sign>" + clef + "</sign></clef></attributes>");
        Stream.of(notes.split(" ")).forEach(word -> inside.append(note(word, word.startsWith("r") ? "" : lyric)));
        parts.add(ScoreText.part(id, inside.toString(), inside.substring(ATTRIBUTES.length())));
        return this;
    }

    /** Reads the score. */
    Tune tune() {
        return ScoreText.read(ScoreText.wrap(list + "</part-list>" + String.join("", parts)));
    }

    /** Returns the id of the part that is taken for the melody. */
    String chosen() {
        return tune().part();
    }
}
