package org.bellowscribe.musicxml;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.bellowscribe.annotation.LeftHandPart;
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

    private final LeftHandPart part;
    private final List<PartFrame> frames;
    private final boolean alone;
    private final long divisions;
    private int fifths;
    private @Nullable TimeSignature time;

    /**
     * Creates a writer; measures must then be asked for in order.
     *
     * @param frames the measures of the melody
     * @param alone true in a score of its own: then the signs of the order of play are copied, which one part of a score
     *     must have, and nothing tells that it was added
     */
    PartMeasures(LeftHandPart part, List<PartFrame> frames, boolean alone) {
        this.part = part;
        this.frames = frames;
        this.alone = alone;
        divisions = divisions(part);
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
        StringBuilder inside = new StringBuilder();
        if (index == 0) {
            inside.append(element("divisions", divisions));
        }
        if (index == 0 || measure.key().fifths() != fifths) {
            fifths = measure.key().fifths();
            inside.append("<key>").append(element("fifths", fifths)).append("</key>");
        }
        boolean changes = !measure.time().equals(time);
        time = measure.time();
        if (!frame.time().isEmpty()) {
            inside.append(frame.time());
        } else if (changes) {
            inside.append("<time>")
                    .append(element("beats", time.beats()))
                    .append(element("beat-type", time.beatType()))
                    .append("</time>");
        }
        if (index == 0) {
            inside.append("<clef><sign>F</sign><line>4</line></clef>");
        }
        return inside.isEmpty() ? "" : "<attributes>" + inside + "</attributes>";
    }

    private void music(PartMeasure measure, StringBuilder content) {
        Fraction length = measure.measure().length();
        boolean early = measure.words().stream().allMatch(each -> each.onset().equals(Fraction.ZERO));
        if (measure.notes().isEmpty() && early) {
            measure.words().forEach(each -> content.append(direction(each)));
            content.append(length.isPositive() ? rest("<rest measure=\"yes\"/>", length, "") : "");
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
                content.append("<forward>").append(duration(stop.minus(at))).append("</forward>");
                return stop;
            }
            content.append(rest("<rest/>", value.length(), element("type", value.type())));
            at = at.plus(value.length());
        }
        return at;
    }

    private String rest(String rest, Fraction length, String type) {
        return "<note>" + rest + duration(length) + "<voice>1</voice>" + type + "</note>";
    }

    /** Writes a note and returns when it ends. */
    private Fraction note(PartNote note, PartAccidentals accidentals, StringBuilder content) {
        NoteValue value = NoteValue.atMost(note.duration());
        Fraction length = value == null ? note.duration() : value.length();
        String type = value == null ? "" : element("type", value.type()) + (value.isDotted() ? "<dot/>" : "");
        for (int i = 0; i < note.notes().size(); i++) {
            NoteName name = note.notes().get(i);
            String sign = accidentals.sign(name);
            content.append("<note>").append(i > 0 ? "<chord/>" : "").append(pitch(name));
            content.append(duration(length)).append("<voice>1</voice>").append(type);
            content.append(sign.isEmpty() ? "" : element("accidental", sign));
            content.append(i == 0 ? marks(note) : "").append("</note>");
        }
        return note.onset().plus(length);
    }

    private String marks(PartNote note) {
        StringBuilder marks = new StringBuilder();
        if (!note.fingers().isEmpty()) {
            marks.append("<notations><technical>");
            note.fingers().forEach(finger -> marks.append(element("fingering", finger)));
            marks.append("</technical></notations>");
        }
        return marks.append("<lyric number=\"1\" name=\"")
                .append(alone ? "" : MarkNames.PREFIX)
                .append("left-hand\"><syllabic>single</syllabic>")
                .append("<text>")
                .append(XmlText.escape(note.label()))
                .append("</text></lyric>")
                .toString();
    }

    private static String pitch(NoteName name) {
        String alter = name.alter() == 0 ? "" : element("alter", name.alter());
        return "<pitch>" + element("step", name.letter()) + alter + element("octave", name.octave()) + "</pitch>";
    }

    private static String direction(PartWords words) {
        return "<direction placement=\"above\"><direction-type><words>" + XmlText.escape(words.text())
                + "</words></direction-type><voice>1</voice></direction>";
    }

    private String duration(Fraction time) {
        return element("duration", time.times(Fraction.of(divisions, 1)).numerator());
    }

    private static String element(String name, Object content) {
        return "<" + name + ">" + content + "</" + name + ">";
    }

    /** Returns the parts of a quarter that make everything whole. */
    private static long divisions(LeftHandPart part) {
        long divisions = 1;
        for (PartMeasure measure : part.measures()) {
            divisions = common(divisions, measure.measure().length());
            divisions = common(divisions, measure.measure().beatOffset());
            for (PartNote note : measure.notes()) {
                NoteValue value = NoteValue.atMost(note.duration());
                divisions = common(divisions, note.onset());
                divisions = common(divisions, value == null ? note.duration() : value.length());
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
