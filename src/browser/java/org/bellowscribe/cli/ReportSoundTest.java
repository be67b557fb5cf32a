package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a page sounds, played into memory and measured against the record, which knows nothing of pages. */
@Tag("browser")
class ReportSoundTest {

    private static final double RATE = 44100;

    @TempDir
    private static Path folder;

    private static final List<double[]> NOTES = new ArrayList<>();
    private static Browser browser;
    private static float[] samples;

    @BeforeAll
    static void play() throws IOException {
        String score = Path.of("samples", "book", "crab-apple-jig.musicxml").toString();
        CommandRun run = CommandRun.of(
                "mark", score, "--report", folder.resolve("r").toString(), "--out", folder.toString(), "--record");
        assertEquals(0, run.code(), run.err());
        notesOfRecord(Files.readString(folder.resolve("crab-apple-jig.record.json")));
        browser = new Browser();
        browser.openTune(folder.resolve("r").resolve("tunes").resolve("crab-apple-jig.html"));
    }

    /** Plays the first 60 notes of the right hand into memory, at a tempo in percent. */
    private static void render(int percent) {
        browser.ask("document.getElementById('tempo').value = arguments[0]", percent);
        String sound = (String) browser.await("""
                const done = arguments[arguments.length - 1];
                bellowscribePage.render(0, 60, 1).then(samples => {
                  const bytes = new Uint8Array(samples.buffer);
                  let text = '';
                  for (let i = 0; i < bytes.length; i += 8192) text += String.fromCharCode(...bytes.subarray(i, i + 8192));
                  done(btoa(text));
                })""");
        ByteBuffer bytes = ByteBuffer.wrap(Base64.getDecoder().decode(sound)).order(ByteOrder.LITTLE_ENDIAN);
        samples = new float[bytes.remaining() / 4];
        bytes.asFloatBuffer().get(samples);
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    /** Onset in seconds, length in seconds and MIDI number of the first 60 notes as they are played. */
    private static void notesOfRecord(String json) {
        Map<Integer, Integer> pitches = new HashMap<>();
        Matcher step = Pattern.compile("\\{\"id\": (\\d+), .*?\"pitches\": \\[(\\d*)\\]").matcher(json);
        while (step.find()) {
            pitches.put(Integer.valueOf(step.group(1)), step.group(2).isEmpty() ? 0 : Integer.parseInt(step.group(2)));
        }
        Matcher play = Pattern.compile("\\{\"step\": (\\d+), \"pass\": \\d+, \"seconds\": ([0-9.]+)").matcher(json);
        double now = 0;
        for (int i = 0; i < 60 && play.find(); i++) {
            double seconds = Double.parseDouble(play.group(2));
            NOTES.add(new double[] {now, seconds, pitches.getOrDefault(Integer.valueOf(play.group(1)), 0)});
            now += seconds;
        }
        assertEquals(60, NOTES.size());
    }

    private static float at(int i) {
        return i < 0 || i >= samples.length ? 0 : Math.abs(samples[i]);
    }

    /** The first sample from 12 ms before a note is due that is a tenth as loud as the note becomes. */
    private static double onset(double due) {
        int from = (int) Math.round(due * RATE);
        float loudest = 0;
        for (int i = from; i < from + 2600; i++) {
            loudest = Math.max(loudest, at(i));
        }
        int i = from - 529;
        while (at(i) < loudest / 10) {
            i++;
        }
        return i / RATE;
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 100, 120})
    void notesBeginWhenTheRecordSaysSo(int percent) {
        render(percent);
        double worst = 0;
        for (double[] note : NOTES) {
            double due = note[0] * 100 / percent;
            worst = note[2] > 0 ? Math.max(worst, Math.abs(onset(due) - due)) : worst;
        }
        System.out.printf("largest error of an onset at %d %%: %.2f ms%n", percent, worst * 1000);
        assertTrue(worst <= 0.005, worst + " s");
    }

    /** How alike the sound is to itself some samples later, from 1 (the same) to -1. */
    private static double likeness(int from, int length, int lag) {
        double cross = 0;
        double one = 0;
        double other = 0;
        for (int i = from; i < from + length; i++) {
            cross += samples[i] * samples[i + lag];
            one += samples[i] * samples[i];
            other += samples[i + lag] * samples[i + lag];
        }
        return cross / Math.sqrt(one * other);
    }

    /** Off a pitch by how many cents: ten periods of it come back after how long, found within half a semitone. */
    private static double cents(double[] note) {
        double period = RATE / (440 * Math.pow(2, (note[2] - 69) / 12));
        int from = (int) ((note[0] + 0.02) * RATE);
        int periods = 10;
        int length = (int) Math.min(2000, (note[1] - 0.08) * RATE - periods * period);
        int best = 0;
        double most = -2;
        for (int lag = (int) (periods * period * 0.971); lag <= periods * period * 1.03; lag++) {
            double likeness = likeness(from, length, lag);
            if (likeness > most) {
                most = likeness;
                best = lag;
            }
        }
        double before = likeness(from, length, best - 1);
        double after = likeness(from, length, best + 1);
        double exact = best + (before - after) / (2 * (before - 2 * most + after));
        return 1200 * Math.log(periods * period / exact) / Math.log(2);
    }

    @Test
    void notesHaveTheirPitch() {
        render(100);
        double worst = 0;
        int measured = 0;
        for (double[] note : NOTES) {
            if (note[2] > 0 && (note[1] - 0.08) * RATE - 10 * RATE / (440 * Math.pow(2, (note[2] - 69) / 12)) > 1200) {
                worst = Math.max(worst, Math.abs(cents(note)));
                measured++;
            }
        }
        System.out.printf("largest error of a pitch: %.2f cents, of %d notes%n", worst, measured);
        assertTrue(measured >= 20, measured + " notes are long enough");
        assertTrue(worst <= 5, worst + " cents");
    }
}
