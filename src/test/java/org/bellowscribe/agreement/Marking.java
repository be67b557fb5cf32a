package org.bellowscribe.agreement;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;
import org.jspecify.annotations.Nullable;

/**
 * The marks of a whole sheet.
 *
 * @param notes what is written at each note, null at a rest, in the order of the sheet
 */
record Marking(List<@Nullable MarkedNote> notes) {

    private static final int BUTTON = 8;

    /** Reads a marking that was made by hand. */
    static Marking read(Path file) {
        try {
            List<@Nullable MarkedNote> notes = new ArrayList<>();
            Files.readAllLines(file, StandardCharsets.UTF_8).stream()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .forEach(line -> notes.add(note(line.split(",", -1))));
            return new Marking(notes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static @Nullable MarkedNote note(String[] cells) {
        if (cells[0].equals("rest")) {
            return null;
        }
        Set<String> buttons = new TreeSet<>();
        Arrays.stream(cells[BUTTON].trim().split(" "))
                .forEach(each -> buttons.add(each.substring(0, each.length() - 1)));
        BellowsDirection direction = cells[BUTTON].contains(">") ? BellowsDirection.PUSH : BellowsDirection.PULL;
        String air = cells[BUTTON + 2].trim();
        List<String> strokes = Arrays.stream(
                        cells[BUTTON + 3].replace("·", " ").trim().split("\\s+"))
                .filter(stroke -> !stroke.isEmpty() && !stroke.equals("-"))
                .toList();
        boolean pressed = !air.isEmpty() && !air.equals("none");
        return new MarkedNote(buttons, direction, cells[BUTTON + 1].trim(), pressed, strokes);
    }

    /** Returns what the program has written. */
    static Marking of(Solution solution) {
        List<@Nullable MarkedNote> notes = new ArrayList<>();
        for (Step step : solution.steps()) {
            notes.add(step.event().isRest() ? null : MarkedNote.of(step));
        }
        return new Marking(notes);
    }
}
