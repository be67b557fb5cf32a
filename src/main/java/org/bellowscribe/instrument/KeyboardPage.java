package org.bellowscribe.instrument;

import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.bellowscribe.theory.PitchClass;
import org.jspecify.annotations.Nullable;

/**
 * Draws an instrument on a page as its player has it: the chin at the top, each hand on its side, the rows and columns
 * that are away from the bellows at the edges. A concertina lies across the page.
 */
final class KeyboardPage {

    private static final double TOP = 62;
    private static final double BOTTOM = 272;
    private static final double MOST_STEP = 19;
    private static final double MOST_WIDTH = 22;
    private static final double EDGE = 32;
    private static final double TITLE_WIDTH = 158;
    private static final double ACROSS = 16.5;

    private final Instrument instrument;
    private final Instrument used;
    private final KeyboardWords words;
    private final PageCanvas page;
    private final double lineWidth;

    private KeyboardPage(Instrument instrument, Instrument used, KeyboardWords words) {
        this.words = words;
        this.instrument = instrument;
        this.used = used;
        this.lineWidth = Math.min(MOST_WIDTH, (210 - 2 * EDGE) / (last(rows()) + last(columns())));
        this.page = new PageCanvas(words.titleOf(instrument));
    }

    /** A button as it is drawn. */
    private record Face(int number, String push, String pull) {}

    /**
     * Returns the page.
     *
     * @param used the same instrument with the notes to write
     * @param words its words
     */
    static String of(Instrument instrument, Instrument used, KeyboardWords words) {
        KeyboardPage drawing = new KeyboardPage(instrument, used, words);
        drawing.frame();
        List<Hand> hands =
                instrument.buttons().stream().map(Button::hand).distinct().toList();
        if (hands.size() > 1) {
            drawing.across();
        } else {
            Hand melody = hands.isEmpty() ? Hand.RIGHT : hands.get(0);
            drawing.upright(drawing.rows(), melody, true);
            drawing.upright(drawing.columns(), melody.opposite(), false);
        }
        return drawing.page.close();
    }

    private void frame() {
        // A letter is about half as wide as it is high.
        double size = Math.min(7, 2 * TITLE_WIDTH / instrument.name().length());
        page.text(15, 22, size, "start", instrument.name());
        page.text(15, 30, 4, "start", instrument.id());
        page.button(186, 26, 9, words.push(), words.pull());
        page.text(15, BOTTOM + 12, 3.2, "start", words.melody(instrument));
        page.text(15, BOTTOM + 17, 3.2, "start", words.basses(instrument));
    }

    /** Draws rows or columns from the chin downwards; a shorter one stands halfway beside the longest. */
    private void upright(SortedMap<Integer, List<Face>> lines, Hand hand, boolean melody) {
        int longest =
                lines.values().stream().mapToInt(KeyboardPage::length).max().orElse(0);
        double step = Math.min(MOST_STEP, (BOTTOM - TOP) / Math.max(1, longest));
        double radius = Math.min(step * 0.42, lineWidth * 0.38);
        boolean right = hand == Hand.RIGHT;
        lines.forEach((line, faces) -> {
            double x = right ? 210 - EDGE - (line - 1) * lineWidth : EDGE + (line - 1) * lineWidth;
            double first = TOP + step * (longest - length(faces)) / 2;
            page.text(x, TOP - 15, 3.6, "middle", melody ? words.row(line) : words.column(line));
            page.text(x, TOP - 10.5, 3.6, "middle", melody ? key(line) : "");
            for (Face face : faces) {
                double y = first + (face.number() - 1) * step;
                page.button(x, y, radius, face.push(), face.pull());
                page.text(x - radius - 0.8, y + 1, 2.8, "end", String.valueOf(face.number()));
            }
        });
        if (!lines.isEmpty()) {
            page.text(right ? 210 - EDGE + 10 : EDGE - 10, TOP - 21, 4.2, right ? "end" : "start", words.title(hand));
        }
    }

    /** Draws the rows of a concertina across the page, a gap between the hands. */
    private void across() {
        page.text(EDGE - 8, TOP - 15, 4.2, "start", words.title(Hand.LEFT));
        page.text(198, TOP - 15, 4.2, "end", words.title(Hand.RIGHT));
        ConcertinaNumbers numbers = new ConcertinaNumbers(instrument);
        for (Button button : used.buttons()) {
            double gap = button.hand() == Hand.LEFT ? 0 : 9;
            double x = EDGE + (button.number() - 1) * ACROSS + gap;
            double y = TOP + (button.row() - 1) * 26;
            page.button(x, y, ACROSS * 0.44, name(button.push()), name(button.pull()));
            page.text(x, y - ACROSS * 0.44 - 1, 2.8, "middle", String.valueOf(numbers.of(button)));
        }
        for (int row = 1; row <= instrument.rows(); row++) {
            double y = TOP + (row - 1) * 26;
            page.text(EDGE - 10, y, 3.6, "end", words.row(row));
            page.text(EDGE - 10, y + 4.5, 3.6, "end", key(row));
        }
    }

    private String key(int row) {
        PitchClass key = HomeKeys.of(instrument).get(row);
        return key == null ? "" : key.toString();
    }

    private SortedMap<Integer, List<Face>> rows() {
        return used.buttons().stream()
                .collect(Collectors.groupingBy(
                        Button::row,
                        TreeMap::new,
                        Collectors.mapping(
                                button -> new Face(button.number(), name(button.push()), name(button.pull())),
                                Collectors.toList())));
    }

    private SortedMap<Integer, List<Face>> columns() {
        return used.leftHand().stream()
                .collect(Collectors.groupingBy(
                        LeftHandButton::column,
                        TreeMap::new,
                        Collectors.mapping(
                                button -> new Face(button.number(), name(button.push()), name(button.pull())),
                                Collectors.toList())));
    }

    private static int last(SortedMap<Integer, List<Face>> lines) {
        return lines.isEmpty() ? 0 : lines.lastKey();
    }

    private static int length(List<Face> faces) {
        return faces.stream().mapToInt(Face::number).max().orElse(0);
    }

    private static String name(@Nullable Object sound) {
        return sound instanceof LeftHandSound leftHand ? leftHand.label() : Objects.toString(sound, "");
    }
}
