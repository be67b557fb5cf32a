package org.bellowscribe.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import org.junit.jupiter.api.Assumptions;

/**
 * Five programs that engrave MusicXML: LilyPond (through musicxml2ly) and MuseScore 3 from the path, and Verovio,
 * OpenSheetMusicDisplay and alphaTab in a headless Chromium. The last three and the driver of the browser are taken by npm
 * into the folder for results; the others and the fonts are packages of Debian, which {@code .ci/run} installs.
 */
final class Renderers {

    private static final Path SCRIPTS = Path.of("src/test/resources/org/bellowscribe/renderer");
    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
    /** A program that takes longer hangs: all scores take an hour of processor time, and several on a machine at work. */
    private static final int MINUTES = 360;

    private Renderers() {}

    /**
     * What one program shows of one score.
     *
     * @param version version of the program; empty if it failed
     * @param written marks of ours in the score, -1 if the program failed
     * @param missing marks that are not shown
     * @param wrong marks that are shown at another note
     * @param doubled texts of ours that are shown more often than written
     * @param overlapping pairs of texts that cover each other, one of them ours
     * @param cut marks that an edge of the page cuts
     * @param places where, for people
     */
    record Shown(
            String score,
            String program,
            String version,
            int written,
            int missing,
            int wrong,
            int doubled,
            int overlapping,
            int cut,
            String places) {

        private static Shown of(String line) {
            String[] cells = line.split("\t");
            int[] counts = Stream.of(cells)
                    .skip(3)
                    .limit(6)
                    .mapToInt(Integer::parseInt)
                    .toArray();
            return new Shown(
                    cells[0], cells[1], cells[2], counts[0], counts[1], counts[2], counts[3], counts[4], counts[5],
                    cells[9]);
        }
    }

    /** Skips the calling test, and says why, if a program is absent. */
    static void require() {
        for (String program : List.of("lilypond", "musicxml2ly", "mscore3", "node", "npm")) {
            boolean there = Stream.of(System.getenv("PATH").split(":"))
                    .anyMatch(each -> Files.isExecutable(Path.of(each, program)));
            Assumptions.assumeTrue(there, () -> "skipped: " + program + " is not on the path");
        }
        Assumptions.assumeTrue(Files.isExecutable(CHROMIUM), () -> "skipped: there is no " + CHROMIUM);
    }

    /**
     * Returns what each program shows of each score.
     *
     * @param folder a folder of scores below {@code target}; drawings and the table are written into it
     * @param pictures true to write a page with pictures of all scores in all programs as well: {@code gallery.html}
     */
    static List<Shown> show(Path folder, boolean pictures) throws IOException, InterruptedException {
        Path scripts = Files.createDirectories(Path.of("target", "renderers", "scripts"));
        try (Stream<Path> files = Files.list(SCRIPTS)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, scripts.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
            }
        }
        if (!Files.isDirectory(scripts.resolve("node_modules"))) {
            run(scripts, "npm", "install", "--silent", "--no-package-lock", "--omit=optional", "--ignore-scripts");
        }
        List<String> words = new ArrayList<>(
                List.of("node", "main.mjs", folder.toAbsolutePath().toString(), CHROMIUM.toString()));
        if (pictures) {
            words.add("pictures");
        }
        run(scripts, words.toArray(String[]::new));
        return Files.readAllLines(folder.resolve("shown.tsv")).stream()
                .map(Shown::of)
                .toList();
    }

    /** Returns how MuseScore plays a score: the notes, with their ticks. */
    static List<String> played(Path score) throws IOException, InterruptedException, InvalidMidiDataException {
        Path file = Files.createTempFile(Files.createDirectories(Path.of("target", "renderers")), "played", ".mid");
        run(
                file.getParent(),
                "mscore3",
                "-o",
                file.getFileName().toString(),
                score.toAbsolutePath().toString());
        List<String> notes = new ArrayList<>();
        for (Track track : MidiSystem.getSequence(file.toFile()).getTracks()) {
            for (int i = 0; i < track.size(); i++) {
                if (track.get(i).getMessage() instanceof ShortMessage message
                        && message.getCommand() >= ShortMessage.NOTE_OFF
                        && message.getCommand() <= ShortMessage.NOTE_ON) {
                    notes.add("%d: %d %d %d"
                            .formatted(
                                    track.get(i).getTick(),
                                    message.getCommand(),
                                    message.getData1(),
                                    message.getData2()));
                }
            }
        }
        Files.delete(file);
        return notes;
    }

    private static void run(Path where, String... words) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(words)
                .directory(where.toFile())
                .redirectErrorStream(true)
                .redirectOutput(Path.of("target", "renderers", "programs.log").toFile());
        builder.environment().put("QT_QPA_PLATFORM", "offscreen");
        Process process = builder.start();
        if (!process.waitFor(MINUTES, TimeUnit.MINUTES)) {
            process.destroyForcibly();
        }
        if (process.exitValue() != 0) {
            throw new IOException(String.join(" ", words) + " ended with " + process.exitValue());
        }
    }
}
