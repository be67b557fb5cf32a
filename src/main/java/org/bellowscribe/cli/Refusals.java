package org.bellowscribe.cli;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bellowscribe.batch.Result;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.PlainText;

/** The files of which nothing came, by their first errors. */
final class Refusals {

    private static final int MOST_NAMES = 10;
    private static final String EXPORT = "Export it again from its notation program, as MusicXML.";
    private static final String REPORT = "Please report this with the file.";

    /** Codes of which each error has its own cause, and its own advice. */
    private static final Set<DiagnosticCode> OF_MANY_CAUSES =
            Set.of(DiagnosticCode.UNREADABLE, DiagnosticCode.UNWRITABLE);

    private final Map<DiagnosticCode, List<String>> names = new EnumMap<>(DiagnosticCode.class);
    private final Map<DiagnosticCode, Set<String>> advice = new EnumMap<>(DiagnosticCode.class);
    private int count;

    /**
     * Those of one reason.
     *
     * @param code the code of the error
     * @param names titles or files, in their order
     * @param advice what the errors themselves advise; an empty text is that of one that advises nothing
     */
    record Group(DiagnosticCode code, List<String> names, Set<String> advice) {

        /** Returns what is wrong, to go on after "because"; empty if the code says all there is. */
        String reason() {
            return why(code).get(0);
        }

        /** Returns what to do about it; empty if there is nothing general to say. */
        String wayOut() {
            if (!OF_MANY_CAUSES.contains(code)) {
                return why(code).get(1);
            }
            return advice.size() == 1 ? advice.iterator().next() : "What to do about each stands with its error.";
        }
    }

    private Refusals() {}

    /** Collects what is refused among results and inputs. */
    static Refusals of(List<Result> results, List<Sources.Problem> problems) {
        Refusals refusals = new Refusals();
        for (Result result : results) {
            Diagnostic error = result.firstError();
            if (!result.done()) {
                refusals.add(
                        error == null ? DiagnosticCode.INTERNAL : error.code(),
                        name(result),
                        error == null ? List.of() : error.advice());
            }
        }
        problems.forEach(problem -> refusals.add(
                problem.diagnostic().code(),
                PlainText.line(problem.input()),
                problem.diagnostic().advice()));
        return refusals;
    }

    private void add(DiagnosticCode code, String name, List<String> advised) {
        names.computeIfAbsent(code, any -> new ArrayList<>()).add(name);
        advice.computeIfAbsent(code, any -> new LinkedHashSet<>()).add(PlainText.line(String.join(" ", advised)));
        count++;
    }

    private static String name(Result result) {
        String file = PlainText.line(result.source().shown());
        return result.title().isEmpty() ? file : "%s (%s)".formatted(PlainText.line(result.title()), file);
    }

    /** Returns how many there are. */
    int count() {
        return count;
    }

    /** Returns them by reason, in the order of the codes. */
    List<Group> groups() {
        return names.entrySet().stream()
                .map(entry -> new Group(
                        entry.getKey(), List.copyOf(entry.getValue()), advice.getOrDefault(entry.getKey(), Set.of())))
                .toList();
    }

    /**
     * Returns lines that tell all reasons, with names and ways out.
     *
     * @param verb what was not done, such as {@code marked}
     */
    List<String> lines(String verb) {
        List<String> lines = new ArrayList<>();
        for (Group group : groups()) {
            int size = group.names().size();
            String because = group.reason().isEmpty() ? "" : " because " + group.reason();
            lines.add("not %s%s [%s]: %d".formatted(verb, because, group.code().id(), size));
            group.names().stream().limit(MOST_NAMES).forEach(name -> lines.add("  " + name));
            if (size > MOST_NAMES) {
                lines.add("  and %d more".formatted(size - MOST_NAMES));
            }
            if (!group.wayOut().isEmpty()) {
                lines.add("  " + group.wayOut());
            }
        }
        return lines;
    }

    private static List<String> why(DiagnosticCode code) {
        return switch (code) {
            case NOT_XML -> List.of("the file is no XML", EXPORT);
            case NOT_MUSICXML -> List.of("the file is no score", EXPORT);
            case EMPTY_FILE -> List.of("the file is empty", EXPORT);
            case NO_NOTES ->
                List.of("there are no notes to play", "Maybe --part, --staff or --voice names the melody.");
            case BAD_VALUE -> List.of("a value cannot be read", "Mend it in the notation program, then export again.");
            case NO_BUTTON ->
                List.of("no button gives a note", "Maybe --transpose auto; fit ranks all keys and instruments.");
            case NO_REACH -> List.of("no hand reaches a chord", "Maybe --voice or --part names a single line.");
            case NO_AIR -> List.of("the bellows cannot last", "Maybe --times once, or --play melody,air.");
            case NO_OTHER_WAY ->
                List.of("there is no clearly different way to play it", "Compare it with another manner.");
            case PIN_CONFLICT -> List.of("pins cannot be played together", "Free one of those that are named.");
            case HAND_EDIT -> List.of("a mark changed by hand cannot be kept", "Change it back, or --pins none.");
            case UNKNOWN_NAME -> List.of("a part, staff or voice has not this name", "Leave the option out for them.");
            case UNREADABLE -> List.of("no score can be read from it", "");
            case UNWRITABLE -> List.of("the result cannot be written", "");
            case REPLAY, INTERNAL -> List.of("the tool broke", REPORT);
            default -> List.of("", "");
        };
    }
}
