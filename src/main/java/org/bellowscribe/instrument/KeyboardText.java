package org.bellowscribe.instrument;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.bellowscribe.theory.PitchClass;
import org.jspecify.annotations.Nullable;

/** Draws an instrument in plain text: each row from the chin to the right, the push above the pull. */
final class KeyboardText {

    private static final int CELL = 5;
    private static final int LABEL = 16;

    private final StringBuilder text = new StringBuilder();

    private final Instrument used;
    private final KeyboardWords words;

    private KeyboardText(Instrument used, KeyboardWords words) {
        this.used = used;
        this.words = words;
    }

    /**
     * Returns the drawing, each line with its line feed.
     *
     * @param used the same instrument with the notes to write
     * @param words its words
     */
    static String of(Instrument instrument, Instrument used, KeyboardWords words) {
        KeyboardText drawing = new KeyboardText(used, words);
        drawing.line("%s (%s)".formatted(instrument.name(), instrument.id()));
        drawing.line(words.melody(instrument));
        for (int row = 1; row <= instrument.rows(); row++) {
            drawing.row(instrument, row);
        }
        drawing.line("");
        drawing.line(words.basses(instrument));
        int columns = instrument.leftHand().stream()
                .mapToInt(LeftHandButton::column)
                .max()
                .orElse(0);
        for (int column = 1; column <= columns; column++) {
            drawing.column(column);
        }
        return drawing.text.toString();
    }

    private void row(Instrument instrument, int row) {
        List<Button> buttons =
                used.buttons().stream().filter(button -> button.row() == row).toList();
        PitchClass key = HomeKeys.of(instrument).get(row);
        line("");
        ConcertinaNumbers concertina = new ConcertinaNumbers(instrument);
        boolean strapped = instrument.grip().strapped();
        String numbers = cells(
                buttons, button -> String.valueOf(strapped ? concertina.of(button) : button.number()), Button::number);
        line(label(words.row(row) + (key == null ? "" : ", " + key), "") + numbers);
        line(label("", words.push()) + cells(buttons, button -> name(button.push()), Button::number));
        line(label("", words.pull()) + cells(buttons, button -> name(button.pull()), Button::number));
    }

    private void column(int column) {
        List<LeftHandButton> buttons = used.leftHand().stream()
                .filter(button -> button.column() == column)
                .toList();
        line("");
        String numbers = cells(buttons, button -> String.valueOf(button.number()), LeftHandButton::number);
        line(label(words.column(column), "") + numbers);
        line(label("", words.push()) + cells(buttons, button -> name(button.push()), LeftHandButton::number));
        line(label("", words.pull()) + cells(buttons, button -> name(button.pull()), LeftHandButton::number));
    }

    /** Writes each button under its number; a place without button stays empty. */
    private static <B> String cells(List<B> buttons, Function<B, String> texts, Function<B, Integer> number) {
        List<String> cells = new ArrayList<>();
        for (B button : buttons) {
            int empty = number.apply(button) - 1 - cells.size();
            IntStream.range(0, empty).forEach(i -> cells.add(""));
            cells.add(texts.apply(button));
        }
        StringBuilder line = new StringBuilder();
        cells.forEach(cell ->
                line.append(" ".repeat(Math.max(1, CELL - cell.length()))).append(cell));
        return line.toString();
    }

    private static String label(String line, String direction) {
        return line + " ".repeat(Math.max(1, LABEL - line.length() - direction.length())) + direction;
    }

    private static String name(@Nullable Object sound) {
        return sound instanceof LeftHandSound leftHand ? leftHand.label() : Objects.toString(sound, "-");
    }

    private void line(String line) {
        text.append(line).append('\n');
    }
}
