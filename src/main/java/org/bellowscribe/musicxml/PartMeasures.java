package org.bellowscribe.musicxml;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.Forward;
import org.audiveris.proxymusic.Note;
import org.bellowscribe.annotation.OwnPart;
import org.bellowscribe.annotation.PartLook;
import org.bellowscribe.annotation.PartMeasure;
import org.bellowscribe.annotation.PartNote;
import org.bellowscribe.annotation.PartWords;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.NoteName;
import org.jspecify.annotations.Nullable;

/**
 * Writes what stands in the measures of an added part. Notes begin exactly when they are struck; one that no value fits, as
 * within a triplet, is written as the next shorter value. Rests fill each measure up to what the melody has in it.
 */
final class PartMeasures {

    /** What stands for the time of the score, which is copied as it is written there. */
    private static final Pattern TIME = Pattern.compile("<time>.*</time>");

    private final OwnPart part;
    private final List<PartFrame> frames;
    private final boolean alone;
    private final PartElements elements;
    private final Fragment fragment = new Fragment();
    private int fifths;
    private @Nullable TimeSignature time;

    /**
     * Creates a writer; measures must then be asked for in order.
     *
     * @param frames the measures of the melody
     * @param alone true in a score of its own: then the signs of the order of play are copied, which one part of a score
     *     must have, and nothing tells that it was added
     */
    PartMeasures(OwnPart part, List<PartFrame> frames, boolean alone) {
        this.part = part;
        this.frames = frames;
        this.alone = alone;
        elements = new PartElements(divisions(part));
    }

    /** Returns the number of measures. */
    int count() {
        return Math.min(frames.size(), part.measures().size());
    }

    /**
     * Returns what stands in a measure.
     *
     * @param index 0-based
     */
    String content(int index) {
        PartMeasure measure = part.measures().get(index);
        PartFrame frame = frames.get(index);
        StringBuilder content = new StringBuilder(attributes(index, measure.measure(), frame));
        content.append(frame.leftBarlines()).append(alone ? frame.signsBefore() : "");
        music(measure, content);
        return content.append(alone ? frame.signsAfter() : "")
                .append(frame.rightBarlines())
                .toString();
    }

    /** Returns a whole measure. */
    String measure(int index) {
        return frames.get(index).startTag() + content(index) + "</measure>";
    }

    private String attributes(int index, Measure measure, PartFrame frame) {
        Attributes attributes = index == 0 ? elements.divisions() : new Attributes();
        boolean changesKey = index == 0 || measure.key().fifths() != fifths;
        if (changesKey) {
            fifths = measure.key().fifths();
            // A line without pitches has no key.
            attributes.getKey().add(PartElements.key(part.look() == PartLook.BELLOWS ? 0 : fifths));
        }
        boolean changesTime = !measure.time().equals(time);
        time = measure.time();
        boolean copiesTime = !frame.time().isEmpty();
        if (copiesTime || changesTime) {
            attributes.getTime().add(PartElements.time(time));
        }
        if (index == 0) {
            attributes.getClef().add(PartElements.clef(part.look()));
        }
        if (!changesKey && !changesTime && !copiesTime) {
            return "";
        }
        String text = fragment.text("attributes", Attributes.class, attributes);
        return copiesTime ? TIME.matcher(text).replaceFirst(Matcher.quoteReplacement(frame.time())) : text;
    }

    private void music(PartMeasure measure, StringBuilder content) {
        Fraction length = measure.measure().length();
        boolean early = measure.words().stream().allMatch(each -> each.onset().equals(Fraction.ZERO));
        if (measure.notes().isEmpty() && early) {
            measure.words().forEach(each -> content.append(direction(each)));
            content.append(length.isPositive() ? text(elements.measureRest(length)) : "");
            return;
        }
        PartAccidentals accidentals = new PartAccidentals(fifths);
        SortedSet<Fraction> stops = new TreeSet<>();
        measure.notes().forEach(note -> stops.add(note.onset()));
        measure.words().forEach(each -> stops.add(each.onset()));
        stops.add(length);
        Fraction at = Fraction.ZERO;
        for (Fraction stop : stops) {
            at = fill(measure.measure(), at, stop, content);
            for (PartWords each : measure.words()) {
                content.append(each.onset().equals(stop) ? direction(each) : "");
            }
            for (PartNote note : measure.notes()) {
                at = note.onset().equals(stop) ? note(note, accidentals, content) : at;
            }
        }
    }

