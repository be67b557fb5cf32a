package org.bellowscribe.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.mark.HeldButtons;
import org.bellowscribe.annotation.mark.Reversals;
import org.bellowscribe.annotation.style.Phrase;
import org.bellowscribe.annotation.style.Wordings;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.ConcertinaNumbers;
import org.bellowscribe.lefthand.Stroke;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Key;

/** What is played at a note group or a rest, in words, piece by piece. */
final class SpokenStep {

    private final Arrangement arrangement;
    private final Tune sheet;
    private final Wordings<Phrase> phrases;
    private final SpokenNotes notes;
    private final SpokenPlaces places;
    private final HeldButtons held;
    private final Map<Integer, List<Stroke>> strokes;

    /**
     * Looks at a tune.
     *
     * @param sheet the tune as its sheet has it
     */
    SpokenStep(Arrangement arrangement, Tune sheet) {
        this.arrangement = arrangement;
        this.sheet = sheet;
        phrases = arrangement.style().spoken();
        notes = new SpokenNotes(phrases);
        places = new SpokenPlaces(sheet, phrases);
        held = new HeldButtons(arrangement);
        strokes = Stroke.of(arrangement.solution()).stream().collect(Collectors.groupingBy(Stroke::event));
    }

    /** Returns the pieces in the order in which they are said: the note, then what plays it, the left hand, the air. */
    List<String> pieces(Step step) {
        List<String> pieces = new ArrayList<>();
        pieces.add(note(step.event()));
        if (step.event().heldOver()) {
            pieces.add(phrases.say(Phrase.HELD_OVER));
        }
        if (Reversals.moves(step)) {
            pieces.add(phrases.say(Phrase.valueOf(step.direction().name())));
        }
        if (!step.buttons().isEmpty()) {
            addRightHand(step, pieces);
        }
        addLeftHand(step, pieces);
        if (step.air() != AirUse.NONE) {
            pieces.add(phrases.say(step.air() == AirUse.FULL ? Phrase.AIR_FULL : Phrase.AIR_LIGHT));
        }
        return pieces;
    }

    private String note(Event event) {
        if (event.isRest()) {
            return phrases.say(Phrase.REST);
        }
        Key key = sheet.measureOf(event).key();
        return joined(sheet.events().get(event.index()).pitches().stream()
                .map(pitch -> notes.note(pitch.pitchClass(), key))
                .toList());
    }

    private void addRightHand(Step step, List<String> pieces) {
        pieces.add(joined(step.buttons().stream().map(this::button).toList()));
        if (step.buttons().stream().anyMatch(button -> held.isHeld(step, button))) {
            pieces.add(phrases.say(Phrase.STILL_DOWN));
        }
        List<String> fingers = step.fingers().stream().map(String::valueOf).toList();
        pieces.add(
                fingers.size() == 1
                        ? phrases.say(Phrase.FINGER, "finger", fingers.get(0))
                        : phrases.say(Phrase.FINGERS, "fingers", joined(fingers)));
    }

    private String button(Button button) {
        if (arrangement.instrument().grip().strapped()) {
            return phrases.say(Phrase.BUTTON, "button", new ConcertinaNumbers(arrangement.instrument()).of(button));
        }
        int rows = arrangement.instrument().rows();
        if (rows == 1) {
            return phrases.say(Phrase.BUTTON, "button", button.number());
        }
        return phrases.say(Phrase.BUTTON_OF, Map.of("button", button.number(), "row", row(button.row(), rows)));
    }

    private String row(int row, int rows) {
        if (rows > 3) {
            return phrases.say(Phrase.ROW_OTHER, "row", row);
        }
        return phrases.say(row == 1 ? Phrase.ROW_OUTER : row == rows ? Phrase.ROW_INNER : Phrase.ROW_MIDDLE);
    }

    private void addLeftHand(Step step, List<String> pieces) {
        Event event = step.event();
        Key key = arrangement.tune().measureOf(event).key();
        Map<Fraction, List<String>> byOffset = new LinkedHashMap<>();
        for (Stroke stroke : strokes.getOrDefault(event.index(), List.of())) {
            byOffset.computeIfAbsent(stroke.offset(), offset -> new ArrayList<>())
                    .add(notes.sound(stroke.sound(), key));
        }
        byOffset.forEach((offset, sounds) ->
                pieces.add(offset.isPositive() ? places.later(event, offset, joined(sounds)) : joined(sounds)));
    }

    private String joined(List<String> things) {
        return String.join(phrases.say(Phrase.AND), things);
    }
}
