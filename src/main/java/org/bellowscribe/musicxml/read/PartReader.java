package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Backup;
import org.audiveris.proxymusic.Barline;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.Forward;
import org.audiveris.proxymusic.Harmony;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.Offset;
import org.audiveris.proxymusic.ScorePartwise.Part;
import org.audiveris.proxymusic.ScorePartwise.Part.Measure;
import org.audiveris.proxymusic.Sound;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.theory.Fraction;
import org.jspecify.annotations.Nullable;

/** Walks through a part in time and hands each element to the reader of its topic. */
final class PartReader {

    private final String id;
    private final Map<String, OddValue> bad;
    private final NoteReader notes;
    private final AttributeReader attributes;
    private final BarlineReader barlines;
    private final DirectionReader directions;
    private final TempoMarks tempos;
    private final RoadMap road;
    private final Staves staves = new Staves();
    private final Cursor cursor;
    private @Nullable OddValue broken;
    private int index;

    // The measure that is being read.
    private String number = "";
    private List<WrittenNote> measureNotes = new ArrayList<>();
    private List<WrittenHarmony> measureHarmonies = new ArrayList<>();
    private List<WrittenWords> measureWords = new ArrayList<>();
    private final List<Runnable> atEnd = new ArrayList<>();
    private final TreeSet<Fraction> onsets = new TreeSet<>();
    private @Nullable TimeSignature time;
    private @Nullable KeySignature key;

    /** Values, signs and tempos of the whole score. */
    record Gathered(Map<String, OddValue> bad, RoadMap road, TempoMarks tempos) {}

    /**
     * Creates a reader.
     *
     * @param id id of the part
     * @param staff the staff whose attributes count where staves differ
     * @param score what is gathered from the whole score
     * @param divisions divisions of a quarter note until the part gives its own
     */
    PartReader(String id, int staff, Gathered score, Fraction divisions) {
        this.id = id;
        bad = score.bad();
        notes = new NoteReader(bad);
        attributes = new AttributeReader(staff, staves);
        barlines = new BarlineReader(score.road());
        directions = new DirectionReader(score.road());
        tempos = score.tempos();
        road = score.road();
        cursor = new Cursor(divisions);
    }

    List<MeasureContent> read(Part part) {
        List<MeasureContent> measures = new ArrayList<>();
        for (Measure measure : part.getMeasure()) {
            measures.add(read(measure));
            index++;
        }
        return measures;
    }

    /** Returns what is printed around the notes. */
    Staves staves() {
        return staves;
    }

    /** Returns a value that leaves the times of the part unknown, or null. */
    @Nullable
    OddValue broken() {
        return broken;
    }

    private MeasureContent read(Measure measure) {
        number = measure.getNumber() == null ? "" : measure.getNumber();
        measureNotes = new ArrayList<>();
        measureHarmonies = new ArrayList<>();
        measureWords = new ArrayList<>();
        onsets.clear();
        cursor.startMeasure();
        time = attributes.time();
        key = attributes.key();
        measure.getNoteOrBackupOrForward().forEach(this::read);
        atEnd.forEach(Runnable::run);
        atEnd.clear();
        return new MeasureContent(
                number,
                measureNotes,
                measureHarmonies,
                measureWords,
                cursor.furthest(),
                time,
                attributes.free(),
                key,
                attributes.repeatsLast());
    }

    private void read(Object element) {
        if (element instanceof Note note) {
            read(note);
        } else if (element instanceof Backup backup) {
            if (backup.getDuration() != null) {
                cursor.back(cursor.quarters(backup.getDuration()));
            }
        } else if (element instanceof Forward forward) {
            if (forward.getDuration() != null) {
                cursor.forward(cursor.quarters(forward.getDuration()));
            }
        } else if (element instanceof Attributes each) {
            read(each);
        } else if (element instanceof Barline barline) {
            barlines.read(barline, index);
        } else if (element instanceof Harmony harmony) {
            measureHarmonies.add(new WrittenHarmony(
                    offset(harmony.getOffset()), harmony, attributes.transposition(), bad.get(harmony.getId())));
        } else if (element instanceof Direction direction) {
            read(direction);
        } else if (element instanceof Sound sound) {
            read(sound);
        }
    }

    private void read(Note note) {
        WrittenNote written = notes.read(note, cursor, attributes, Place.measure(index + 1, number, id));
        if (written == null) {
            return;
        }
        measureNotes.add(written);
        if (note.getTimeOnly() != null) {
            road.remark(index, "Some notes of measure %d are for some times of playing only; they are marked for all.");
        }
        OddValue problem = written.bad();
        if (problem != null && broken == null && !written.duration().isPositive()) {
            broken = problem;
        }
        if (written.isNote()) {
            onsets.add(written.onset());
            if (!note.getLyric().isEmpty()) {
                staves.lyric(written.staff());
            }
        }
    }

    // In mid-measure a new time or key counts from the next measure on.
    private void read(Attributes each) {
        attributes.read(each, cursor);
        if (!cursor.position().isPositive()) {
            time = attributes.time();
            key = attributes.key();
        }
    }

    private void read(Direction direction) {
        Fraction onset = offset(direction.getOffset());
        String text = DirectionReader.words(direction);
        if (!text.isEmpty()) {
            measureWords.add(new WrittenWords(onset, text));
        }
        tempos.add(index, onset, TempoReader.read(direction));
        atEnd.add(() -> directions.read(direction, moment(onset)));
    }

    private void read(Sound sound) {
        Fraction onset = offset(sound.getOffset());
        tempos.add(index, onset, TempoReader.read(sound));
        atEnd.add(() -> directions.read(sound, moment(onset)));
    }

    /** Returns where a time of the measure stands among its notes; known when the measure is read to its end. */
    private Moment moment(Fraction onset) {
        boolean first = !onset.isPositive();
        boolean behind = !first && onset.compareTo(cursor.furthest()) >= 0;
        int onsetsAfter = first ? 0 : onsets.tailSet(onset).size();
        return new Moment(index, behind ? index + 1 : index, first, onsetsAfter);
    }

    private Fraction offset(@Nullable Offset offset) {
        if (offset == null || offset.getValue() == null) {
            return cursor.position();
        }
        Fraction at = cursor.position().plus(cursor.quarters(offset.getValue()));
        return at.numerator() < 0 ? Fraction.ZERO : at;
    }
}
