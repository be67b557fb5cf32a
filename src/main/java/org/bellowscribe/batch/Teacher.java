package org.bellowscribe.batch;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Obstacle;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.report.Steered;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.explain.Alternatives;
import org.bellowscribe.solver.explain.Explanation;
import org.bellowscribe.solver.explain.PinPrice;
import org.bellowscribe.solver.pin.PinFile;
import org.jspecify.annotations.Nullable;

/** What a teacher fixes and asks about one tune. */
final class Teacher {

    private final HandEdits edits;
    private final @Nullable Path path;
    private final @Nullable PinFile file;
    private final Steering.@Nullable Question question;
    private final int alternatives;

    private Teacher(Steering steering, HandEdits edits, @Nullable Path path, @Nullable PinFile file) {
        this.edits = edits;
        this.path = path;
        this.file = file;
        question = steering.question();
        alternatives = steering.alternatives();
    }

    /**
     * Reads the pins of a tune, if there are any.
     *
     * @throws DiagnosedException if their file is wrong or cannot be read
     */
    static Teacher of(Steering steering, Source source, HandEdits edits) throws DiagnosedException {
        Path given = steering.pins();
        Path path = given == null ? source.pinsFile() : given;
        if (!steering.keepsPins() || path == null || (given == null && !Files.exists(path))) {
            return new Teacher(steering, edits, null, null);
        }
        try (InputStream stream = Files.newInputStream(path)) {
            return new Teacher(steering, edits, path, PinFile.read(stream));
        } catch (IOException e) {
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.UNREADABLE,
                    Place.FILE,
                    "The pins in %s cannot be read (%s).".formatted(path.getFileName(), Obstacle.of(e))));
        } catch (DiagnosedException e) {
            throw named(path, e);
        }
    }

    // The place of such a remark is in the file of the pins, not in the score.
    private static DiagnosedException named(Path path, DiagnosedException e) {
        return new DiagnosedException(e.diagnostics().stream()
                .map(remark -> new Diagnostic(
                        remark.severity(),
                        remark.code(),
                        Place.FILE,
                        "%s, %s: %s"
                                .formatted(path.getFileName(), remark.place().describe(), remark.text()),
                        remark.advice()))
                .toList());
    }

    /**
     * Returns the task with the pins of the file and those of the marks.
     *
     * @throws DiagnosedException if a pin cannot be
     */
    Task fix(Task task) throws DiagnosedException {
        Task fixed = fixByFile(task);
        List<Pin> pins = new ArrayList<>(fixed.options().pins().list());
        pins.addAll(edits.of(fixed).pins().list());
        return fixed.with(new Pins(pins));
    }

    /**
     * Returns what the marks of an earlier run fix.
     *
     * @throws DiagnosedException if a pin cannot be
     */
    HandEdits.Kept kept(Task task) throws DiagnosedException {
        return edits.of(fixByFile(task));
    }

    private Task fixByFile(Task task) throws DiagnosedException {
        if (path == null || file == null) {
            return task;
        }
        try {
            return task.with(file.of(task));
        } catch (DiagnosedException e) {
            throw named(path, e);
        }
    }

    /** Solves a task with the pins. */
    Outcome play(Task task) {
        try {
            return Solver.solve(fix(task));
        } catch (DiagnosedException e) {
            return new Outcome.Unplayable(e.diagnostics());
        }
    }

    /**
     * Prices the pins, answers the question and looks for other ways.
     *
     * @throws DiagnosedException if the question is about a note that is not there
     */
    Steered ask(Task task, Solution solution) throws DiagnosedException {
        Pins pins = task.options().pins();
        List<Explanation> explanations = new ArrayList<>();
        for (Event event : question == null ? List.<Event>of() : asked(task.tune(), question)) {
            explanations.add(Explanation.of(task, solution, event.index()));
        }
        return new Steered(
                pins.isEmpty() ? List.of() : PinPrice.of(task, solution),
                explanations,
                alternatives == 0 ? List.of() : Alternatives.of(task, solution, alternatives));
    }

    private static List<Event> asked(Tune tune, Steering.Question question) throws DiagnosedException {
        Whereabouts places = new Whereabouts(tune);
        Measure measure = places.measure(question.measure());
        if (measure == null) {
            List<String> all = places.measures();
            throw unknown(
                    "The tune has no measure %s to explain.".formatted(question.measure()),
                    "Maybe one from %s to %s.".formatted(all.get(0), all.get(all.size() - 1)));
        }
        List<Event> notes = places.notes(measure);
        if (question.note() > notes.size()) {
            throw unknown(
                    "Measure %s has no note %d to explain.".formatted(question.measure(), question.note()),
                    notes.isEmpty()
                            ? "Maybe another measure: no note is struck in this one."
                            : "Maybe one from 1 to %d: notes held over from before do not count."
                                    .formatted(notes.size()));
        }
        if (question.note() > 0) {
            return List.of(notes.get(question.note() - 1));
        }
        return tune.events().stream()
                .filter(event -> event.measure() == measure.index())
                .toList();
    }

    private static DiagnosedException unknown(String text, String advice) {
        return new DiagnosedException(Diagnostic.error(DiagnosticCode.UNKNOWN_NAME, Place.FILE, text, advice));
    }
}
