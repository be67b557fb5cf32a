package org.bellowscribe.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import org.bellowscribe.Shared;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.musicxml.ScoreDocument;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The order of play against a notation renderer that unrolls the same files into MIDI. Each measure gets a pitch of its
 * own, so that what sounds says which measures are played. Runs with {@code -Dmeasure=renderer} only; needs
 * {@code mscore3} on the path.
 */
@Tag("renderer")
class RendererPlayOrderTest {

    private static final int LOWEST = 24;
    private static final String STEPS = "C C D D E F F G G A A B";

    /** Files that the renderer reads otherwise, with its order and who is right. */
    private static final Map<String, String> DIFFERENT = Map.of(
            // Eight endings: the suite says up to which bar each lasts, and ours plays them so; the renderer ends in
            // the fifth.
            "45d-Repeats-MultipleEndings.xml",
            "1 2 1 3 4 5 1 6 7 8 9 1 10 1 6 7 8 9 instead of"
                    + " 1 2 1 3 4 5 1 6 7 8 9 1 10 1 6 7 8 9 1 10 1 6 7 8 9 1 11 12",
            // Signs that make no sense, the suite says; nobody is right.
            "45f-Repeats-InvalidEndings.xml",
            "1 2 5 6 7 8 6 8 9 10 11 instead of 1 2 3 4 1 2 3 4 5 6 7 8 6 9 10 11 12 13 14",
            // "A repeat starting and ending at a partial bar": the renderer passes over the repeat at a heavy bar line.
            "45h-Repeats-Partial.xml",
            "1 2 3 4 5 instead of 1 2 3 1 2 3 4 5");

    @TempDir
    private Path folder;

    private static void requireRenderer() {
        try {
            Process process = new ProcessBuilder("mscore3", "--version")
                    .redirectErrorStream(true)
                    .start();
            process.getInputStream().readAllBytes();
            Assumptions.assumeTrue(process.waitFor(60, TimeUnit.SECONDS), "skipped: mscore3 does not answer");
        } catch (IOException | InterruptedException e) {
            Assumptions.abort("skipped: mscore3 is not on the path");
        }
    }

    /** Returns the score with one pitch a measure and without ties, chords, grace notes and chord symbols. */
    private static String tagged(String score) {
        String plain = score.replaceAll("(?s)<note\\b[^>]*>\\s*<(grace|chord)\\b.*?</note>", "")
                .replaceAll("(?s)<harmony\\b.*?</harmony>", "")
                .replaceAll("<tied? [^>]*/>", "")
                .replaceAll("(?s)<notations\\b.*?</notations>", "");
        StringBuilder tagged = new StringBuilder();
        String[] measures = plain.split("(?=<measure\\b)");
        for (int i = 0; i < measures.length; i++) {
            String pitch = pitch(LOWEST + i);
            tagged.append(measures[i]
                    .replaceAll("(?s)<pitch>.*?</pitch>", pitch)
                    .replaceAll("<rest\\b[^>]*/>|<rest\\b[^>]*>\\s*</rest>", pitch));
        }
        return tagged.toString();
    }

    private static String pitch(int midi) {
        String step = STEPS.split(" ")[midi % 12];
        boolean sharp = List.of(1, 3, 6, 8, 10).contains(midi % 12);
        return "<pitch><step>%s</step>%s<octave>%d</octave></pitch>"
                .formatted(step, sharp ? "<alter>1</alter>" : "", midi / 12 - 1);
    }

    private void render(List<Path> scores) throws IOException, InterruptedException {
        String jobs = scores.stream()
                .map(score -> "{\"in\":\"%s\",\"out\":\"%s.mid\"}".formatted(score, score))
                .collect(Collectors.joining(",", "[", "]"));
        Path job = Files.writeString(folder.resolve("jobs.json"), jobs);
        ProcessBuilder builder = new ProcessBuilder("mscore3", "-j", job.toString()).redirectErrorStream(true);
        builder.environment().put("QT_QPA_PLATFORM", "offscreen");
        Process process = builder.start();
        process.getInputStream().readAllBytes();
        assertTrue(process.waitFor(120, TimeUnit.SECONDS), "the renderer does not end");
    }

    private static List<Integer> sounding(Path midi) throws IOException, InvalidMidiDataException {
        Sequence sequence = MidiSystem.getSequence(midi.toFile());
        TreeMap<Long, List<Integer>> notes = new TreeMap<>();
        for (Track track : sequence.getTracks()) {
            for (int i = 0; i < track.size(); i++) {
                MidiEvent event = track.get(i);
                if (event.getMessage() instanceof ShortMessage message
                        && message.getCommand() == ShortMessage.NOTE_ON
                        && message.getData2() > 0) {
                    notes.computeIfAbsent(event.getTick(), tick -> new ArrayList<>())
                            .add(message.getData1());
                }
            }
        }
        return notes.values().stream().flatMap(List::stream).toList();
    }

