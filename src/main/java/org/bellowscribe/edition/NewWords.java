package org.bellowscribe.edition;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.bellowscribe.annotation.style.RowNames;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.syllabus.Thing;

/** Says what is new in a tune, kind by kind. */
public final class NewWords {

    /** So many characters have room below three quarters of a system in two programs. */
    static final int LINE = 72;

    private static final int MOST_LINES = 3;
    private static final String BEGINNING = "New: ";

    private final SortedMap<Thing.Kind, List<Thing>> byKind = new TreeMap<>();
    private final RowNames rows;
    private final int rowCount;

    private NewWords(SortedSet<Thing> things, Style style, int rowCount) {
        things.forEach(thing ->
                byKind.computeIfAbsent(thing.kind(), kind -> new ArrayList<>()).add(thing));
        this.rows = style.words().rows();
        this.rowCount = rowCount;
    }

    /**
     * Returns all new things in words, such as {@code button inner row 3 push; bass D pull}; empty if nothing is new.
     *
     * @param rowCount rows of the instrument
     */
    public static String all(SortedSet<Thing> things, Style style, int rowCount) {
        NewWords words = new NewWords(things, style, rowCount);
        return words.byKind.keySet().stream().map(words::named).collect(Collectors.joining("; "));
    }

    /**
     * Returns lines for a sheet, short enough to stand below its first system; kinds with many new things are counted
     * where naming them takes too much room.
     *
     * @param rowCount rows of the instrument
     */
    public static List<String> lines(SortedSet<Thing> things, Style style, int rowCount) {
        return new NewWords(things, style, rowCount).lines();
    }

    private List<String> lines() {
        SortedMap<Thing.Kind, String> texts = new TreeMap<>();
        byKind.keySet().forEach(kind -> texts.put(kind, named(kind)));
        List<Thing.Kind> longest = new ArrayList<>(texts.keySet());
        longest.sort(Comparator.comparing((Thing.Kind kind) -> -named(kind).length()));
        List<String> lines = TextLines.of(BEGINNING, List.copyOf(texts.values()), LINE);
        for (Thing.Kind kind : longest) {
            if (lines.size() <= MOST_LINES) {
                break;
            }
            texts.put(kind, counted(kind));
            lines = TextLines.of(BEGINNING, List.copyOf(texts.values()), LINE);
        }
        return lines;
    }

    private String counted(Thing.Kind kind) {
        int count = byKind.getOrDefault(kind, List.of()).size();
        return count + " " + kind.label(count);
    }

    private String named(Thing.Kind kind) {
        List<Thing> things = byKind.getOrDefault(kind, List.of());
        String names = switch (kind) {
            case BUTTON -> buttons(things);
            case ROW_CHANGE ->
                joined(things.stream()
                        .map(thing -> "%s to %s".formatted(row(thing.place()), row(thing.number())))
                        .toList());
            case HAND_PLACE ->
                joined(things.stream()
                        .map(thing -> String.valueOf(thing.number()))
                        .toList());
            default -> joined(things.stream().map(Thing::name).toList());
        };
        return kind.label(things.size()) + " " + names;
    }

    private String buttons(List<Thing> things) {
        SortedMap<Integer, List<String>> byRow = new TreeMap<>();
        things.forEach(thing -> byRow.computeIfAbsent(thing.place(), row -> new ArrayList<>())
                .add(thing.number() + " " + thing.name()));
        return joined(byRow.entrySet().stream()
                .map(row -> rowCount == 1 ? joined(row.getValue()) : row(row.getKey()) + " " + joined(row.getValue()))
                .toList());
    }

    private String row(int row) {
        String name = rows.name(row, rowCount);
        return name.isEmpty() ? "row " + row : name;
    }

    private static String joined(List<String> names) {
        return String.join(", ", names);
    }
}
