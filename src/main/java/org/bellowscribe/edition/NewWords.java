package org.bellowscribe.edition;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.bellowscribe.annotation.style.BookText;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.syllabus.Thing;

/** Says what is new in a tune, kind by kind, in the language of a style. */
public final class NewWords {

    /** So many characters have room below three quarters of a system in two programs. */
    static final int LINE = 72;

    private static final int MOST_LINES = 3;

    private final SortedMap<Thing.Kind, List<Thing>> byKind = new TreeMap<>();
    private final Style style;
    private final NewNames names;

    private NewWords(SortedSet<Thing> things, Style style, Instrument box) {
        things.forEach(thing ->
                byKind.computeIfAbsent(thing.kind(), kind -> new ArrayList<>()).add(thing));
        this.style = style;
        this.names = new NewNames(style, box);
    }

    /** Returns all new things in words, such as {@code button inner row 3 push; bass D pull}; empty if nothing is new. */
    public static String all(SortedSet<Thing> things, Style style, Instrument box) {
        NewWords words = new NewWords(things, style, box);
        return words.byKind.keySet().stream().map(words::named).collect(Collectors.joining("; "));
    }

    /**
     * Returns lines for a sheet, short enough to stand below its first system; kinds with many new things are counted
     * where naming them takes too much room.
     */
    public static List<String> lines(SortedSet<Thing> things, Style style, Instrument box) {
        return things.isEmpty() ? List.of() : new NewWords(things, style, box).lines();
    }

    private List<String> lines() {
        SortedMap<Thing.Kind, String> texts = new TreeMap<>();
        byKind.keySet().forEach(kind -> texts.put(kind, named(kind)));
        List<Thing.Kind> longest = new ArrayList<>(texts.keySet());
        longest.sort(Comparator.comparing((Thing.Kind kind) -> -named(kind).length()));
        List<String> lines = wrapped(texts);
        for (Thing.Kind kind : longest) {
            if (lines.size() <= MOST_LINES) {
                break;
            }
            texts.put(kind, counted(kind));
            lines = wrapped(texts);
        }
        return lines;
    }

    private List<String> wrapped(SortedMap<Thing.Kind, String> texts) {
        return TextLines.wrap(style.book().say(BookText.NEW_LINE, "things", String.join("; ", texts.values())), LINE);
    }

    private String counted(Thing.Kind kind) {
        int count = byKind.getOrDefault(kind, List.of()).size();
        return count + " " + names.kind(kind, count);
    }

    private String named(Thing.Kind kind) {
        List<Thing> things = byKind.getOrDefault(kind, List.of());
        String listed = kind == Thing.Kind.BUTTON
                ? buttons(things)
                : things.stream().map(names::of).collect(Collectors.joining(", "));
        return names.kind(kind, things.size()) + " " + listed;
    }

    private String buttons(List<Thing> things) {
        SortedMap<Integer, List<String>> byRow = new TreeMap<>();
        things.forEach(thing ->
                byRow.computeIfAbsent(thing.place(), row -> new ArrayList<>()).add(names.of(thing)));
        return byRow.entrySet().stream()
                .map(row -> (names.hasRows() ? names.row(row.getKey()) + " " : "") + String.join(", ", row.getValue()))
                .collect(Collectors.joining(", "));
    }
}
