package org.bellowscribe.words;

/**
 * One note group or rest in words.
 *
 * @param event 0-based index of the event of the tune
 * @param measure 0-based index of the measure in which it begins
 * @param place where it is, such as {@code measure 3, beat 2}
 * @param text what is played, such as {@code A, pull, button 4 of the inner row, finger 2, bass D, press air}
 */
public record WordLine(int event, int measure, String place, String text) {

    @Override
    public String toString() {
        return place + ": " + text;
    }
}
