package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.bellowscribe.report.JsonTree;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TieIntoEndingTest {

    @TempDir
    Path folder;

    /** D4 F#4 A4 G4, the last tied into a first ending of G4 E4 C#4 E4; second ending D4 D4 D4 D4. */
    private String score() throws IOException {
        String plain = ScoreText.of("Tied", "D4 F#4 A4 G4 G4 E4 C#4 E4 D4 D4 D4 D4");
        String[] measures = plain.split("(?=    <measure)");
        measures[1] = measures[1].replaceFirst("(?s)(.*)<type>", "$1<tie type=\"start\"/><type>");
        measures[2] = measures[2]
                .replaceFirst(
                        "<note>", "<barline location=\"left\"><ending number=\"1\" type=\"start\"/></barline><note>")
                .replaceFirst("<type>", "<tie type=\"stop\"/><type>")
                .replace(
                        "    </measure>",
                        "<barline location=\"right\"><ending number=\"1\" type=\"stop\"/><repeat direction=\"backward\"/>"
                                + "</barline></measure>");
        measures[3] = measures[3].replaceFirst(
                "<note>", "<barline location=\"left\"><ending number=\"2\" type=\"start\"/></barline><note>");
        return ScoreText.write(folder.resolve("tied.musicxml"), String.join("", measures));
    }

    @Test
    void noteTiedIntoAnEndingHasOneButtonOneDirectionAndOneNumber() throws IOException {
        CommandRun run = CommandRun.of("mark", score(), "--out", folder + "/out", "--record");
        assertEquals(0, run.code(), run.err());
        Object tune = JsonTree.read(Files.readString(folder.resolve("out/tied.record.json")));
        List<?> steps = (List<?>) JsonTree.get(tune, "steps");
        Map<?, ?> struck = (Map<?, ?>) steps.get(3);
        Map<?, ?> held = (Map<?, ?>) steps.get(4);
        for (String what : List.of("pitches", "buttons", "fingers", "direction")) {
            assertEquals(struck.get(what), held.get(what), what);
        }
        String[] notes = Files.readString(folder.resolve("out/tied.musicxml")).split("<note>");
        assertEquals(
                List.of(1, 2, 3, 4, 6, 7, 8, 9, 10, 11, 12),
                IntStream.range(1, notes.length)
                        .filter(i -> notes[i].contains("bellowscribe-buttons"))
                        .boxed()
                        .toList());
    }
}
