package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.NearestNames;
import org.bellowscribe.diagnostic.Place;

/** How users call the parts, staves and voices of a score. */
final class PartNames {

    private static final int MOST_SHOWN = 12;

    private final List<PartContent> parts;

    PartNames(List<PartContent> parts) {
        this.parts = parts;
    }

    /**
     * Returns the 0-based index of a part: the one with this id, else with this name, else at this place counted from 1.
     *
     * @throws DiagnosedException if there is none, or several have the name
     */
    int find(String called) throws DiagnosedException {
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).id().equals(called)) {
                return i;
            }
        }
        List<Integer> named = IntStream.range(0, parts.size())
                .filter(i -> parts.get(i).name().equalsIgnoreCase(called.strip()))
                .boxed()
                .toList();
        if (named.size() > 1) {
            throw refusal("The score has %d parts called %s.".formatted(named.size(), called), List.of(list()));
        }
        if (!named.isEmpty()) {
            return named.get(0);
        }
        int place = called.matches("[1-9]\\d{0,3}") ? Integer.parseInt(called) : 0;
        if (place < 1 || place > parts.size()) {
            throw unknown(called);
        }
        return place - 1;
    }

    private DiagnosedException unknown(String called) {
        List<String> known = new ArrayList<>();
        parts.forEach(part -> known.add(part.id()));
        parts.forEach(part -> known.add(part.name()));
        List<String> near = known.stream().filter(name -> !name.isEmpty()).toList();
        List<String> advice = new ArrayList<>();
        NearestNames.of(called, near).stream()
                .filter(name -> name.length() > 2)
                .findFirst()
                .ifPresent(name -> advice.add("Maybe %s.".formatted(of(known.indexOf(name) % parts.size()))));
        advice.add(list());
        return refusal("The score has no part %s.".formatted(called), advice);
    }

    /** Returns id and name of a part. */
    String of(int part) {
        PartContent content = parts.get(part);
        return content.name().isEmpty() ? content.id() : "%s (%s)".formatted(content.id(), content.name());
    }

    /** Returns a sentence with all parts. */
    String list() {
        return "The score has these parts: %s."
                .formatted(shortened(
                        IntStream.range(0, parts.size()).mapToObj(this::of).toList(), ", "));
    }

    /** Returns a sentence with the staves and voices of a part. */
    static String lines(PartContent part) {
        List<String> lines = part.notes()
                .map(note -> "staff %d, voice %s".formatted(note.staff(), note.voice()))
                .distinct()
                .sorted()
                .toList();
        return "Part %s has notes in %s.".formatted(part.id(), lines.isEmpty() ? "no staff" : shortened(lines, "; "));
    }

    /** Returns the refusal of a staff or voice without notes, with those there are. */
    DiagnosedException unknownLine(String where, List<PartContent> among, ReadingOptions options) {
        List<String> asked = new ArrayList<>();
        if (options.staff() != null) {
            asked.add("staff " + options.staff());
        }
        if (options.voice() != null) {
            asked.add("voice " + options.voice());
        }
        List<String> advice =
                among.stream().limit(MOST_SHOWN).map(PartNames::lines).toList();
        return refusal("%s has no notes in %s.".formatted(where, String.join(", ", asked)), advice);
    }

    private static String shortened(List<String> names, String separator) {
        String shown = String.join(separator, names.subList(0, Math.min(MOST_SHOWN, names.size())));
        return names.size() <= MOST_SHOWN ? shown : "%s and %d more".formatted(shown, names.size() - MOST_SHOWN);
    }

    private static DiagnosedException refusal(String text, List<String> advice) {
        return new DiagnosedException(
                Diagnostic.error(DiagnosticCode.UNKNOWN_NAME, Place.FILE, text, advice.toArray(new String[0])));
    }
}