    private static List<Integer> ours(String score) throws DiagnosedException {
        var tune = ScoreReader.read(score, "tune", ReadingOptions.DEFAULT);
        return tune.eventOrder().stream()
                .map(tune.events()::get)
                .filter(event -> !event.isRest())
                .map(event -> event.pitches().get(0).midiNumber())
                .toList();
    }

    private static List<Path> scores() throws IOException {
        try (Stream<Path> suite = Files.list(Shared.path("corpus/suite/lilypond"));
                Stream<Path> samples = Files.list(Path.of("samples", "book"))) {
            Stream<Path> repeats =
                    suite.filter(file -> file.getFileName().toString().startsWith("45"));
            return Stream.concat(repeats, samples.filter(Files::isRegularFile))
                    .sorted()
                    .toList();
        }
    }

    /** Jumps as exporters write them: words for the eye, a sound for the ear. */
    private static Map<String, String> jumps() {
        String note = "<note><rest/><duration>4</duration><voice>1</voice><type>whole</type></note>";
        return Map.of(
                "da-capo.musicxml",
                jump(note, note + said("Fine", "fine=\"yes\""), note, note + said("D.C. al Fine", "dacapo=\"yes\"")),
                "dal-segno.musicxml",
                jump(
                        note,
                        said("<segno/>", "segno=\"s\"") + note,
                        note + said("To Coda", "tocoda=\"c\""),
                        note + said("D.S. al Coda", "dalsegno=\"s\""),
                        said("<coda/>", "coda=\"c\"") + note));
    }

    private static String said(String words, String sound) {
        String type = words.startsWith("<") ? words : "<words>" + words + "</words>";
        return "<direction><direction-type>" + type + "</direction-type><sound " + sound + "/></direction>";
    }

    private static String jump(String... measures) {
        StringBuilder part = new StringBuilder();
        for (int i = 0; i < measures.length; i++) {
            String attributes = "<attributes><divisions>1</divisions><key><fifths>0</fifths></key>"
                    + "<time><beats>4</beats><beat-type>4</beat-type></time>"
                    + "<clef><sign>G</sign><line>2</line></clef></attributes>";
            part.append(
                    "<measure number=\"%d\">%s</measure>\n".formatted(i + 1, (i == 0 ? attributes : "") + measures[i]));
        }
        return "<?xml version=\"1.0\"?>\n<score-partwise version=\"3.1\"><part-list><score-part id=\"P1\">"
                + "<part-name>A</part-name></score-part></part-list><part id=\"P1\">" + part
                + "</part></score-partwise>";
    }

    @Test
    void rendererPlaysTheMeasuresInTheSameOrder()
            throws IOException, InterruptedException, DiagnosedException, InvalidMidiDataException {
        requireRenderer();
        Map<String, List<Integer>> ours = new TreeMap<>();
        List<Path> tagged = new ArrayList<>();
        for (Path file : scores()) {
            String name = file.getFileName().toString();
            String score = tagged(ScoreDocument.decode(Files.readAllBytes(file)).text());
            if (score.indexOf("<part ") != score.lastIndexOf("<part ")) {
                continue;
            }
            tagged.add(Files.writeString(folder.resolve(name), score));
            ours.put(name, ours(score));
        }
        for (Map.Entry<String, String> jump : jumps().entrySet()) {
            String score = tagged(jump.getValue());
            tagged.add(Files.writeString(folder.resolve(jump.getKey()), score));
            ours.put(jump.getKey(), ours(score));
        }
        render(tagged);
        Map<String, String> different = new TreeMap<>();
        for (Path score : tagged) {
            String name = score.getFileName().toString();
            List<Integer> theirs = sounding(folder.resolve(name + ".mid"));
            if (!theirs.equals(ours.get(name))) {
                different.put(name, measures(theirs) + " instead of " + measures(ours.get(name)));
            }
        }
        assertEquals(new TreeMap<>(DIFFERENT), different);
    }

    /** Returns the measures that a sequence of pitches stands for, in short form. */
    private static String measures(List<Integer> pitches) {
        List<Integer> measures = new ArrayList<>();
        for (int pitch : pitches) {
            int measure = pitch - LOWEST;
            if (measures.isEmpty() || measures.get(measures.size() - 1) != measure) {
                measures.add(measure);
            }
        }
        return measures.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }
}
