package org.bellowscribe.annotation.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
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

    // Stands for a row in what a line of all rows says.
    private static final int ALL_ROWS = 0;

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
        return read(event, line, text, new TreeMap<>(Map.of(ALL_ROWS, text)));
    }

    /**
     * Reads the texts without signs that lines for one row each have at a note.
     *
     * @param texts by row, 1 is the outer row
     */
    ReadMark read(Event event, SortedMap<Integer, String> texts) {
        return read(event, null, String.join(" ", texts.values()), texts);
    }

    private ReadMark read(Event event, @Nullable BellowsDirection line, String text, SortedMap<Integer, String> texts) {
        boolean byRow = !texts.containsKey(ALL_ROWS);
        List<String> possible = new ArrayList<>();
        for (BellowsDirection direction : BellowsDirection.values()) {
            if (line != null && line != direction) {
                continue;
            }
            for (List<Button> buttons : ways(event.pitches(), direction)) {
                if (matches(buttons, direction, texts)) {
                    return ReadMark.of(
                            MarkAspect.BUTTONS, text, event.index(), List.of(pin(event, direction, buttons)));
                }
                possible.add(written(buttons, direction, byRow));
            }
        }
        return ReadMark.unread(
                event.index(),
                MarkAspect.BUTTONS,
                text,
                trouble(event, line, texts),
                possible.isEmpty() ? "" : "Maybe %s.".formatted(String.join(" or ", possible)));
    }

    private static Pin pin(Event event, BellowsDirection direction, List<Button> buttons) {
        Pin pin = Pin.at(event.index()).direction(direction);
        for (int i = 0; i < buttons.size(); i++) {
            pin = pin.button(i, buttons.get(i).id());
        }
        return pin;
    }

    private String trouble(Event event, @Nullable BellowsDirection line, SortedMap<Integer, String> texts) {
        String notes =
                String.join("+", event.pitches().stream().map(Pitch::toString).toList());
        for (BellowsDirection direction : BellowsDirection.values()) {
            for (Button button : instrument.buttons()) {
                if ((line == null || line == direction) && matches(List.of(button), direction, texts)) {
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

    private boolean matches(List<Button> buttons, BellowsDirection direction, SortedMap<Integer, String> texts) {
        boolean byRow = !texts.containsKey(ALL_ROWS);
        SortedMap<Integer, List<Button>> lines = lines(buttons, byRow);
        return lines.keySet().equals(texts.keySet())
                && lines.entrySet().stream()
                        .allMatch(line ->
                                isText(line.getValue(), direction, byRow, texts.getOrDefault(line.getKey(), "")));
    }

    private static SortedMap<Integer, List<Button>> lines(List<Button> buttons, boolean byRow) {
        SortedMap<Integer, List<Button>> lines = new TreeMap<>();
        for (Button button : buttons) {
            lines.computeIfAbsent(byRow ? button.row() : ALL_ROWS, line -> new ArrayList<>())
                    .add(button);
        }
        return lines;
    }

    // Each button with or without the sign of one held.
    private boolean isText(List<Button> buttons, BellowsDirection direction, boolean byRow, String text) {
        for (int held = 0; held < 1 << buttons.size(); held++) {
            if (plain(label(buttons, held, direction, byRow)).equals(plain(text))) {
                return true;
            }
        }
        return false;
    }

    private String written(List<Button> buttons, BellowsDirection direction, boolean byRow) {
        List<String> written = new ArrayList<>();
        lines(buttons, byRow)
                .forEach((line, here) -> written.add(
                        label(here, 0, direction, byRow) + (byRow ? " in the line of row %d".formatted(line) : "")));
        return String.join(" and ", written);
    }

    private String label(List<Button> buttons, int held, BellowsDirection direction, boolean byRow) {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < buttons.size(); i++) {
            Button button = buttons.get(i);
            String label = byRow ? String.valueOf(button.number()) : rows.label(button, labels);
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
