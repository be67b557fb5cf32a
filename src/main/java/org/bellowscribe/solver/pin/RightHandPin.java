package org.bellowscribe.solver.pin;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.score.Event;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Task;
import org.bellowscribe.theory.Pitch;
import org.jspecify.annotations.Nullable;

/** What an entry fixes of the right hand: buttons, fingers and the place of the hand. */
final class RightHandPin {

    private final Task task;
    private final Event event;
    private final DefinitionElement entry;

    RightHandPin(Task task, Event event, DefinitionElement entry) {
        this.task = task;
        this.event = event;
        this.entry = entry;
    }

    Pin on(Pin pin) throws DiagnosedException {
        List<String> buttons = words("button");
        List<String> fingers = words("finger");
        if (event.isRest() && !(buttons.isEmpty() && fingers.isEmpty())) {
            throw BadPin.of(
                    entry, "A rest has no button and no finger.", "Maybe direction, hand-on, left-hand or air.");
        }
        List<Integer> pitches = new ArrayList<>();
        Pin pinned = pin;
        for (String id : buttons) {
            int pitch = pitch(id, pinned.direction());
            pitches.add(pitch);
            pinned = pinned.button(pitch, id);
        }
        if (buttons.isEmpty()) {
            for (int i = 0; i < event.pitches().size(); i++) {
                pitches.add(i);
            }
        }
        if (!fingers.isEmpty() && fingers.size() != pitches.size()) {
            throw BadPin.of(
                    entry,
                    "There are %d fingers for %d notes.".formatted(fingers.size(), pitches.size()),
                    "Maybe write as many fingers as notes, with spaces between.");
        }
        for (int i = 0; i < fingers.size(); i++) {
            pinned = pinned.finger(pitches.get(i), Integer.parseInt(fingers.get(i)));
        }
        return entry.attribute("hand-on") == null ? pinned : pinned.handOn(entry.number("hand-on"));
    }

    private List<String> words(String attribute) {
        String text = entry.attribute(attribute);
        return text == null ? List.of() : List.of(text.split(" "));
    }

    // Which of the notes a button gives: 0-based.
    private int pitch(String id, @Nullable BellowsDirection direction) throws DiagnosedException {
        Button button = task.instrument().buttons().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElse(null);
        if (button == null) {
            throw BadPin.of(
                    entry, "%s has no button %s.".formatted(task.instrument().name(), id), advice(direction));
        }
        for (BellowsDirection way : BellowsDirection.values()) {
            Pitch given = button.pitch(way);
            if ((direction == null || direction == way)
                    && given != null
                    && event.pitches().contains(given)) {
                return event.pitches().indexOf(given);
            }
        }
        throw BadPin.of(
                entry, "Button %s %s, not %s.".formatted(id, gives(button, direction), notes()), advice(direction));
    }

    private static String gives(Button button, @Nullable BellowsDirection direction) {
        List<String> words = new ArrayList<>();
        for (BellowsDirection way : BellowsDirection.values()) {
            if (direction == null || direction == way) {
                Pitch pitch = button.pitch(way);
                words.add("%s on the %s".formatted(pitch == null ? "nothing" : pitch.toString(), way.label()));
            }
        }
        return "gives " + String.join(" and ", words);
    }

    private String notes() {
        return String.join("+", event.pitches().stream().map(Pitch::toString).toList());
    }

    private String advice(@Nullable BellowsDirection direction) {
        List<String> ways = new ArrayList<>();
        for (BellowsDirection way : BellowsDirection.values()) {
            for (Button button : task.instrument().buttons()) {
                Pitch given = button.pitch(way);
                if (given != null && event.pitches().contains(given)) {
                    ways.add("%s on the %s".formatted(button.id(), way.label()));
                }
            }
        }
        String none = "";
        if (direction != null) {
            String way = direction.label();
            none = ways.stream().anyMatch(each -> each.endsWith(way)) ? "" : ": there is none on the " + way;
        }
        return "Maybe %s%s.".formatted(String.join(" or ", ways), none);
    }
}