    /** Fills the time up to a stop with rests; what no rest can be is passed over. Returns the stop. */
    private Fraction fill(Measure measure, Fraction from, Fraction stop, StringBuilder content) {
        Fraction at = from;
        while (at.compareTo(stop) < 0) {
            NoteValue value = NoteValue.rest(at.plus(measure.beatOffset()), stop.minus(at));
            if (value == null) {
                content.append(fragment.text("forward", Forward.class, elements.forward(stop.minus(at))));
                return stop;
            }
            content.append(text(elements.rest(value)));
            at = at.plus(value.length());
        }
        return at;
    }

    /** Writes a note, tied together of several where no single value fits, and returns when it ends. */
    private Fraction note(PartNote note, PartAccidentals accidentals, StringBuilder content) {
        List<NoteValue> values = values(part.look(), note);
        if (values.isEmpty()) {
            write(note, new Piece(note.duration(), null, false, false), accidentals, content);
            return note.end();
        }
        Fraction end = note.onset();
        for (int i = 0; i < values.size(); i++) {
            NoteValue value = values.get(i);
            write(note, new Piece(value.length(), value, i > 0, i + 1 < values.size()), accidentals, content);
            end = end.plus(value.length());
        }
        return end;
    }

    /** One of the notes on paper that a note is written as. */
    private record Piece(Fraction length, @Nullable NoteValue value, boolean goesOn, boolean tied) {}

    // Strokes of the left hand are short: a shorter value will do.
    private static List<NoteValue> values(PartLook look, PartNote note) {
        if (look != PartLook.LEFT_HAND) {
            return NoteValue.tied(note.duration());
        }
        NoteValue value = NoteValue.atMost(note.duration());
        return value == null ? List.of() : List.of(value);
    }

    private void write(PartNote note, Piece piece, PartAccidentals accidentals, StringBuilder content) {
        int heads = Math.max(1, note.notes().size());
        for (int i = 0; i < heads; i++) {
            Note written = note.notes().isEmpty()
                    ? elements.stroke(piece.length(), piece.value())
                    : head(note.notes().get(i), piece, accidentals);
            if (i > 0) {
                PartElements.inChord(written);
            } else if (!piece.goesOn()) {
                mark(written, note);
            }
            PartElements.tie(written, piece.goesOn(), piece.tied());
            content.append(text(written));
        }
    }

    private Note head(NoteName name, Piece piece, PartAccidentals accidentals) {
        return elements.note(name, piece.length(), piece.value(), piece.goesOn() ? "" : accidentals.sign(name));
    }

    private void mark(Note written, PartNote note) {
        if (!note.fingers().isEmpty()) {
            PartElements.addFingers(written, note.fingers());
        }
        note.syllables().forEach(each -> PartElements.addLyric(written, alone ? "" : MarkNames.PREFIX, each));
    }

    private String text(Note note) {
        return fragment.text("note", Note.class, note);
    }

    private String direction(PartWords words) {
        return fragment.text("direction", Direction.class, PartElements.words(words.text()));
    }

    /** Returns the parts of a quarter that make everything whole. */
    private static long divisions(OwnPart part) {
        long divisions = 1;
        for (PartMeasure measure : part.measures()) {
            divisions = common(divisions, measure.measure().length());
            divisions = common(divisions, measure.measure().beatOffset());
            for (PartNote note : measure.notes()) {
                divisions = common(divisions, note.onset());
                List<NoteValue> values = values(part.look(), note);
                for (NoteValue value : values) {
                    divisions = common(divisions, value.length());
                }
                divisions = values.isEmpty() ? common(divisions, note.duration()) : divisions;
            }
            for (PartWords words : measure.words()) {
                divisions = common(divisions, words.onset());
            }
        }
        return divisions;
    }

    /** Returns the least common multiple of divisions and the denominator of a time. */
    private static long common(long divisions, Fraction time) {
        return Math.multiplyExact(
                divisions, Fraction.of(divisions, time.denominator()).denominator());
    }
}
