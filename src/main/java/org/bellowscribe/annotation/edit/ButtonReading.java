package org.bellowscribe.annotation.edit;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.MarkAspect;
import org.bellowscribe.annotation.mark.RowUse;
import org.bellowscribe.annotation.style.ButtonLabels;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Event;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.theory.Pitch;
import org.jspecify.annotations.Nullable;

/** Reads the buttons of a note: looks which of all ways to write what can be played there is the text. */
final class ButtonReading {

    private final Instrument instrument;
    private final ButtonLabels labels;
    private final RowUse rows;

    ButtonReading(Instrument instrument, ButtonLabels labels, RowUse rows) {
        this.instrument = instrument;
        this.labels = labels;
        this.rows = rows;
    }

    /**
     * Reads a text without sign.
     *
     * @param line the direction of the line in which it stands; null for a line of both
     */
    ReadMark read(Event event, @Nullable BellowsDirection line, String text) {
        List<String> possible = new ArrayList<>();
        for (BellowsDirection direction : BellowsDirection.values()) {
            if (line != null && line != direction) {
                continue;
            }
            for (List<Button> buttons : ways(event.pitches(), direction)) {
                if (matches(buttons, direction, text)) {
                    return ReadMark.of(
                            MarkAspect.BUTTONS, text, event.index(), List.of(pin(event, direction, buttons)));
                }
                possible.add(label(buttons, 0, direction));
            }
        }
        return ReadMark.unread(
                event.index(),
                MarkAspect.BUTTONS,
                text,
                trouble(event, line, text),
                possible.isEmpty() ? "" : "Maybe %s.".formatted(String.join(" or ", possible)));
    }

    private static Pin pin(Event event, BellowsDirection direction, List<Button> buttons) {
        Pin pin = Pin.at(event.index()).direction(direction);
        for (int i = 0; i < buttons.size(); i++) {
            pin = pin.button(i, buttons.get(i).id());
        }
        return pin;
    }

    private String trouble(Event event, @Nullable BellowsDirection line, String text) {
        String notes =
                String.join("+", event.pitches().stream().map(Pitch::toString).toList());
        for (BellowsDirection direction : BellowsDirection.values()) {
            for (Button button : instrument.buttons()) {
                if ((line == null || line == direction) && matches(List.of(button), direction, text)) {
                    Pitch given = button.pitch(direction);
                    return "means button %s, which gives %s on the %s, not %s"
                            .formatted(
                                    button.id(),
                                    given == null ? "nothing" : given.toString(),
                                    direction.label(),
                                    notes);
                }
            }
        }
        return "means no buttons that give " + notes;
    }

    private List<List<Button>> ways(List<Pitch> pitches, BellowsDirection direction) {
        List<List<Button>> ways = new ArrayList<>();
        ways.add(List.of());
        for (Pitch pitch : pitches) {
            List<List<Button>> longer = new ArrayList<>();
            for (List<Button> way : ways) {
                for (Button button : instrument.buttons()) {
                    if (pitch.equals(button.pitch(direction))) {
                        List<Button> more = new ArrayList<>(way);
                        more.add(button);
                        longer.add(more);
                    }
                }
            }
            ways = longer;
        }
        return ways;
    }

    // Each button with or without the sign of one held.
    private boolean matches(List<Button> buttons, BellowsDirection direction, String text) {
        for (int held = 0; held < 1 << buttons.size(); held++) {
            if (plain(label(buttons, held, direction)).equals(plain(text))) {
                return true;
            }
        }
        return false;
    }

    private String label(List<Button> buttons, int held, BellowsDirection direction) {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < buttons.size(); i++) {
            String label = rows.label(buttons.get(i), labels);
            texts.add((held >> i & 1) == 1 ? labels.held().with("button", label) : label);
        }
        return labels.direction(direction).with("buttons", String.join(labels.between(), texts));
    }

    // What a keyboard has instead of a prime, and spaces, make no difference.
    private static String plain(String text) {
        return text.replace("″", "′′")
                .replace("\"", "′′")
                .replace('\'', '′')
                .replace('’', '′')
                .replace(" ", "");
    }
}
