package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.bellowscribe.report.JsonTree;
import org.bellowscribe.sound.MidiNotes;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MidiOptionTest {

    @TempDir
    private Path folder;

    private static List<?> list(Object object, String key) {
        return (List<?>) JsonTree.get(object, key);
    }

    private static Fraction time(Object object, String key) {
        return Fraction.parse((String) JsonTree.get(object, key));
    }

    /** The tune begins after the count-in: a measure, with a pick-up the rest of its own as well. */
    @ParameterizedTest
    @CsvSource({"the-apple-weighing,11/2", "crab-apple-jig,3", "pump-sunday,4"})
    void everyNoteOfTheRecordSoundsInItsTime(String tune, String start) throws IOException {
        Path score = Path.of("samples", "book", tune + ".musicxml");
        CommandRun.of("mark", score.toString(), "--midi", "--record", "--out", folder.toString());
        MidiNotes midi = new MidiNotes(Files.readAllBytes(folder.resolve(tune + ".mid")));
        Object tuneRecord = JsonTree.read(Files.readString(folder.resolve(tune + ".record.json")));
        Heard heard = new Heard(Fraction.parse(start));
        for (Object sounding : list(tuneRecord, "performance")) {
            long step = (Long) JsonTree.get(sounding, "step");
            heard.step(list(tuneRecord, "steps").get((int) step));
        }
        assertEquals(sorted(heard.melody), midi.channel(1));
        assertEquals(
                heard.leftHand,
                new TreeSet<>(midi.channel(2).stream()
                        .map(note -> tone(PitchClass.of(note.pitch()), note.start(), note.end()))
                        .toList()));
    }

    private static String tone(PitchClass pitch, Fraction start, Fraction end) {
        return "%s %s %s".formatted(pitch, start, end);
    }

    private static List<MidiNotes.Note> sorted(List<MidiNotes.Note> notes) {
        return notes.stream()
                .sorted(Comparator.comparing(MidiNotes.Note::start).thenComparing(MidiNotes.Note::pitch))
                .toList();
    }

    /** What the record says is heard. */
    private static final class Heard {

        private final List<MidiNotes.Note> melody = new ArrayList<>();
        private final Set<String> leftHand = new TreeSet<>();
        private Fraction time;

        Heard(Fraction start) {
            time = start;
        }

        void step(Object step) {
            Fraction end = time.plus(time(step, "duration"));
            for (Object pitch : list(step, "pitches")) {
                melody.add(new MidiNotes.Note((int) (long) (Long) pitch, time, end));
            }
            for (Object stroke : list(step, "leftHand")) {
                Object name = JsonTree.get(stroke, "name");
                if (name != null) {
                    Fraction start = time.plus(time(stroke, "onset")).minus(time(step, "onset"));
                    for (PitchClass tone : tones((String) name)) {
                        leftHand.add(tone(tone, start, start.plus(time(stroke, "duration"))));
                    }
                }
            }
            time = end;
        }

        // The box has thirds: a capital is a bass, a small letter a triad.
        private static List<PitchClass> tones(String name) {
            boolean minor = name.endsWith("m");
            String letters = minor ? name.substring(0, name.length() - 1) : name;
            PitchClass root = PitchClass.parse(letters.substring(0, 1).toUpperCase(Locale.ROOT) + letters.substring(1));
            boolean bass = Character.isUpperCase(name.charAt(0));
            return bass ? List.of(root) : List.of(root, root.plus(minor ? 3 : 4), root.plus(7));
        }
    }

    @Test
    void everyStageThatSoundsHasItsFileAtItsTempo() throws IOException {
        String scale = ScoreText.file(folder.resolve("scale.musicxml"), "D4 E4 F#4 G4");
        Path out = folder.resolve("out");
        CommandRun run = CommandRun.of(
                "mark",
                scale,
                "--midi",
                "--stages",
                "right-hand,bellows,left-hand,both",
                "--stage-tempo",
                "both=50",
                "--out",
                out.toString());
        assertEquals(0, run.code(), run.err());
        MidiNotes whole = new MidiNotes(Files.readAllBytes(out.resolve("scale.mid")));
        MidiNotes right = new MidiNotes(Files.readAllBytes(out.resolve("scale.right-hand.mid")));
        MidiNotes left = new MidiNotes(Files.readAllBytes(out.resolve("scale.left-hand.mid")));
        MidiNotes both = new MidiNotes(Files.readAllBytes(out.resolve("scale.both.mid")));
        assertFalse(Files.exists(out.resolve("scale.bellows.mid")));
        assertEquals(whole.channel(1), right.channel(1));
        assertEquals(List.of(), right.channel(2));
        assertEquals(List.of(), left.channel(1));
        assertEquals(whole.channel(2), left.channel(2));
        assertEquals(2 * whole.seconds(), both.seconds(), 0.001);
    }

    @Test
    void questionAloneHasNoPlaceForSound() throws IOException {
        String scale = ScoreText.file(folder.resolve("scale.musicxml"), "D4 E4 F#4 G4");
        CommandRun run = CommandRun.of("mark", scale, "--midi", "--explain", "1");
        assertEquals(2, run.code());
        assertTrue(run.err().startsWith("--midi needs a folder."), run.err());
    }

    @Test
    void pipeHasNoPlaceForSound() {
        CommandRun run = CommandRun.of("mark", "-", "--midi");
        assertEquals(2, run.code());
        assertTrue(run.err().startsWith("--midi needs files"), run.err());
    }
}
