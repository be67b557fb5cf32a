package org.bellowscribe.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.ConcertinaNumbers;
import org.bellowscribe.instrument.Hand;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandSound;
import org.jspecify.annotations.Nullable;

/**
 * Where the buttons of an instrument lie in a picture: as its player has it, the chin at the top, each hand on its side, the
 * rows and columns away from the bellows at the edges; a concertina lies across.
 */
final class KeyboardFaces {

    static final double RADIUS = 17;

    private static final double STEP = 42;
    private static final double LINE = 92;
    private static final double ACROSS = 62;
    private static final double ROW_ACROSS = 62;
    private static final double BETWEEN = 30;
    private static final double EDGE = 40;
    private static final double HANDS = 60;
    private static final double TOP = 116;
    private static final double FOOT = 56;

    private final List<Face> faces = new ArrayList<>();
    private final List<Heading> headings = new ArrayList<>();
    private double width;
    private double bottom = TOP;

    /**
     * A button in the picture.
     *
     * @param melody true for a melody button, false for one of the left hand
     * @param id its id
     * @param number what people call it
     * @param above true if the number has room above it, false if beside it
     * @param x its middle
     * @param y its middle
     * @param push what it sounds on the push; empty if nothing
     * @param pull what it sounds on the pull; empty if nothing
     */
    record Face(boolean melody, String id, int number, boolean above, double x, double y, String push, String pull) {

        Face at(int shown, boolean numberAbove, double newX, double newY) {
            return new Face(melody, id, shown, numberAbove, newX, newY, push, pull);
        }
    }

    /** Words over a row, a column or a hand. */
    record Heading(double x, double y, String words) {}

    KeyboardFaces(Instrument instrument) {
        if (instrument.grip().strapped()) {
            across(instrument);
        } else {
            upright(instrument);
        }
    }

    List<Face> faces() {
        return faces;
    }

    List<Heading> headings() {
        return headings;
    }

    double width() {
        return width;
    }

    double height() {
        return bottom + RADIUS + FOOT;
    }

    private void upright(Instrument instrument) {
        SortedMap<Integer, List<Face>> rows = new TreeMap<>();
        for (Button button : instrument.buttons()) {
            rows.computeIfAbsent(button.row(), row -> new ArrayList<>()).add(face(button));
        }
        SortedMap<Integer, List<Face>> columns = new TreeMap<>();
        for (LeftHandButton button : instrument.leftHand()) {
            columns.computeIfAbsent(button.column(), column -> new ArrayList<>())
                    .add(face(button));
        }
        int lines = last(rows) + last(columns);
        width = 2 * EDGE + lines * LINE + (columns.isEmpty() ? 0 : BETWEEN);
        boolean mirrored = instrument.buttons().stream().anyMatch(button -> button.hand() == Hand.LEFT);
        boolean both = !columns.isEmpty();
        place(rows, mirrored ? EDGE : width - EDGE - LINE, mirrored ? LINE : -LINE, "row");
        place(columns, mirrored ? width - EDGE - LINE : EDGE, mirrored ? -LINE : LINE, "column");
        headings.add(new Heading(EDGE + LINE, HANDS, both || mirrored ? "left hand" : ""));
        headings.add(new Heading(width - EDGE - LINE, HANDS, both || !mirrored ? "right hand" : ""));
    }

    /** Places lines from an edge inwards; a shorter one stands halfway beside the longest. */
    private void place(SortedMap<Integer, List<Face>> lines, double edge, double inwards, String word) {
        int longest =
                lines.values().stream().mapToInt(KeyboardFaces::length).max().orElse(0);
        lines.forEach((line, all) -> {
            double x = edge + (line - 1) * inwards + LINE / 2 - RADIUS / 2;
            double first = TOP + STEP * (longest - length(all)) / 2;
            headings.add(new Heading(x, TOP - RADIUS - 12, word + " " + line));
            for (Face face : all) {
                put(face.at(face.number(), false, x, first + (face.number() - 1) * STEP));
            }
        });
    }

    private void across(Instrument instrument) {
        ConcertinaNumbers numbers = new ConcertinaNumbers(instrument);
        width = 2 * EDGE + BETWEEN;
        headings.add(new Heading(EDGE + 2.5 * ACROSS, HANDS, "left hand"));
        headings.add(new Heading(EDGE + BETWEEN + 7.5 * ACROSS, HANDS, "right hand"));
        for (Button button : instrument.buttons()) {
            double x = EDGE + RADIUS + (button.number() - 1) * ACROSS + (button.hand() == Hand.LEFT ? 0 : BETWEEN);
            put(face(button).at(numbers.of(button), true, x, TOP + (button.row() - 1) * ROW_ACROSS));
            width = Math.max(width, x + ACROSS);
        }
    }

    private void put(Face face) {
        faces.add(face);
        bottom = Math.max(bottom, face.y());
    }

    private static Face face(Button button) {
        return new Face(true, button.id(), button.number(), false, 0, 0, name(button.push()), name(button.pull()));
    }

    private static Face face(LeftHandButton button) {
        return new Face(false, button.id(), button.number(), false, 0, 0, name(button.push()), name(button.pull()));
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
