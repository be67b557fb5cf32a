package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.musicxml.read.WrittenNote.Sort;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.PlayOrder;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Pitch;

/**
 * Puts the notes of the melody together: chords into groups, gaps into rests, tied notes into one. Over a bar line where
 * the playing may go another way, as into a first ending, tied notes stay apart; what is always tied there is held over.
 */
final class EventBuilder {

    private final MelodyLine line;
    private final List<Fraction> lengths;
    private final PlayOrder order;
    private final Set<Integer> played;
    private final Set<Integer> slurred = new HashSet<>();
    private final Map<Integer, Boolean> straight = new HashMap<>();

    /**
     * Creates a builder.
     *
     * @param line which notes are the melody
     * @param lengths length of each measure
     * @param order order of play
     */
    EventBuilder(MelodyLine line, List<Fraction> lengths, PlayOrder order) {
        this.line = line;
        this.lengths = lengths;
        this.order = order;
        played = new HashSet<>(order.measures());
    }

    /**
     * Returns the events that are played at least once.
     *
     * @throws DiagnosedException if a note of the melody cannot be read
     */
    List<Event> build(List<MeasureContent> measures) throws DiagnosedException {
        List<List<WrittenNote>> notes = measures.stream().map(line::notes).toList();
        slurred.addAll(Slurs.goingOn(notes));
        List<EventDraft> drafts = new ArrayList<>();
        for (int i = 0; i < measures.size(); i++) {
            drafts.addAll(fill(i, groups(i, notes.get(i))));
        }
        List<Event> events = new ArrayList<>();
        List<EventDraft> joined = join(drafts);
        new HeldOver(joined, order).mark();
        for (EventDraft draft : joined) {
            if (played.contains(draft.measure())) {
                events.add(draft.toEvent(events.size()));
            }
        }
        return events;
    }

    private List<EventDraft> groups(int index, List<WrittenNote> written) throws DiagnosedException {
        List<WrittenNote> notes = written.stream()
                .filter(note -> note.isNote() || note.sort() == Sort.REST)
                .sorted(Comparator.comparing(WrittenNote::onset).thenComparing(WrittenNote::sort))
                .toList();
        List<EventDraft> groups = new ArrayList<>();
        for (WrittenNote note : notes) {
            EventDraft last = groups.isEmpty() ? null : groups.get(groups.size() - 1);
            boolean joins = last != null && last.onset().equals(note.onset());
            if (note.sort() == Sort.REST) {
                if (!joins && note.duration().isPositive()) {
                    groups.add(new EventDraft(index, note.onset(), note.duration(), List.of(note.noteIndex())));
                }
                continue;
            }
            Pitch pitch = pitch(note);
            if (last == null || !joins) {
                last = new EventDraft(index, note.onset(), note.duration(), List.of());
                groups.add(last);
            }
            last.add(note, pitch);
            if (slurred.contains(note.noteIndex())) {
                last.slur();
            }
        }
        return groups;
    }

    private static Pitch pitch(WrittenNote note) throws DiagnosedException {
        OddValue bad = note.bad();
        if (bad != null) {
            throw new DiagnosedException(bad.refusal());
        }
        Pitch pitch = note.pitch();
        if (pitch == null) {
            throw new IllegalStateException("A note without a pitch (%d) must say why.".formatted(note.noteIndex()));
        }
        return pitch;
    }

    /** Cuts what overlaps and fills gaps with rests, so that the measure is full from start to end. */
    private List<EventDraft> fill(int index, List<EventDraft> groups) {
        List<EventDraft> full = new ArrayList<>();
        Fraction at = Fraction.ZERO;
        for (int i = 0; i < groups.size(); i++) {
            EventDraft group = groups.get(i);
            Fraction limit = i + 1 < groups.size() ? groups.get(i + 1).onset() : lengths.get(index);
            if (at.compareTo(group.onset()) < 0) {
                full.add(gap(index, at, group.onset()));
            }
            if (group.end().compareTo(limit) > 0) {
                group.cut(limit);
            }
            full.add(group);
            at = group.end();
        }
        if (at.compareTo(lengths.get(index)) < 0) {
            full.add(gap(index, at, lengths.get(index)));
        }
        return full;
    }

    private static EventDraft gap(int measure, Fraction from, Fraction to) {
        return new EventDraft(measure, from, to.minus(from), List.of());
    }

    private List<EventDraft> join(List<EventDraft> drafts) {
        List<EventDraft> joined = new ArrayList<>();
        for (EventDraft draft : drafts) {
            EventDraft last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && last.isTiedTo(draft) && followsDirectly(last, draft)) {
                last.join(draft);
            } else {
                joined.add(draft);
            }
        }
        return joined;
    }

    private boolean followsDirectly(EventDraft first, EventDraft second) {
        return first.endMeasure() == second.measure() || straight.computeIfAbsent(second.measure(), order::isStraight);
    }
}
