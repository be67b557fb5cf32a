package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;

/** The numbers of the lyric lines in a score. */
final class LyricLines implements XmlVisitor {

    // Programs that sort lyric numbers as text put "10" before "2".
    private static final int LAST_SAFE_NUMBER = 9;

    private int highest;
    private int highestOfScore;
    private int unnumbered;
    private int inThisNote;
    private int mostInOneNote;
    private int firstUnnumbered;

    /**
     * Returns the number of the last line that the score itself uses; 0 if it has no lyrics.
     *
     * <p>Where lyrics have no number that is an integer, programs count them by their order on the note; so the number is
     * then at least the most lyrics that one note has.
     */
    int highestOfScore() {
        return unnumbered == 0 ? highestOfScore : Math.max(highestOfScore, mostInOneNote);
    }

    /** Returns what there is to say about lyrics that may come out in another place than ours expect. */
    List<Diagnostic> warnings(String text) {
        List<Diagnostic> warnings = new ArrayList<>();
        if (unnumbered > 0) {
            warnings.add(Diagnostic.warning(
                    DiagnosticCode.LYRICS,
                    TextPlace.of(text, firstUnnumbered),
                    "Lyrics without an integer as their number (" + unnumbered
                            + ") may be shown on the same line as the marks.",
                    "Maybe number the lyrics 1, 2, 3 in the program that wrote the score."));
        }
        if (highest > LAST_SAFE_NUMBER) {
            warnings.add(Diagnostic.warning(
                    DiagnosticCode.LYRICS,
                    Place.FILE,
                    "The lyric lines go up to number " + highest + ", and some programs put line 10 before line 2."));
        }
        return warnings;
    }

    @Override
    public void start(XmlElement element) {
        if (element.is("note")) {
            inThisNote = 0;
        }
    }

    @Override
    public void end(XmlElement element) {
        if (!element.is("lyric") || !element.isIn("note")) {
            return;
        }
        int number = integer(element.attribute("number"));
        highest = Math.max(highest, number);
        if (MarkNames.isOurs(element)) {
            return;
        }
        inThisNote++;
        mostInOneNote = Math.max(mostInOneNote, inThisNote);
        highestOfScore = Math.max(highestOfScore, number);
        if (number < 0) {
            firstUnnumbered = unnumbered == 0 ? element.start() : firstUnnumbered;
            unnumbered++;
        }
    }

    /** Returns the value of a lyric number, or -1 if it is none that programs can count with. */
    private static int integer(@Nullable String number) {
        return number != null && number.matches("\\s*[0-9]{1,6}\\s*") ? Integer.parseInt(number.strip()) : -1;
    }
}
