package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;

/**
 * Words of ours at a note behind which grace notes end the measure. The converter of LilyPond 2.24 moves them behind the
 * grace notes, wherever they are written (measured, as in {@code cli/MarksShownTest}); other programs do not.
 */
final class WordsBeforeGrace implements XmlVisitor {

    private final List<Place> places = new ArrayList<>();
    private String part = "";
    private String number = "";
    private int measure;
    private boolean isGrace;
    private boolean isChord;
    /** Words that wait for their note; a note has them; grace notes follow it. */
    private boolean waiting;

    private boolean worded;
    private boolean graced;

    /** Returns a note for each place. */
    List<Diagnostic> remarks() {
        return places.stream()
                .map(place -> Diagnostic.note(
                        DiagnosticCode.WORDS,
                        place,
                        "LilyPond 2.24 shows the words over the last note one note late, because grace notes end the measure.",
                        "Maybe check the place there; other programs show them right."))
                .toList();
    }

    @Override
    public void start(XmlElement element) {
        String id = PartKeys.partId(element);
        if (id != null) {
            part = id;
            measure = 0;
        } else if (element.is("measure")) {
            measure++;
            String given = element.attribute("number");
            number = given == null ? "" : given;
        } else if (NoteAnchors.isNote(element)) {
            isGrace = false;
            isChord = false;
        }
    }

    @Override
    public void end(XmlElement element) {
        if (NoteAnchors.isNote(element)) {
            note();
        } else if (element.isIn("note")) {
            isGrace = isGrace || element.is("grace");
            isChord = isChord || element.is("chord");
        } else if (element.is("direction") && MarkNames.isOurs(element)) {
            waiting = true;
        } else if (element.is("measure") || element.is("backup")) {
            if (worded && graced) {
                places.add(Place.measure(measure, number, part));
            }
            waiting = false;
            worded = false;
            graced = false;
        }
    }

    private void note() {
        if (isGrace) {
            graced = true;
        } else if (!isChord) {
            worded = waiting;
            waiting = false;
            graced = false;
        }
    }
}
