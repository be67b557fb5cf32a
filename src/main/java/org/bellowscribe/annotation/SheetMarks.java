package org.bellowscribe.annotation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Fraction;

/** Puts marks at the notes of the file and brings together what meets there. */
final class SheetMarks {

    private static final Comparator<Annotation> DOCUMENT_ORDER =
            Comparator.comparingInt(Annotation::noteIndex).thenComparingInt(SheetMarks::rank);

    private final Tune tune;
    private final Style style;
    private final SignedMarks signed;
    private final LyricLines lyrics = new LyricLines();
    private final MergedWords words;
    // Those and the usual ones that are not printed: every sheet of a tune has its words at the same notes.
    private final MergedWords places;
    private final List<Annotation> others = new ArrayList<>();
    private final List<Annotation> symbols = new ArrayList<>();

    SheetMarks(Tune tune, Style style, SignedMarks signed) {
        this.tune = tune;
        this.style = style;
        this.signed = signed;
        this.words = new MergedWords(style.words());
        this.places = new MergedWords(style.words());
    }

    /** Adds a mark, with the sign if it is fixed. Words at a rest that is not written go to the next event that is; other marks there are left out. */
    void add(Mark mark) {
        Event event = tune.events().get(mark.event());
        if (mark instanceof Mark.Words text) {
            written(mark.event()).forEach(written -> words.add(written.firstNoteIndex(), signed(text)));
            leaveRoomFor(text);
        } else if (mark instanceof Mark.Symbol symbol) {
            written(mark.event()).forEach(written -> add(symbol, written));
        } else if (mark instanceof Mark.Syllable syllable && !event.isGap()) {
            lyrics.add(event.firstNoteIndex(), signed(syllable));
        } else if (mark instanceof Mark.Sign sign && !event.isGap()) {
            others.add(new Annotation.Sign(event.noteIndices().get(0), sign.smufl()));
        } else if (mark instanceof Mark.Finger finger && !event.isGap()) {
            others.add(new Annotation.Finger(event.noteIndices().get(finger.note()), finger.finger()));
        } else if (mark instanceof Mark.Bracket line) {
            List<Integer> end = tune.events().get(line.last()).noteIndices();
            others.add(new Annotation.Bracket(event.firstNoteIndex(), Collections.max(end)));
        }
    }

    /** Keeps the place of words that are not printed; other marks take none. */
    void leaveRoomFor(Mark mark) {
        if (mark instanceof Mark.Words text) {
            written(mark.event()).forEach(written -> places.add(written.firstNoteIndex(), signed(text)));
        }
    }

    private Mark.Words signed(Mark.Words words) {
        MarkAspect aspect = switch (words.topic()) {
            case DIRECTION -> MarkAspect.DIRECTION;
            case AIR -> MarkAspect.AIR;
            case HAND -> MarkAspect.HAND;
            case LEFT_HAND -> MarkAspect.LEFT_HAND;
            default -> null;
        };
        return aspect != null && signed.has(words.event(), aspect)
                ? new Mark.Words(words.event(), words.topic(), words.text() + SignedMarks.SIGN)
                : words;
    }

    private Mark.Syllable signed(Mark.Syllable syllable) {
        MarkAspect aspect = MarkLines.aspect(syllable.line());
        return aspect != null
                        && signed.has(syllable.event(), aspect)
                        && (aspect == MarkAspect.LEFT_HAND || !syllable.text().equals(style.filler()))
                ? new Mark.Syllable(syllable.event(), syllable.line(), syllable.text() + SignedMarks.SIGN)
                : syllable;
    }

    /** Returns the event, or the next one that is written; none if there is none. */
    private List<Event> written(int event) {
        return tune.events().stream()
                .skip(event)
                .filter(next -> !next.isGap())
                .limit(1)
                .toList();
    }

    private void add(Mark.Symbol symbol, Event written) {
        Fraction offset = written.index() == symbol.event() ? symbol.offset() : Fraction.ZERO;
        Annotation.Symbol added =
                new Annotation.Symbol(written.firstNoteIndex(), offset, symbol.root(), symbol.third(), symbol.bass());
        symbols.removeIf(other -> other instanceof Annotation.Symbol before
                && before.noteIndex() == added.noteIndex()
                && before.offset().equals(offset));
        symbols.add(added);
    }

    /** Returns what to write, in the order of the file. */
    List<Annotation> annotations() {
        List<Annotation> annotations = new ArrayList<>(others);
        annotations.addAll(symbols);
        StartWords.spread(places, tune.events()).forEach((topic, move) -> words.move(topic, move.from(), move.to()));
        JoinedAir.join(words, style.words(), tune);
        annotations.addAll(words.annotations());
        annotations.addAll(lyrics.annotations(style.filler()));
        annotations.sort(DOCUMENT_ORDER);
        return List.copyOf(annotations);
    }

    private static int rank(Annotation annotation) {
        if (annotation instanceof Annotation.Symbol) {
            return -1;
        }
        if (annotation instanceof Annotation.Words || annotation instanceof Annotation.Bracket) {
            return 0;
        }
        return annotation instanceof Annotation.Syllable syllable ? 1 + syllable.line() : Integer.MAX_VALUE;
    }
}
