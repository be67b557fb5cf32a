package org.bellowscribe.musicxml;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.theory.Interval;
import org.bellowscribe.theory.KeyMove;
import org.bellowscribe.theory.NoteName;
import org.jspecify.annotations.Nullable;

/**
 * Transposes the text of a score: notes, key signatures, chord symbols and accidentals of every part, each by the same
 * written interval, so that a part of a transposing instrument stays one. Values of elements are written over; an alter
 * is put in or taken out where it must be, and so is the signature of a part that had none. All else stays.
 */
final class ScoreTransposer implements XmlVisitor {

    private static final int HIGHEST_OCTAVE = 9;

    private final String text;
    private final Map<String, PartKeys.Part> parts;
    private final int semitones;
    private final Splices splices = new Splices();
    private final Map<String, XmlElement> children = new HashMap<>();
    private final Map<String, Interval> intervals = new HashMap<>();
    private String partId = "";
    private boolean isDrums;
    private KeyMove move;
    private Interval interval;
    private @Nullable WrittenName before;
    private int raised;
    private @Nullable DiagnosedException refusal;

    private ScoreTransposer(String text, Map<String, PartKeys.Part> parts, int semitones) {
        this.text = text;
        this.parts = parts;
        this.semitones = semitones;
        move = KeyMove.of(List.of(), semitones);
        interval = move.in(0);
    }

    /**
     * Returns the text some semitones higher, or lower if negative.
     *
     * @throws DiagnosedException if the elements do not nest, or a note would leave the octaves that MusicXML has
     */
    static String transpose(String text, int semitones) throws DiagnosedException {
        ScoreTransposer transposer = new ScoreTransposer(text, PartKeys.of(text), semitones);
        XmlWalk.over(text, transposer);
        if (transposer.refusal != null) {
            throw transposer.refusal;
        }
        return transposer.splices.apply(text);
    }

    @Override
    public void start(XmlElement element) {
        String id = PartKeys.partId(element);
        PartKeys.Part part = id == null ? null : parts.get(id);
        if (id != null && part != null) {
            begin(id, part);
        }
    }

    // A timewise score comes back to each part in every measure.
    private void begin(String id, PartKeys.Part part) {
        isDrums = part.isDrums();
        move = KeyMove.of(part.signatures(), semitones);
        partId = id;
        Interval last = intervals.get(id);
        if (last != null) {
            interval = last;
            return;
        }
        boolean missing = part.missingPlace() >= 0;
        interval = move.in(
                missing || part.signatures().isEmpty() ? 0 : part.signatures().get(0));
        intervals.put(id, interval);
        if (missing && !isDrums && interval.fifths() != 0) {
            splices.insert(part.missingPlace(), part.missing(move.signature(0)));
        }
    }

    @Override
    public void end(XmlElement element) {
        XmlElement parent = element.parent();
        if (isDrums || parent == null) {
            return;
        }
        switch (element.name()) {
            case "step", "alter", "octave", "root-step", "root-alter", "bass-step", "bass-alter", "key-step" ->
                children.put(element.name(), element);
            case "pitch" -> note("");
            case "root" -> note("root-");
            case "bass" -> note("bass-");
            case "key-alter" -> keyAlter(element);
            case "fifths", "cancel", "numeral-fifths" -> signature(element, parent);
            case "accidental", "key-accidental" -> sign(element, raised);
            case "accidental-mark" -> accidentalMark(element, parent);
            default -> {}
        }
    }

    /** Rewrites the note whose step, alter and octave have just been seen. */
    private void note(String prefix) {
        XmlElement step = children.remove(prefix + "step");
        XmlElement alter = children.remove(prefix + "alter");
        XmlElement octave = children.remove("octave");
        WrittenName written = step == null ? null : WrittenName.of(step, alter, prefix.isEmpty() ? octave : null);
        if (step == null || written == null) {
            return;
        }
        NoteName moved = written.name().plus(interval);
        splices.content(step, String.valueOf(moved.letter()));
        alter(step, alter, prefix, written.alter(moved));
        if (prefix.isEmpty()) {
            before = written;
            raised = moved.alter() - written.name().alter();
        }
        if (prefix.isEmpty() && octave != null) {
            splices.content(octave, String.valueOf(moved.octave()));
            if (moved.octave() < 0 || moved.octave() > HIGHEST_OCTAVE) {
                refuse(step, written.name(), moved);
            }
        }
    }

    private void alter(XmlElement step, @Nullable XmlElement alter, String prefix, String value) {
        boolean none = value.equals("0");
        if (alter == null) {
            if (!none) {
                String tag = prefix + "alter>";
                splices.insert(step.end(), step.indentation() + "<" + tag + value + "</" + tag);
            }
        } else if (none && !alter.hasAttributes()) {
            splices.remove(alter);
        } else {
            splices.content(alter, value);
        }
    }

    private void refuse(XmlElement step, NoteName from, NoteName to) {
        refusal = new DiagnosedException(Diagnostic.error(
                DiagnosticCode.NO_BUTTON,
                TextPlace.of(text, step.start()),
                "The note %s cannot be moved to %s: MusicXML has the octaves 0 to 9.".formatted(from, to),
                "Maybe transpose the other way."));
    }

    /** Rewrites one accidental of a key that is no circle of fifths. */
    private void keyAlter(XmlElement alter) {
        XmlElement step = children.remove("key-step");
        WrittenName written = step == null ? null : WrittenName.of(step, alter, null);
        if (step != null && written != null) {
            NoteName moved = written.name().plus(interval);
            splices.content(step, String.valueOf(moved.letter()));
            splices.content(alter, written.alter(moved));
            raised = moved.alter() - written.name().alter();
        }
    }

    private void signature(XmlElement element, XmlElement parent) {
        if (!element.plainContent().matches("[+-]?[0-9]{1,2}")) {
            return;
        }
        int signature = Integer.parseInt(element.plainContent());
        if (element.name().equals("fifths") && parent.name().equals("key")) {
            interval = move.in(signature);
            intervals.put(partId, interval);
        }
        splices.content(element, String.valueOf(move.signature(signature)));
    }

    private void sign(XmlElement element, int semitonesMore) {
        String sign = AccidentalSigns.raised(element.plainContent(), semitonesMore);
        if (sign != null) {
            splices.content(element, sign);
        }
    }

    /** An accidental at an ornament belongs to the note above or, placed below, to the note below. */
    private void accidentalMark(XmlElement element, XmlElement parent) {
        Integer alter = AccidentalSigns.semitones(element.plainContent());
        if (!parent.name().equals("ornaments")) {
            sign(element, raised);
        } else if (before != null && alter != null) {
            boolean below = "below".equals(element.attribute("placement"));
            NoteName neighbor = before.name().neighbor(below ? -1 : 1, alter);
            sign(element, neighbor.plus(interval).alter() - alter);
        }
    }
}
