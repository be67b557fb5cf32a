package org.bellowscribe.annotation.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.MarkAspect;
import org.bellowscribe.annotation.MarkLines;
import org.bellowscribe.annotation.SignedMarks;
import org.bellowscribe.annotation.mark.RowUse;
import org.bellowscribe.annotation.style.ButtonLines;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.score.Event;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Task;
import org.jspecify.annotations.Nullable;

/**
 * Reads the marks of a sheet back into what they say: the buttons, the left hand, and the words for direction, air and
 * hand.
 */
public final class MarkReading {

    private final Task task;
    private final Style style;
    private final WordReading words;
    private final RowLineReading rows;
    private final List<Annotation> found;
    private final Map<Integer, Event> events = new HashMap<>();
    // By 0-based index of the event.
    private final Map<Integer, AirUse> airs = new HashMap<>();

    /**
     * Creates a reading.
     *
     * @param task the tune, the instrument and what the left hand should sound
     * @param style the style in which the marks are written
     * @param found the marks, each at its note
     */
    public MarkReading(Task task, Style style, List<Annotation> found) {
        this(task, style, found, found);
    }

    /**
     * Creates a reading of some of the marks.
     *
     * @param all all marks of the sheet: the sign that the air button stays down tells nothing alone
     */
    MarkReading(Task task, Style style, List<Annotation> found, List<Annotation> all) {
        this.task = task;
        this.style = style;
        this.found = List.copyOf(found);
        rows = new RowLineReading(found, style.filler());
        words = new WordReading(style.words(), style.practice());
        for (Event event : task.tune().events()) {
            event.noteIndices().forEach(note -> events.put(note, event));
        }
        all.stream().sorted(Comparator.comparingInt(Annotation::noteIndex)).forEach(this::findAir);
    }

    private void findAir(Annotation mark) {
        Event event = events.get(mark.noteIndex());
        if (event != null && mark instanceof Annotation.Words text) {
            AirUse use = words.air(text.text(), airs.get(event.index() - 1));
            if (use != null) {
                airs.put(event.index(), use);
            }
        }
    }

    /** Returns the row that numbers without a sign belong to; 0 if the sheet does not say and it matters. */
    public int mainRow() {
        int count = task.instrument().rows();
        for (Annotation mark : found) {
            int row = mark instanceof Annotation.Words text ? words.row(text.text(), count) : 0;
            if (row > 0) {
                return row;
            }
        }
        boolean byLine = style.buttons().lines() == ButtonLines.ROWS;
        return count == 1 || byLine || task.instrument().grip().strapped() ? 1 : 0;
    }

    /** Returns true if all that was found are words that tell how far the bellows are open. */
    boolean isOpening() {
        return found.stream().allMatch(mark -> mark instanceof Annotation.Words text && words.isOpening(text.text()));
    }

    /**
     * Returns all that can be fixed or bears the sign, in the order in which it was found; fillers are passed over.
     *
     * @param mainRow the row that numbers without a sign belong to
     */
    public List<ReadMark> read(int mainRow) {
        ButtonReading buttons = new ButtonReading(
                task.instrument(), style.buttons(), RowUse.ofMain(Math.max(1, mainRow), task.instrument()));
        List<ReadMark> read = new ArrayList<>();
        for (Annotation mark : found) {
            Event event = events.get(mark.noteIndex());
            if (mark instanceof Annotation.Syllable syllable) {
                read.addAll(syllable(event, syllable, buttons));
            } else if (mark instanceof Annotation.Words text) {
                read.addAll(words(event, text.text()));
            }
        }
        return read;
    }

    private List<ReadMark> syllable(@Nullable Event event, Annotation.Syllable syllable, ButtonReading buttons) {
        MarkAspect aspect = MarkLines.aspect(syllable.name());
        boolean signed = SignedMarks.isSigned(syllable.text());
        String text = SignedMarks.unsigned(syllable.text());
        if (aspect == null || text.isEmpty()) {
            return List.of();
        }
        if (event == null || event.isRest()) {
            return nowhere(aspect, syllable.text());
        }
        if (MarkLines.row(syllable.name()) > 0) {
            SortedMap<Integer, String> texts = rows.from(syllable);
            return texts.isEmpty()
                    ? List.of()
                    : List.of(buttons.read(event, texts).signed(rows.isSigned(syllable)));
        }
        if (aspect == MarkAspect.LEFT_HAND) {
            List<Event> group = group(event);
            boolean filler = text.equals(style.filler())
                    && task.wanted().stream()
                            .noneMatch(wanted -> group.stream().anyMatch(each -> each.index() == wanted.event()));
            return filler
                    ? List.of()
                    : List.of(new LeftHandReading(task, style).read(group, text).signed(signed));
        }
        BellowsDirection line = MarkLines.direction(syllable.name());
        return text.equals(style.filler())
                ? List.of()
                : List.of(buttons.read(event, line, text).signed(signed));
    }

    private List<ReadMark> words(@Nullable Event event, String text) {
        if (event == null) {
            return nowhere(null, text);
        }
        List<ReadMark> read = new ArrayList<>(words.read(event, text, airs.get(event.index() - 1)));
        String sounds = event.isRest() ? words.leftHand(text) : null;
        if (sounds != null) {
            read.add(new LeftHandReading(task, style)
                    .read(group(event), SignedMarks.unsigned(sounds))
                    .signed(SignedMarks.isSigned(sounds)));
        }
        return read;
    }

    // Where no note is struck there is nothing to fix.
    private static List<ReadMark> nowhere(@Nullable MarkAspect aspect, String text) {
        String trouble = "stands at no note that is struck and no rest of the melody";
        return SignedMarks.isSigned(text)
                ? List.of(ReadMark.unread(
                                -1, aspect, text, trouble, "Maybe move it to the note or rest that it is about.")
                        .signed(true))
                : List.of();
    }

    // The event and the rests behind it in its measure, up to one that has letters of its own.
    private List<Event> group(Event first) {
        List<Event> group = new ArrayList<>(List.of(first));
        for (Event next : task.tune()
                .events()
                .subList(first.index() + 1, task.tune().events().size())) {
            if (!next.isRest() || next.measure() != first.measure() || hasLetters(next)) {
                break;
            }
            group.add(next);
        }
        return group;
    }

    private boolean hasLetters(Event rest) {
        return found.stream()
                .anyMatch(mark -> mark instanceof Annotation.Words text
                        && rest.noteIndices().contains(mark.noteIndex())
                        && words.leftHand(text.text()) != null);
    }
}
