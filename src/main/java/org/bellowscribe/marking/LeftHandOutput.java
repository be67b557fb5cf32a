package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LeftHandScribe;
import org.bellowscribe.annotation.OwnPart;
import org.bellowscribe.annotation.style.BookText;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.musicxml.OwnScore;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.score.Tune;
import org.jspecify.annotations.Nullable;

/** The left hand of one tune written out, as far as that was asked for. */
final class LeftHandOutput {

    private static final String FINGERS = "left-hand-fingers";
    private static final String CHORD_SYMBOLS = "chord-symbols";

    private final LeftHandChoice choice;
    private final List<String> marks;
    private final Arrangement arrangement;
    private final Tune sheetTune;

    /**
     * Creates the output.
     *
     * @param marks ids of the marks that are written
     * @param sheetTune the tune as the sheet has it
     */
    LeftHandOutput(LeftHandChoice choice, List<String> marks, Arrangement arrangement, Tune sheetTune) {
        this.choice = choice;
        this.marks = List.copyOf(marks);
        this.arrangement = arrangement;
        this.sheetTune = sheetTune;
    }

    /** Returns what there is to say about it. */
    List<Diagnostic> remarks() {
        List<Diagnostic> remarks = new ArrayList<>();
        if (marks.contains(CHORD_SYMBOLS) && !sheetTune.harmonies().isEmpty()) {
            remarks.add(Diagnostic.note(
                    DiagnosticCode.LEFT_HAND,
                    Place.FILE,
                    "The score has chord symbols of its own: they stay, and none are added."));
        }
        boolean asked = choice.part() || choice.sheet();
        if (asked && part().isSilent()) {
            remarks.add(silent());
        }
        return remarks;
    }

    private Diagnostic silent() {
        return Diagnostic.note(
                DiagnosticCode.LEFT_HAND,
                Place.FILE,
                "The left hand plays nothing here, so that none is written out.",
                "Maybe the instrument %s has no basses, or left-hand is missing in --play."
                        .formatted(arrangement.instrument().id()));
    }

    /** Returns the part to add to the score; null for none. */
    @Nullable
    OwnPart added() {
        OwnPart part = choice.part() ? part() : null;
        return part == null || part.isSilent() ? null : part;
    }

    /**
     * Returns the file of the sheet for the left hand alone; null if none is wanted or it would be silent.
     *
     * @param score the score in the key in which it is written
     */
    byte @Nullable [] sheet(ScoreDocument score) throws DiagnosedException {
        if (!choice.sheet() || part().isSilent()) {
            return null;
        }
        OwnPart alone = LeftHandScribe.alone(arrangement, sheetTune, withFingers());
        return OwnScore.write(
                        score,
                        alone,
                        "%s: %s"
                                .formatted(
                                        sheetTune.title(),
                                        arrangement.style().book().say(BookText.STAGE_LEFT_HAND)))
                .encode();
    }

    private OwnPart part() {
        return LeftHandScribe.part(arrangement, sheetTune, withFingers());
    }

    private boolean withFingers() {
        return marks.contains(FINGERS);
    }
}
