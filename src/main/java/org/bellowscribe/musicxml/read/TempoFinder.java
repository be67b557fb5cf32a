package org.bellowscribe.musicxml.read;

import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.score.DanceTempo;
import org.bellowscribe.score.Tempo;
import org.bellowscribe.score.TimeSignature;
import org.jspecify.annotations.Nullable;

/** The tempo of the tune: the first that the score states and a player may mean, else the usual one of the dance. */
final class TempoFinder {

    private final TempoMarks marks;
    private final String headWords;
    private final @Nullable Integer asked;

    /**
     * Creates a finder.
     *
     * @param marks tempos that the score states
     * @param headWords title and other words that may name the dance
     * @param asked the tempo that somebody asked for, in quarters a minute; null for that of the score
     */
    TempoFinder(TempoMarks marks, String headWords, @Nullable Integer asked) {
        this.asked = asked;
        this.marks = marks;
        this.headWords = headWords;
    }

    Tempo tempo(TimeSignature time, List<Diagnostic> remarks) {
        if (asked != null) {
            return new Tempo(asked, true);
        }
        Double stated = marks.first();
        if (stated != null) {
            remarkChanges(stated, remarks);
            remarkOddBeginning(stated, "as it states later", remarks);
            return new Tempo(stated, true);
        }
        DanceTempo dance = DanceTempo.of(headWords, time);
        String why = dance.fromTitle()
                ? "usual for a %s in %s".formatted(dance.name(), time)
                : "by its %s as a %s".formatted(time, dance.name());
        if (!remarkOddBeginning(dance.quartersPerMinute(), why, remarks)) {
            remarks.add(Diagnostic.note(
                    DiagnosticCode.ASSUMED,
                    Place.FILE,
                    "The score states no tempo; it is read at %d quarter notes a minute, %s."
                            .formatted(Math.round(dance.quartersPerMinute()), why)));
        }
        return new Tempo(dance.quartersPerMinute(), false);
    }

    private boolean remarkOddBeginning(double used, String why, List<Diagnostic> remarks) {
        Double odd = marks.oddBeginning();
        if (odd == null) {
            return false;
        }
        remarks.add(Diagnostic.warning(
                DiagnosticCode.ODD_VALUE,
                Place.FILE,
                "The score states %d quarter notes a minute; no player could mean that, so it is read at %d quarter notes"
                                .formatted(Math.round(odd), Math.round(used))
                        + " a minute, %s.".formatted(why),
                "Maybe correct the tempo mark; the note beside it says what is counted."));
        return true;
    }

    private void remarkChanges(double first, List<Diagnostic> remarks) {
        if (marks.slowest() < first || marks.fastest() > first) {
            remarks.add(Diagnostic.note(
                    DiagnosticCode.ASSUMED,
                    Place.FILE,
                    "The tempo changes between %d and %d quarter notes a minute; the tune is read at %d throughout."
                            .formatted(Math.round(marks.slowest()), Math.round(marks.fastest()), Math.round(first))));
        }
    }
}
