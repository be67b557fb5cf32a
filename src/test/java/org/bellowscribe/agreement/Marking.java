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

    /** Reads a marking that was made by hand: columns by their names in the first line, {@code #} before remarks. */
    static Marking read(Path file) {
        try {
            List<String[]> lines = Files.readAllLines(file, StandardCharsets.UTF_8).stream()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(",", -1))
                    .toList();
            int button = List.of(lines.get(0)).indexOf("button");
            List<@Nullable MarkedNote> notes = new ArrayList<>();
            lines.stream().skip(1).forEach(cells -> notes.add(note(cells, button)));
            return new Marking(notes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static @Nullable MarkedNote note(String[] cells, int button) {
        if (cells[0].equals("rest")) {
            return null;
        }
        Set<String> buttons = new TreeSet<>();
        Arrays.stream(cells[button].trim().split(" "))
                .forEach(each -> buttons.add(each.substring(0, each.length() - 1)));
        BellowsDirection direction = cells[button].contains(">") ? BellowsDirection.PUSH : BellowsDirection.PULL;
        String air = cells[button + 2].trim();
        List<String> strokes = Arrays.stream(
                        cells[button + 3].replace("·", " ").trim().split("\\s+"))
                .filter(stroke -> !stroke.isEmpty() && !stroke.equals("-"))
                .toList();
        boolean pressed = !air.isEmpty() && !air.equals("none");
        return new MarkedNote(buttons, direction, cells[button + 1].trim(), pressed, strokes);
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
