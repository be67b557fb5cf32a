package org.bellowscribe.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.replay.Played;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.AirUse;
import org.junit.jupiter.api.Test;

class RecordWriterTest {

    private static final Tune TUNE = TuneText.of("C4 | D4 r", 60, List.of(0, 1, 0, 1));

    private static final Diagnostic REMARK = Diagnostic.note(
            DiagnosticCode.ASSUMED, Place.measure(2, "2", "P1"), "No tempo is given.", "Maybe write one.");

    private static TuneRecord.Marked marked() {
        Played played = new Played(TUNE, 5000)
                .push(4460, 1)
                .bass("0", "1")
                .air(AirUse.LIGHT, 1460)
                .pull(1000, 1)
                .held()
                .left("0", "1", null, null)
                .pull(3460)
                .air(AirUse.FULL, 3460);
        return new TuneRecord.Marked("two.musicxml", played.decided(), List.of(REMARK));
    }

    private static Object read(TuneRecord tuneRecord) throws IOException {
        return JsonTree.read(RecordWriter.write(tuneRecord));
    }

    private static Object schema() throws IOException {
        return JsonTree.read(Files.readString(Path.of("schemas", "record.schema.json")));
    }

    private static List<?> list(Object object, String key) {
        return (List<?>) JsonTree.get(object, key);
    }

    @Test
    void markedTuneFitsTheSchema() throws IOException {
        assertEquals(List.of(), new JsonSchema(schema()).objections(read(marked())));
    }

    @Test
    void everythingInTheSchemaIsRequired() throws IOException {
        Object schema = schema();
        Set<Object> required = new TreeSet<>();
        required.addAll(list(schema, "required").stream().map(String::valueOf).toList());
        required.addAll(list(JsonTree.get(schema, "then"), "required").stream()
                .map(String::valueOf)
                .toList());
        Set<Object> written = new TreeSet<>(((Map<?, ?>) read(marked()))
                .keySet().stream().map(String::valueOf).toList());
        assertEquals(required, written);
    }

    @Test
    void schemaObjectsToWhatItDoesNotKnow() throws IOException {
        String wrong =
                RecordWriter.write(marked()).replace("\"push\"", "\"in\"").replace("\"handOn\"", "\"hand\"");
        List<String> objections = new JsonSchema(schema()).objections(JsonTree.read(wrong));
        assertTrue(objections.contains("/steps/0/direction: in is not one of [push, pull]"), objections.toString());
        assertTrue(objections.contains("/steps/0: missing keys: [handOn]"), objections.toString());
        assertTrue(objections.contains("/steps/0: the key hand is not described"), objections.toString());
    }

    @Test
    void refusedTuneHasItsReasonsAndFitsTheSchema() throws IOException {
        Diagnostic error =
                Diagnostic.error(DiagnosticCode.NO_BUTTON, Place.measure(2, "2", "P1"), "No button gives F4.");
        Object refused = read(new TuneRecord.Unmarked("two.musicxml", "dg-21", false, List.of(error)));
        assertEquals(List.of(), new JsonSchema(schema()).objections(refused));
        assertEquals("refused", JsonTree.get(refused, "outcome"));
        assertEquals("no-button", JsonTree.get(list(refused, "diagnostics").get(0), "code"));
    }

    @Test
    void emptyTuneHasNothingToMark() throws IOException {
        Object empty = read(new TuneRecord.Unmarked("two.musicxml", "dg-21", true, List.of()));
        assertEquals(List.of(), new JsonSchema(schema()).objections(empty));
        assertEquals("nothing-to-mark", JsonTree.get(empty, "outcome"));
    }

    @Test
    void stepSaysWhatIsPlayed() throws IOException {
        Object first = list(read(marked()), "steps").get(0);
        assertEquals(List.of(60L), JsonTree.get(first, "pitches"));
        assertEquals(List.of("1.1"), JsonTree.get(first, "buttons"));
        assertEquals("push", JsonTree.get(first, "direction"));
        assertEquals("light", JsonTree.get(first, "air"));
        Object bass = list(first, "leftHand").get(0);
        assertEquals("C", JsonTree.get(bass, "name"));
        assertEquals("0/1", JsonTree.get(bass, "onset"));
    }

    @Test
    void silentLeftHandHasNoName() throws IOException {
        Object bass = list(list(read(marked()), "steps").get(1), "leftHand").get(0);
        assertNull(JsonTree.get(bass, "name"));
        assertNull(JsonTree.get(bass, "button"));
        assertEquals("C", JsonTree.get(bass, "wanted"));
    }

    @Test
    void performanceFollowsItsOwnArithmetic() throws IOException {
        Object written = read(marked());
        double opening = (Double) JsonTree.get(JsonTree.get(written, "bellows"), "openingAtStart");
        List<Object> passes = new ArrayList<>();
        for (Object line : list(written, "performance")) {
            long step = (Long) JsonTree.get(line, "step");
            passes.add(step + "/" + JsonTree.get(line, "pass"));
            assertEquals(opening, (Double) JsonTree.get(line, "openingBefore"), 0);
            boolean push = JsonTree.get(list(written, "steps").get((int) step), "direction")
                    .equals("push");
            double moved = (Double) JsonTree.get(line, "seconds") * (Double) JsonTree.get(line, "flow")
                    + (Double) JsonTree.get(line, "airTaken");
            opening = (Double) JsonTree.get(line, "openingAfter");
            assertEquals((Double) JsonTree.get(line, "openingBefore") + (push ? -moved : moved), opening, 1e-9);
        }
        assertEquals(List.of("0/1", "1/1", "2/1", "0/2", "1/2", "2/2"), passes);
    }

    @Test
    void sameRecordGivesTheSameText() {
        String text = RecordWriter.write(marked());
        assertEquals(text, RecordWriter.write(marked()));
        assertTrue(
                text.startsWith("{\n  \"recordVersion\": 1,\n  \"file\": \"two.musicxml\",\n  \"title\": \"test\","));
        assertTrue(
                text.contains("\n    {\"step\": 0, \"pass\": 1, \"seconds\": 1.0, \"flow\": 3.0, \"nominalFlow\": 3.0,"
                        + " \"airTaken\": 1.46, \"openingBefore\": 5.0, \"openingAfter\": 0.54},\n"));
        assertTrue(text.endsWith("\n}\n"));
        assertFalse(text.contains("\r"));
    }
}
