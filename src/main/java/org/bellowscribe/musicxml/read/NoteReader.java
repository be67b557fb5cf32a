package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.audiveris.proxymusic.Notations;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.NoteheadValue;
import org.audiveris.proxymusic.Slur;
import org.audiveris.proxymusic.StartStop;
import org.audiveris.proxymusic.StartStopContinue;
import org.audiveris.proxymusic.Tie;
import org.audiveris.proxymusic.Tied;
import org.audiveris.proxymusic.TiedType;
import org.audiveris.proxymusic.YesNo;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.musicxml.read.WrittenNote.SlurEnd;
import org.bellowscribe.musicxml.read.WrittenNote.Sort;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Pitch;
import org.jspecify.annotations.Nullable;

/** Notes and rests. */
final class NoteReader {

    private final Map<String, OddValue> bad;

    /**
     * Creates a reader.
     *
     * @param bad values that could not be read, by the id of their note
     */
    NoteReader(Map<String, OddValue> bad) {
        this.bad = bad;
    }

    /**
     * Reads a note and moves the cursor behind it.
     *
     * @return the note, or null for a grace note
     */
    @Nullable
    WrittenNote read(Note note, Cursor cursor, AttributeReader attributes, Place place) {
        if (note.getGrace() != null) {
            return null;
        }
        OddValue problem = bad.get(note.getId());
        Fraction duration = DurationReader.read(note, cursor);
        int staff = note.getStaff() == null ? 1 : note.getStaff().intValue();
        Sort sort = sort(note, attributes.isDrums(staff));
        if (duration == null && sort == Sort.REST && problem == null) {
            // A rest for the whole measure may do without; what is missing is filled up later.
            duration = Fraction.ZERO;
        } else if (duration == null) {
            problem = problem == null ? new OddValue("duration", "", place) : problem;
            duration = Fraction.ZERO;
        }
        Pitch pitch = sort == Sort.NOTE ? PitchReader.read(note, attributes.transposition()) : null;
        if (sort == Sort.NOTE && pitch == null && problem == null) {
            problem = PitchReader.problem(note, place);
        }
        boolean chord = note.getChord() != null && cursor.hasGroup();
        Fraction onset = chord ? cursor.group() : cursor.position();
        String voice = note.getVoice() == null ? String.valueOf(1 + cursor.turnedBack()) : note.getVoice();
        if (!chord) {
            cursor.note(duration);
        }
        return new WrittenNote(
                LeanScore.noteIndex(note.getId()),
                voice,
                staff,
                onset,
                duration,
                sort,
                pitch,
                isTied(note, StartStop.START, TiedType.START),
                isTied(note, StartStop.STOP, TiedType.STOP),
                slurs(note),
                problem);
    }

    private static Sort sort(Note note, boolean drums) {
        if (note.getRest() != null) {
            return Sort.REST;
        }
        boolean slash = note.getNotehead() != null && note.getNotehead().getValue() == NoteheadValue.SLASH;
        boolean hidden = note.getPrintObject() == YesNo.NO;
        if (hidden && note.getPitch() != null) {
            return Sort.HIDDEN;
        }
        if (drums || note.getPitch() == null || note.getCue() != null) {
            return Sort.SILENT;
        }
        return slash ? Sort.SLASHED : Sort.NOTE;
    }

    private static List<SlurEnd> slurs(Note note) {
        List<SlurEnd> ends = new ArrayList<>();
        for (Notations notations : note.getNotations()) {
            for (Object each : notations.getTiedOrSlurOrTuplet()) {
                if (each instanceof Slur slur
                        && (slur.getType() == StartStopContinue.START || slur.getType() == StartStopContinue.STOP)) {
                    ends.add(new SlurEnd(slur.getNumber(), slur.getType() == StartStopContinue.START));
                }
            }
        }
        return ends;
    }

    private static boolean isTied(Note note, StartStop tie, TiedType tied) {
        for (Tie each : note.getTie()) {
            if (each.getType() == tie) {
                return true;
            }
        }
        for (Notations notations : note.getNotations()) {
            for (Object each : notations.getTiedOrSlurOrTuplet()) {
                if (each instanceof Tied written
                        && (written.getType() == tied || written.getType() == TiedType.CONTINUE)) {
                    return true;
                }
            }
        }
        return false;
    }
}
