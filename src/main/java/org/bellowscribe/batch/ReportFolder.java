package org.bellowscribe.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Obstacle;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.difficulty.Difficulty;
import org.bellowscribe.difficulty.grading.Grading;
import org.bellowscribe.exercise.ChangeTimes;
import org.bellowscribe.exercise.Exercises;
import org.bellowscribe.marking.MarkedTune;
import org.bellowscribe.marking.Reasons;
import org.bellowscribe.musicxml.NamedNotes;
import org.bellowscribe.page.IndexLine;
import org.bellowscribe.page.IndexPage;
import org.bellowscribe.page.IndexPart;
import org.bellowscribe.page.NoteIds;
import org.bellowscribe.page.SharedFiles;
import org.bellowscribe.page.TunePage;
import org.bellowscribe.page.TunePages;

/**
 * The folder of a report: {@code index.html}, the pages of the tunes below {@code tunes}, and what they share. Nothing in it
 * that is not ours is ever written over.
 */
public final class ReportFolder {

    private static final String INDEX = "index.html";
    private static final String TUNES = "tunes/";
    private static final String PAGE = ".html";

    private final Path folder;
    private final Choice choice;
    // By the score: a source also says how its files are written.
    private final Map<Path, String> places = new HashMap<>();
    private final Map<Path, Integer> grades = new ConcurrentHashMap<>();

    /**
     * What to tell on the pages.
     *
     * @param reasons of how many notes of each tune to price every other way
     * @param below folder below that of the pages for the tunes of this run, with a slash behind it; empty for none
     * @param news what a pupil meets in a tune for the first time
     */
    public record Choice(int reasons, String below, Function<Source, List<String>> news) {}

    /**
     * A tune for its page.
     *
     * @param marked what was decided and printed
     * @param remarks what there is to say about it
     * @param style the style of its marks
     * @param grading how its difficulty is weighed
     * @param times how long the pupil takes for a change
     */
    record Shown(MarkedTune marked, List<Diagnostic> remarks, Style style, Grading grading, ChangeTimes times) {}

    /** Returns the folder. */
    public Path folder() {
        return folder;
    }

    /**
     * Creates the report of a run; nothing is written yet.
     *
     * @param folder where it goes
     * @param sources all files of the run
     * @param choice what to tell
     */
    public ReportFolder(Path folder, List<Source> sources, Choice choice) {
        this.folder = folder;
        this.choice = choice;
        ReportPlaces.of(sources).forEach((source, place) -> places.put(source.file(), choice.below() + place));
    }

    /**
     * Writes what all pages share.
     *
     * @throws DiagnosedException if the folder cannot be written, or holds an index that is not ours
     */
    public static void begin(Path folder) throws DiagnosedException {
        requireOurs(folder.resolve(INDEX));
        for (Map.Entry<String, byte[]> file : SharedFiles.all().entrySet()) {
            AtomicFile.write(folder.resolve(file.getKey()), file.getValue());
        }
    }

    /** Writes the page of a tune. */
    void write(Source source, Shown shown) throws DiagnosedException {
        String place = TUNES + places.get(source.file());
        Path page = folder.resolve(place + PAGE);
        requireOurs(page);
        DecidedTune tune = shown.marked().tune();
        byte[] score = NamedNotes.compressed(shown.marked().score(), NoteIds.of(tune.tune()));
        Difficulty difficulty = Difficulty.of(tune, shown.grading());
        grades.put(source.file(), difficulty.grade().number());
        TunePage content = new TunePage(
                tune,
                shown.remarks(),
                Reasons.of(tune, choice.reasons()),
                choice.news().apply(source),
                shown.style(),
                difficulty,
                Exercises.of(tune, shown.times()),
                score);
        String script = place.substring(place.lastIndexOf('/') + 1) + ".js";
        write(page.resolveSibling(script), TunePages.script(content));
        write(page, TunePages.html(content, root(place), script));
    }

    /** Returns the lines of the index for what became of the files, in that order. */
    public List<IndexLine> lines(List<Result> results) {
        List<IndexLine> lines = new ArrayList<>();
        for (Result result : results) {
            Diagnostic error = result.firstError();
            String title = result.title().isEmpty() ? result.source().name() : result.title();
            boolean done = result.outcome() == Result.Outcome.DONE && result.summary() != null;
            lines.add(new IndexLine(
                    title,
                    done ? TUNES + places.get(result.source().file()) + PAGE : null,
                    done ? result.summary() : null,
                    grades.getOrDefault(result.source().file(), 0),
                    error == null ? "" : error.text()));
        }
        return lines;
    }

    /**
     * Writes the index.
     *
     * @param title what the report is called
     * @param parts the tunes of each instrument
     * @return where the index is
     */
    public static Path finish(Path folder, String title, List<IndexPart> parts) throws DiagnosedException {
        Path index = folder.resolve(INDEX);
        write(index, IndexPage.of(title, parts));
        return index;
    }

    private static String root(String place) {
        return "../".repeat((int) place.chars().filter(sign -> sign == '/').count());
    }

    private static void write(Path file, String text) throws DiagnosedException {
        AtomicFile.write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    private static void requireOurs(Path page) throws DiagnosedException {
        try {
            if (Files.isRegularFile(page) && !Files.readString(page).contains(TunePages.OURS)) {
                throw new DiagnosedException(Diagnostic.error(
                        DiagnosticCode.UNWRITABLE,
                        Place.FILE,
                        "The report would take the place of %s, which is not ours.".formatted(page),
                        "Maybe name another folder with --report."));
            }
        } catch (IOException e) {
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.UNWRITABLE,
                    Place.FILE,
                    "%s cannot be read (%s).".formatted(page, Obstacle.of(e)),
                    "Maybe name another folder with --report."));
        }
    }
}
