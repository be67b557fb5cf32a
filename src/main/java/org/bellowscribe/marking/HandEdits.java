package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.MarkAspect;
import org.bellowscribe.annotation.SignedMarks;
import org.bellowscribe.annotation.edit.MarkReading;
import org.bellowscribe.annotation.edit.ReadMark;
import org.bellowscribe.annotation.mark.RowUse;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Task;

/**
 * The marks of an earlier run that a hand has fixed: those with the sign, and, if all changes are kept, those that differ
 * from what we wrote. What we wrote is known by deciding again, without the marks and with those that bear the sign; of
 * these two the one counts that the sheet differs from at fewer marks.
 */
final class HandEdits {

    /** What is fixed, and what could not be kept but matters little. */
    record Kept(Pins pins, SignedMarks signed, List<Diagnostic> remarks) {

        static final Kept NOTHING = new Kept(Pins.NONE, SignedMarks.NONE, List.of());

        Kept {
            remarks = List.copyOf(remarks);
        }
    }

    private final List<Annotation> found;
    private final MarkSettings settings;
    private final Playing playing;

    /**
     * Looks at marks.
     *
     * @param found marks of an earlier run
     */
    HandEdits(List<Annotation> found, MarkSettings settings) {
        this.found = List.copyOf(found);
        this.settings = settings;
        playing = new Playing(settings.played());
    }

    /**
     * Returns what is fixed.
     *
     * @param task the tune with what else is fixed
     * @throws DiagnosedException if a mark that is to be kept cannot be; one remark for each
     */
    Kept of(Task task) throws DiagnosedException {
        if (keepsAll() && found.isEmpty()) {
            return nothingKept("The score has no marks of an earlier run, so --keep-edits keeps nothing.");
        }
        return keepsAll() || found.stream().anyMatch(HandEdits::hasSign) ? decide(task) : Kept.NOTHING;
    }

    private static Kept nothingKept(String why) {
        return new Kept(
                Pins.NONE, SignedMarks.NONE, List.of(Diagnostic.note(DiagnosticCode.HAND_EDIT, Place.FILE, why)));
    }

    /** Returns all marks that were found, as far as they can be read. */
    List<ReadMark> all(Task task) {
        return read(task, found);
    }

    private boolean keepsAll() {
        return settings.steering().keepsEdits();
    }

    private static boolean hasSign(Annotation mark) {
        return (mark instanceof Annotation.Syllable syllable && syllable.text().contains(SignedMarks.SIGN))
                || (mark instanceof Annotation.Words words && words.text().contains(SignedMarks.SIGN));
    }

    private Kept decide(Task task) throws DiagnosedException {
        List<ReadMark> marks = read(task, found);
        List<ReadMark> signed = marks.stream().filter(ReadMark::signed).toList();
        List<Diagnostic> errors = signed.stream()
                .filter(mark -> !mark.isRead())
                .map(mark -> unread(task.tune(), mark))
                .toList();
        if (!errors.isEmpty()) {
            throw new DiagnosedException(errors);
        }
        List<ReadMark> keep = new ArrayList<>(signed);
        List<Diagnostic> remarks = new ArrayList<>();
        if (keepsAll()) {
            for (ReadMark mark : changed(task, marks, signed)) {
                if (mark.isRead()) {
                    keep.add(mark);
                } else if (mark.aspect() == null) {
                    remarks.add(unread(task.tune(), mark));
                } else {
                    errors = joined(errors, unread(task.tune(), mark));
                }
            }
        }
        if (!errors.isEmpty()) {
            throw new DiagnosedException(errors);
        }
        return keepsAll() && keep.isEmpty() && remarks.isEmpty()
                ? nothingKept(
                        "No mark differs from what the tool writes with these options, so --keep-edits keeps nothing.")
                : new Kept(new Pins(pins(keep)), signs(keep), remarks);
    }

    // What differs from the nearer of what we may have written.
    private List<ReadMark> changed(Task task, List<ReadMark> marks, List<ReadMark> signed) throws DiagnosedException {
        List<ReadMark> least = differing(marks, written(task));
        if (!signed.isEmpty()) {
            List<Pin> all = new ArrayList<>(task.options().pins().list());
            all.addAll(pins(signed));
            List<ReadMark> other = differing(marks, written(task.with(new Pins(all))));
            least = other.size() < least.size() ? other : least;
        }
        return least;
    }

    private static List<ReadMark> differing(List<ReadMark> marks, List<ReadMark> written) {
        return marks.stream()
                .filter(mark -> !mark.signed() && written.stream().noneMatch(mark::agreesWith))
                .toList();
    }

    private List<ReadMark> written(Task task) throws DiagnosedException {
        Solution solution = playing.attempt(task);
        if (solution == null) {
            return List.of();
        }
        return read(
                task,
                Annotators.annotate(
                        new Arrangement(task.tune(), task.instrument(), solution, settings.style()), settings.marks()));
    }

    private List<ReadMark> read(Task task, List<Annotation> marks) {
        MarkReading reading = new MarkReading(task, settings.style(), marks);
        int row = reading.mainRow();
        if (row == 0) {
            Solution solution = playing.attempt(task);
            row = solution == null ? 1 : RowUse.of(solution, task.instrument()).main();
        }
        return reading.read(row);
    }

    private static List<Pin> pins(List<ReadMark> marks) {
        return marks.stream().flatMap(mark -> mark.pins().stream()).toList();
    }

    private static SignedMarks signs(List<ReadMark> marks) {
        SignedMarks signs = SignedMarks.NONE;
        for (ReadMark mark : marks) {
            MarkAspect aspect = mark.aspect();
            if (aspect != null) {
                signs = signs.plus(mark.event(), aspect);
            }
        }
        return signs;
    }

    private static List<Diagnostic> joined(List<Diagnostic> errors, Diagnostic one) {
        List<Diagnostic> all = new ArrayList<>(errors);
        all.add(one);
        return all;
    }

    private static Diagnostic unread(Tune tune, ReadMark mark) {
        boolean error = mark.signed() || mark.aspect() != null;
        String where = mark.event() < 0 ? "" : " at %s".formatted(new Whereabouts(tune).name(mark.event()));
        String text = "The mark \"%s\"%s %s%s."
                .formatted(mark.text(), where, mark.trouble(), error ? "" : "; it is not kept");
        String[] advice = mark.advice().isEmpty() ? new String[0] : new String[] {mark.advice()};
        return error
                ? Diagnostic.error(DiagnosticCode.HAND_EDIT, place(tune, mark), text, advice)
                : Diagnostic.warning(DiagnosticCode.HAND_EDIT, place(tune, mark), text, advice);
    }

    private static Place place(Tune tune, ReadMark mark) {
        if (mark.event() < 0) {
            return Place.FILE;
        }
        Measure measure = tune.measureOf(tune.events().get(mark.event()));
        return Place.measure(measure.index() + 1, measure.number(), tune.part());
    }
}
