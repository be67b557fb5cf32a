package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.sound.midi.InvalidMidiDataException;
import org.bellowscribe.Shared;
import org.bellowscribe.cli.Renderers.Shown;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Whether five engraving programs show each mark at its note: nothing missing, at another note or doubled, and hardly
 * any text over another. Tables: {@code target/renderers/NAME.txt}.
 */
class MarksShownTest {

    private static final Path BOOK = Path.of("samples", "book");
    private static final Path FAULTS = Path.of("src/test/resources/org/bellowscribe/renderer/faults");
    private static final int TUNES = 60;
    private static final int TUNES_A_STYLE = 2;
    private static final int PROGRAMS = 5;

    /** Each tune of the book under one of the four sets of options, and a few shared tunes: what every build can afford. */
    @Tag("marks-shown")
    @Test
    void eachProgramShowsEveryMarkAtItsNote() throws IOException, InterruptedException {
        Renderers.require();
        Path folder = fresh("some");
        List<Path> scores = new ArrayList<>(scores(BOOK));
        scores.addAll(everyFew(15));
        for (int i = 0; i < scores.size(); i++) {
            int set = i % MarkedSets.OPTIONS.size();
            mark(scores.get(i), MarkedSets.OPTIONS.get(set), "%03d-%d".formatted(i, set), folder);
        }
        assertShown(folder, Renderers.show(folder, false));
    }

    /**
     * Styles that no set has, each in a few tunes of the book: nothing missing, at a wrong note or doubled. How many texts touch
     * is not asked of them: 2.1 of 1,000 here, as these tunes are short and OSMD lays the words at the start over the tempo of
     * each.
     */
    @Tag("marks-shown")
    @Test
    void eachProgramShowsEveryStyle() throws IOException, InterruptedException {
        Renderers.require();
        Path folder = fresh("styles");
        List<Path> scores = scores(BOOK);
        List<String> styles = MarkedSets.OTHER_STYLES;
        for (int i = 0; i < styles.size() * TUNES_A_STYLE; i++) {
            String style = styles.get(i % styles.size());
            mark(scores.get(i % scores.size()), List.of("--style", style), "%03d-%s".formatted(i, style), folder);
        }
        List<Shown> shown = Renderers.show(folder, false);
        Files.writeString(folder.resolveSibling("styles.txt"), table(shown));
        assertEquals("", faults(shown), () -> table(shown));
    }

    /** The book and sixty shared tunes under all four sets of options. */
    @Tag("marks-shown-all")
    @Test
    void eachProgramShowsEveryMarkUnderAllOptions() throws IOException, InterruptedException {
        Renderers.require();
        Path folder = fresh("all");
        List<Path> scores = new ArrayList<>(scores(BOOK));
        scores.addAll(everyFew(TUNES));
        for (int i = 0; i < scores.size(); i++) {
            for (int set = 0; set < MarkedSets.OPTIONS.size(); set++) {
                mark(scores.get(i), MarkedSets.OPTIONS.get(set), "%03d-%d".formatted(i, set), folder);
            }
        }
        assertShown(folder, Renderers.show(folder, false));
    }

    /** The book under all four sets of options as pictures, to be looked at: {@code target/renderers/gallery/gallery.html}. */
    @Tag("gallery")
    @Test
    void thePicturesOfTheBookCanBeLookedAt() throws IOException, InterruptedException {
        Renderers.require();
        Path folder = fresh("gallery");
        List<Path> scores = scores(BOOK);
        for (int i = 0; i < scores.size(); i++) {
            for (int set = 0; set < MarkedSets.withRows().size(); set++) {
                mark(scores.get(i), MarkedSets.withRows().get(set), "%03d-%d".formatted(i, set), folder);
            }
        }
        assertEquals(
                scores(folder).size() * PROGRAMS, Renderers.show(folder, true).size());
    }

    /**
     * The smallest scores in which a program is at fault: LilyPond 2.24 puts words behind grace notes one note late, so ours
     * stand before them, and those of a note behind which grace notes end the measure, so that ours stand below it; OSMD does not see a tempo above words over a chord symbol; alphaTab does not keep words apart; MuseScore 3
     * and alphaTab let long words at the end of a line run over the edge.
     */
    @Tag("marks-shown")
    @Test
    void programsAreAtFaultWhereTheyWere() throws IOException, InterruptedException {
        Renderers.require();
        Path folder = fresh("faults");
        for (Path score : scores(FAULTS)) {
            Files.copy(score, folder.resolve(score.getFileName()));
        }
        List<String> faults = Renderers.show(folder, false).stream()
                .filter(MarksShownTest::hasFault)
                .map(each -> "%s in %s: %d missing, %d wrong, %d doubled, %d overlapping, %d cut"
                        .formatted(
                                each.score(),
                                each.program(),
                                each.missing(),
                                each.wrong(),
                                each.doubled(),
                                each.overlapping(),
                                each.cut()))
                .toList();
        assertEquals(
                List.of(
                        "words-at-line-end in musescore: 0 missing, 0 wrong, 0 doubled, 0 overlapping, 1 cut",
                        "words-at-line-end in alphatab: 0 missing, 0 wrong, 0 doubled, 0 overlapping, 1 cut",
                        "words-at-neighbours in alphatab: 0 missing, 0 wrong, 0 doubled, 1 overlapping, 0 cut",
                        "words-before-after-grace in lilypond: 0 missing, 1 wrong, 0 doubled, 0 overlapping, 0 cut",
                        "words-behind-grace-notes in lilypond: 0 missing, 1 wrong, 0 doubled, 0 overlapping, 0 cut",
                        "words-over-tempo in osmd: 0 missing, 0 wrong, 0 doubled, 1 overlapping, 0 cut"),
                faults);
    }

