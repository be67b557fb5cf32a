package org.bellowscribe.annotation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;
import java.util.function.Predicate;
import org.bellowscribe.annotation.style.Meaning;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.annotation.style.WordLabels;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.NearestNames;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;

/** All sorts of marks, those that come with the tool and those that were added to it. */
public final class Annotators {

    private Annotators() {}

    /** Returns all annotators in the order in which their lyric lines stand below each other. */
    public static List<Annotator> all() {
        return ServiceLoader.load(Annotator.class, Annotators.class.getClassLoader()).stream()
                .map(ServiceLoader.Provider::get)
                .toList();
    }

    /** Returns the ids of the marks that are written unless the user asks for others. */
    public static List<String> defaultIds() {
        return all().stream().filter(Annotator::byDefault).map(Annotator::id).toList();
    }

    /**
     * Returns the annotators with the given ids, in the order of {@link #all()}, each once.
     *
     * @throws DiagnosedException naming every id that no annotator has
     */
    public static List<Annotator> find(List<String> ids) throws DiagnosedException {
        List<Annotator> all = all();
        List<String> known = all.stream().map(Annotator::id).toList();
        List<Diagnostic> unknown = ids.stream()
                .distinct()
                .filter(id -> !known.contains(id))
                .map(id -> unknown(id, known))
                .toList();
        if (!unknown.isEmpty()) {
            throw new DiagnosedException(unknown);
        }
        return all.stream().filter(annotator -> ids.contains(annotator.id())).toList();
    }

    /**
     * Returns what to write.
     *
     * @param ids ids of the marks to write, in any order; empty for none
     * @return by note in document order, and at a note chord symbols, words, then lyric lines from the top, then fingers
     * @throws DiagnosedException naming every id that no annotator has
     */
    public static List<Annotation> annotate(Arrangement arrangement, List<String> ids) throws DiagnosedException {
        return annotate(arrangement, ids, SignedMarks.NONE);
    }

    /**
     * Returns what to write, with the sign at what is fixed; fixed words are written also where others would be left out.
     *
     * @param ids ids of the marks to write, in any order; empty for none
     * @param signed what is fixed
     * @return by note in document order, and at a note chord symbols, words, then lyric lines from the top, then fingers
     * @throws DiagnosedException naming every id that no annotator has
     */
    public static List<Annotation> annotate(Arrangement arrangement, List<String> ids, SignedMarks signed)
            throws DiagnosedException {
        SheetMarks sheet = new SheetMarks(arrangement.tune(), arrangement.style(), signed);
        for (Annotator annotator : inOrder(find(ids), arrangement.style().lines())) {
            annotator.marks(arrangement).forEach(sheet::add);
        }
        for (Annotator annotator : all()) {
            if (annotator.byDefault() && !ids.contains(annotator.id())) {
                annotator.marks(arrangement).forEach(sheet::leaveRoomFor);
            }
        }
        signed.aspects()
                .keySet()
                .forEach(event -> fixed(arrangement, event, signed).forEach(sheet::add));
        return sheet.annotations();
    }

    // Lines stand below each other in the order in which they are first named.
    private static List<Annotator> inOrder(List<Annotator> annotators, List<String> lines) {
        return annotators.stream()
                .sorted(Comparator.comparingInt(
                        annotator -> lines.contains(annotator.id()) ? lines.indexOf(annotator.id()) : lines.size()))
                .toList();
    }

    /**
     * Returns what to write on a sheet that leaves some marks out; words stand where they stand on the full sheet.
     *
     * @param ids ids of the marks to write, in any order; empty for none
     * @param keeps true for the marks that are written
     * @param more marks besides
     * @return by note in document order, and at a note chord symbols, words, then lyric lines from the top, then fingers
     * @throws DiagnosedException naming every id that no annotator has
     */
    public static List<Annotation> annotate(
            Arrangement arrangement, List<String> ids, Predicate<Mark> keeps, List<Mark> more)
            throws DiagnosedException {
        SheetMarks sheet = new SheetMarks(arrangement.tune(), arrangement.style(), SignedMarks.NONE);
        List<Annotator> written = find(ids);
        for (Annotator annotator : all()) {
            boolean asked = written.stream().anyMatch(each -> each.id().equals(annotator.id()));
            if (asked || annotator.byDefault()) {
                for (Mark mark : annotator.marks(arrangement)) {
                    if (asked && keeps.test(mark)) {
                        sheet.add(mark);
                    } else {
                        sheet.leaveRoomFor(mark);
                    }
                }
            }
        }
        more.forEach(sheet::add);
        return sheet.annotations();
    }

    private static List<Mark> fixed(Arrangement arrangement, int event, SignedMarks signed) {
        Step step = arrangement.step(event);
        WordLabels labels = arrangement.style().words();
        List<Mark> words = new ArrayList<>();
        if (signed.has(event, MarkAspect.DIRECTION)) {
            words.add(new Mark.Words(event, Topic.DIRECTION, labels.direction(step.direction())));
        }
        if (signed.has(event, MarkAspect.AIR) && step.air() != AirUse.NONE) {
            words.add(new Mark.Words(event, Topic.AIR, labels.air(step.air())));
        }
        if (signed.has(event, MarkAspect.HAND)) {
            words.add(new Mark.Words(event, Topic.HAND, labels.hand().with("button", step.handOn())));
        }
        // A left hand that is fixed to be silent; where it has letters, those come first.
        if (signed.has(event, MarkAspect.LEFT_HAND) && !step.event().isRest()) {
            words.add(new Mark.Syllable(
                    event, MarkLines.LEFT_HAND, arrangement.style().filler()));
        }
        return words;
    }

    /**
     * Returns what the signs on the sheet mean, only those that occur, in the order of {@link #all()}.
     *
     * @param solution how the tune is played on the instrument; one step for each event of the tune
     * @param ids ids of the marks that are written
     * @throws DiagnosedException naming every id that no annotator has
     */
    public static List<LegendEntry> legend(
            Tune tune, Instrument instrument, Solution solution, Style style, List<String> ids)
            throws DiagnosedException {
        Arrangement arrangement = new Arrangement(tune, instrument, solution, style);
        List<LegendEntry> entries = new ArrayList<>();
        for (Annotator annotator : find(ids)) {
            entries.addAll(annotator.legend(arrangement));
        }
        if (goesOn(arrangement, ids)) {
            entries.add(
                    new LegendEntry(style.words().airGoesOn(), style.legend().say(Meaning.AIR_GOES_ON)));
        }
        return entries.stream().distinct().toList();
    }

    // Which presses are joined is known only when all marks stand at their notes.
    private static boolean goesOn(Arrangement arrangement, List<String> ids) throws DiagnosedException {
        String sign = arrangement.style().words().airGoesOn();
        return annotate(arrangement, ids).stream()
                .anyMatch(mark ->
                        mark instanceof Annotation.Words words && words.text().equals(sign));
    }

    private static Diagnostic unknown(String id, List<String> known) {
        List<String> near = NearestNames.of(id, known);
        String text = "There are no marks called %s.".formatted(id);
        String all = "There are: %s.".formatted(String.join(", ", known));
        return near.isEmpty()
                ? Diagnostic.error(DiagnosticCode.UNKNOWN_NAME, Place.FILE, text, all)
                : Diagnostic.error(
                        DiagnosticCode.UNKNOWN_NAME,
                        Place.FILE,
                        text,
                        "Maybe %s.".formatted(String.join(" or ", near)),
                        all);
    }
}