    /** Marks are silent: a program that plays a marked score plays the notes of the score. */
    @Tag("marks-shown")
    @Test
    void playbackStaysTheSame() throws IOException, InterruptedException, InvalidMidiDataException {
        Renderers.require();
        Path folder = fresh("playback");
        for (Path score : scores(BOOK)) {
            mark(score, MarkedSets.OPTIONS.get(1), "one", folder);
            Path marked = scores(folder).get(0);
            assertEquals(Renderers.played(score), Renderers.played(marked), score.toString());
            Files.delete(marked);
        }
    }

    private static Path fresh(String name) throws IOException {
        Path folder = Path.of("target", "renderers", name);
        if (Files.exists(folder)) {
            delete(folder);
        }
        return Files.createDirectories(folder);
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> old = Files.walk(folder)) {
            for (Path each : old.sorted((a, b) -> b.compareTo(a)).toList()) {
                Files.delete(each);
            }
        }
    }

    private static List<Path> scores(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".musicxml"))
                    .sorted()
                    .toList();
        }
    }

    private static List<Path> everyFew(int count) {
        List<Path> all = Shared.scores("corpus/tunes").stream()
                .filter(score -> score.toString().endsWith(".musicxml"))
                .toList();
        return IntStream.range(0, count)
                .mapToObj(i -> all.get(i * all.size() / count))
                .toList();
    }

    /** Marks one score; a tune that cannot be played leaves nothing. */
    private static void mark(Path score, List<String> options, String name, Path folder) throws IOException {
        Path out = Files.createTempDirectory(folder.getParent(), "marked");
        List<String> words =
                new ArrayList<>(List.of("mark", score.toString(), "--transpose", "auto", "--out", out.toString()));
        words.addAll(options);
        CommandRun.of(words.toArray(String[]::new));
        for (Path marked : scores(out)) {
            String file = marked.getFileName().toString().replaceAll("[^A-Za-z0-9.-]", "-");
            Files.move(marked, folder.resolve(name + "-" + file), StandardCopyOption.REPLACE_EXISTING);
        }
        delete(out);
    }

    // No fault; of texts that touch others, or that an edge cuts, at most one in a thousand.
    private static void assertShown(Path folder, List<Shown> shown) throws IOException {
        String table = table(shown);
        Files.writeString(folder.resolveSibling(folder.getFileName() + ".txt"), table);
        assertEquals("", faults(shown), table);
        int unclear = sum(shown, each -> each.overlapping() + each.cut());
        assertTrue(unclear * 1000L <= sum(shown, Shown::written), table);
    }

    private static String faults(List<Shown> shown) {
        StringBuilder faults = new StringBuilder();
        for (Shown each : shown) {
            if (each.written() < 0 || each.missing() + each.wrong() + each.doubled() > 0) {
                faults.append("%s in %s: %s%n".formatted(each.score(), each.program(), each.places()));
            }
        }
        return faults.toString();
    }

    private static boolean hasFault(Shown each) {
        return each.written() < 0
                || each.missing() + each.wrong() + each.doubled() + each.overlapping() + each.cut() > 0;
    }

    private static int sum(List<Shown> shown, ToIntFunction<Shown> count) {
        return shown.stream().mapToInt(count).filter(each -> each > 0).sum();
    }

    private static String table(List<Shown> shown) {
        StringBuilder table = new StringBuilder("program, version, scores, written, missing, wrong note, doubled,"
                + " overlapping, cut, scores that failed\n");
        Map<String, List<Shown>> programs =
                shown.stream().collect(Collectors.groupingBy(Shown::program, TreeMap::new, Collectors.toList()));
        programs.forEach((program, rows) -> table.append(String.format(
                Locale.ROOT,
                "%s, %s, %d, %d, %d, %d, %d, %d, %d, %d%n",
                program,
                rows.stream()
                        .map(Shown::version)
                        .filter(v -> !v.isEmpty())
                        .findFirst()
                        .orElse("?"),
                rows.size(),
                sum(rows, Shown::written),
                sum(rows, Shown::missing),
                sum(rows, Shown::wrong),
                sum(rows, Shown::doubled),
                sum(rows, Shown::overlapping),
                sum(rows, Shown::cut),
                rows.stream().filter(row -> row.written() < 0).count())));
        shown.stream()
                .filter(MarksShownTest::hasFault)
                .forEach(each -> table.append(each.score() + " | " + each.program() + " | " + each.places() + "\n"));
        return table.toString();
    }
}
